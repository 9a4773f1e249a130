// Measures a line of text in the picture font without drawing it.
import { letterWidths, singleWidths } from './widths.ts'

export type Weight = 'medium' | 'bold'

// Unknown scripts are set as wide as a full em, and unknown Cyrillic or Greek letters as the widest common one: text
// that is measured too wide wraps early, text that is measured too narrow leaves its box.
const fullEm = 1000
const broadLetter = 760

const widthRuns = [
  { from: 0x20, row: 'latin' },
  { from: 0x391, row: 'greek' },
  { from: 0x410, row: 'cyrillic' },
] as const

function widthOf(letter: string, weight: Weight): number {
  const point = letter.codePointAt(0) ?? 0
  if (point >= 0x300 && point <= 0x36f) return 0
  for (const run of widthRuns) {
    const known = letterWidths[weight][run.row][point - run.from]
    if (known) return known
  }
  return singleWidths[letter] ?? (point < 0x530 ? broadLetter : fullEm)
}

/** The width in px of `text` set at `size` px: an upper estimate that leaves kerning out. Pure arithmetic, no errors. */
export function measureText(text: string, size: number, weight: Weight = 'medium'): number {
  let sum = 0
  for (const letter of text.normalize('NFC')) {
    if (singleWidths[letter] !== undefined) sum += singleWidths[letter]
    else for (const part of letter.normalize('NFD')) sum += widthOf(part, weight)
  }
  return (sum * size) / 1000
}
