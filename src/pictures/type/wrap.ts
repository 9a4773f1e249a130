// Breaks text into lines that fit a width: nothing is ever cut away, a word too long for a line is split.
import { measureText, type Weight } from './measure.ts'

// “21 × 70 mm” is one word: a figure stays with its unit and with the figures beside it.
const unitNames = 'mm|g|V|A|mAh|Wh|mΩ|°C|%|kg|h'
const withinFigures = new RegExp(`(?<=\\d|×) (?=×|\\d|(?:${unitNames})(?!\\p{L}))`, 'gu')

// Scripts written without spaces break between any two letters.
const breakPoints = /(?<=[ \t\u200b-])|(?<=[\u3040-\u30ff\u3400-\u9fff])|(?=[\u3040-\u30ff\u3400-\u9fff])/u

const pieces = (text: string): string[] =>
  text
    .replace(withinFigures, '\u00a0')
    .split(breakPoints)
    .filter(piece => piece !== '')

function splitLong(word: string, width: number, size: number, weight: Weight): string[] {
  const parts: string[] = []
  let part = ''
  for (const letter of word) {
    if (part !== '' && measureText(part + letter, size, weight) > width) {
      parts.push(part)
      part = ''
    }
    part += letter
  }
  return part === '' ? parts : [...parts, part]
}

/** The lines of `text` at `size` px within `width` px; line breaks in the text are kept, every letter comes back. */
export function wrapText(text: string, width: number, size: number, weight: Weight = 'medium'): string[] {
  const lines: string[] = []
  for (const paragraph of text.trim().split(/\r?\n/)) {
    let line = ''
    for (const piece of pieces(paragraph).flatMap(word => splitLong(word, width, size, weight))) {
      if (line !== '' && measureText((line + piece).trimEnd(), size, weight) > width) {
        lines.push(line.trim())
        line = ''
      }
      line += piece
    }
    lines.push(line.trim())
  }
  return lines
}
