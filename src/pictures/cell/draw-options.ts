// The options of a question side by side, lettered, so that "B" can be said instead of pressed.
import { describeOptions } from '../alt/describe-cell.ts'
import type { Drawing } from '../drawing.ts'
import { inks } from '../ink.ts'
import { panel } from '../panel.ts'
import { textLine } from '../type/text-block.ts'
import { lookClose } from './compose-cell.ts'
import { badge } from './mark.ts'
import { type CellParameters, completeCell } from './parameters.ts'
import type { Box } from './scene.ts'
import { tileGap, tileHeight, tiles } from './tiles.ts'

/** One option: what it shows (nothing: a question mark), and words under it, handed in. */
export type PictureOption = { show?: Partial<CellParameters>; label?: string }

/** A, B, … Z, AA, AB … */
export const optionLetter = (i: number): string =>
  i < 26 ? String.fromCharCode(65 + i) : optionLetter(Math.floor(i / 26) - 1) + optionLetter(i % 26)

const unknown = (box: Box): string =>
  textLine('?', box.x + box.width / 2, box.y + box.height / 2 + 24, {
    size: 68,
    weight: 'bold',
    fill: inks.soft,
    anchor: 'middle',
  })

/** Draws a sheet of two columns, 360 px wide; its height follows from the options and their labels. */
export function drawOptions(options: readonly PictureOption[]): Drawing {
  const cells = options.map(option => (option.show === undefined ? undefined : completeCell(option.show)))
  const labels = options.map(option => option.label ?? '')
  const picture = Math.max(88, ...cells.map(cell => (cell === undefined ? 0 : tileHeight(cell))))
  const list = cells.map((params, i) => ({
    name: `option-${optionLetter(i)}`,
    label: labels[i] as string,
    draw: (box: Box, corner: { x: number; y: number }): string =>
      (params === undefined ? unknown(box) : lookClose(params, box).svg) +
      badge(corner.x, corner.y, 13, optionLetter(i), inks.line),
  }))
  const laid = tiles(list, picture, tileGap)
  return panel(Math.ceil(laid.height + tileGap), laid.svg, describeOptions(cells, labels, optionLetter))
}
