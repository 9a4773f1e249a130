// Writes a drawing where a person wants it, as PNG or SVG by the file's ending.
import { writeFile } from 'node:fs/promises'
import { joinAlt } from '../../pictures/alt/join-alt.ts'
import type { Drawing } from '../../pictures/drawing.ts'
import { toPng } from '../../pictures/png.ts'
import { sayAltFact } from '../../words/alt-words.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { fail } from './fail.ts'

const ending = /\.(png|svg)$/i
const english = sayIn('en')

/** Whether a file can be drawn into; a sentence and exit code 2 if not. `option` is what named it, such as --output. */
export function isPictureFile(file: string, option: string): boolean {
  if (ending.test(file)) return true
  fail([english('picture-input.ending', { option, file })])
  process.exitCode = 2
  return false
}

/** The alt text in the language of `say`; undefined, with a sentence and exit code 1, if the file could not be written. */
export async function writeDrawing(file: string, drawing: Drawing, say: Say): Promise<string | undefined> {
  try {
    await writeFile(file, /\.png$/i.test(file) ? await toPng(drawing) : drawing.svg)
  } catch (error) {
    const says = (error as NodeJS.ErrnoException).code ?? ''
    fail([english('picture-input.not-written', { file, says })])
    return undefined
  }
  return joinAlt(drawing.about, (code, values) => sayAltFact(say, code, values))
}
