// The options of a question side by side, lettered, so that "B" can be said instead of pressed.
import { describeOptions } from '../alt/describe-cell.ts'
import type { Drawing } from '../drawing.ts'
import { inks } from '../ink.ts'
import { panel, questionHeight } from '../panel.ts'
import { textLine } from '../type/text-block.ts'
import { lookClose } from './compose-cell.ts'
import { badge } from './mark.ts'
import { type CellParameters, completeCell } from './parameters.ts'
import type { Box } from './scene.ts'
import { tileGap, tileHeight, tiles } from './tiles.ts'

/** One option: what it shows (nothing: three dots), and words under it, handed in. */
export type PictureOption = { show?: Partial<CellParameters>; label?: string }

/** px for two lines of words under a tile. */
const labelRoom = 60

/** A, B, … Z, AA, AB … */
export const optionLetter = (i: number): string =>
  i < 26 ? String.fromCharCode(65 + i) : optionLetter(Math.floor(i / 26) - 1) + optionLetter(i % 26)

/** Nothing is known of it, or with dots nothing is drawn of it. */
export const unknown = (box: Box, sign: '?' | '…' = '?'): string =>
  textLine(sign, box.x + box.width / 2, box.y + box.height / 2 + 24, {
    size: 68,
    weight: 'bold',
    fill: inks.soft,
    anchor: 'middle',
  })

/** The words say it. No question mark, which is taken for “I do not know”. */
const unsaid = '…'

/** Up to this many options stand in one row. */
const mostInRow = 3

/** Above this many options there is no room for words under them: the letter leads to the button that has them. */
const mostCaptions = 3

/** px below which nothing on a cell can be made out: more than six options make the sheet taller instead. */
const leastPicture = 80

/** Draws a sheet, 360 px wide, as tall as a question's picture may be; more than three options take two rows. */
export function drawOptions(options: readonly PictureOption[]): Drawing {
  const cells = options.map(option => (option.show === undefined ? undefined : completeCell(option.show)))
  const labels = options.map(option => option.label ?? '')
  const rows = Math.ceil(options.length / mostInRow)
  const columns = Math.ceil(options.length / rows)
  const wanted = Math.max(88, ...cells.map(cell => (cell === undefined ? 0 : tileHeight(cell))))
  const captions = options.length <= mostCaptions ? labels : labels.map(() => '')
  const label = captions.some(text => text !== '') ? labelRoom : 8
  const room = (questionHeight - tileGap) / rows - tileGap - label
  const picture = Math.min(wanted, Math.max(leastPicture, Math.floor(room)))
  const list = cells.map((params, i) => ({
    name: `option-${optionLetter(i)}`,
    label: captions[i] as string,
    draw: (box: Box, corner: { x: number; y: number }): string =>
      (params === undefined ? unknown(box, unsaid) : lookClose(params, box).svg) +
      badge(corner.x, corner.y, 13, optionLetter(i), inks.line),
  }))
  const lay = (height: number) => tiles(list, height, tileGap, columns)
  const first = lay(picture)
  // Words of three lines and more take their room from the picture above them.
  const over = Math.ceil(first.height + tileGap) - questionHeight
  const laid = over > 0 ? lay(Math.max(leastPicture, picture - over)) : first
  return panel(Math.ceil(laid.height + tileGap), laid.svg, describeOptions(cells, labels, optionLetter))
}
