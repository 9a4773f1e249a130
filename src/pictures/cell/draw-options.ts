// The options of a question side by side, lettered, so that "B" can be said instead of pressed.
import { describeOptions } from '../alt/describe-cell.ts'
import type { Drawing } from '../drawing.ts'
import { INK, STROKE } from '../ink.ts'
import { panel, SHEET_WIDTH } from '../panel.ts'
import { part, tag } from '../svg.ts'
import { textBlock, textLine } from '../type/text-block.ts'
import { lookClose } from './compose-cell.ts'
import { badge } from './mark.ts'
import { type CellParameters, completeCell } from './parameters.ts'

/** One option: what it shows (nothing: a question mark), and words under it, handed in. */
export type PictureOption = { show?: Partial<CellParameters>; label?: string }

const GAP = 8
const TILE = (SHEET_WIDTH - 3 * GAP) / 2
const TALL = { side: 206, top: 156, 'top-angle': 150, 'cut-away': 116 } as const

/** A, B, … Z, AA, AB … */
export const optionLetter = (i: number): string =>
  i < 26 ? String.fromCharCode(65 + i) : optionLetter(Math.floor(i / 26) - 1) + optionLetter(i % 26)

const tall = (params: CellParameters): number =>
  params.view === 'side' && /^(lettering|code|second-wrap|seam)/.test(params.pointAt) ? 116 : TALL[params.view]

/** Draws a sheet of two columns, 360 px wide; its height follows from the options and their labels. */
export function drawOptions(options: readonly PictureOption[]): Drawing {
  const cells = options.map(option => (option.show === undefined ? undefined : completeCell(option.show)))
  const picture = Math.max(88, ...cells.map(cell => (cell === undefined ? 0 : tall(cell))))
  const labels = options.map(option => option.label ?? '')
  const style = { size: 14.5, anchor: 'middle' } as const
  let y = GAP
  let content = ''
  for (let row = 0; row * 2 < options.length; row++) {
    const here = [row * 2, row * 2 + 1].filter(i => i < options.length)
    const set = here.map(
      i => textBlock(labels[i] as string, 0, 0, TILE - 16, style).height * ((labels[i] as string) === '' ? 0 : 1),
    )
    const text = Math.max(0, ...set)
    const height = picture + 12 + (text === 0 ? 0 : text + 8)
    for (const i of here) {
      const x = GAP + (i % 2) * (TILE + GAP)
      const params = cells[i]
      const box = { x: x + 14, y: y + 12, width: TILE - 28, height: picture - 12 }
      const drawn =
        params === undefined
          ? unknown(box.x + box.width / 2, box.y + box.height / 2)
          : lookClose(params, box, INK.casing)
      const label = textBlock(labels[i] as string, x + TILE / 2, y + picture + 10, TILE - 16, style).svg
      content += part(
        `option-${optionLetter(i)}`,
        tag('rect', {
          x,
          y,
          width: TILE,
          height,
          rx: 8,
          fill: '#ffffff',
          stroke: INK.edge,
          'stroke-width': STROKE.inner,
        }),
        drawn,
        badge(x + 17, y + 17, 13, optionLetter(i), INK.line),
        labels[i] === '' ? '' : label,
      )
    }
    y += height + GAP
  }
  return panel(SHEET_WIDTH, Math.ceil(y), content, describeOptions(cells, labels, optionLetter))
}

const unknown = (x: number, y: number): string =>
  textLine('?', x, y + 24, { size: 68, weight: 'bold', fill: INK.soft, anchor: 'middle' })
