// What a known family looks like: a few views of the same cell, with words under them.
import { describeReference } from '../alt/describe-cell.ts'
import type { Drawing } from '../drawing.ts'
import { panel } from '../panel.ts'
import { lookClose } from './compose-cell.ts'
import { type CellParameters, completeCell } from './parameters.ts'
import { tileGap, tileHeight, tiles } from './tiles.ts'

/** One view of the family's cell and the words under it, handed in. */
export type ReferenceView = { show: Partial<CellParameters>; label?: string }

/** px; the columns are too narrow to draw anything taller. */
const inRow = (columns: number): number => (columns > 3 ? 76 : 96)

/** Draws the views in two columns, 360 px wide; `row`: small, beside each other, up to four. */
export function drawReference(views: readonly ReferenceView[], row = false): Drawing {
  const cells = views.map(view => completeCell(view.show))
  const list = cells.map((params, i) => ({
    name: `view-${i + 1}`,
    label: views[i]?.label ?? '',
    draw: (box: Parameters<typeof lookClose>[1]): string => lookClose(params, box).svg,
  }))
  const columns = Math.min(4, list.length)
  const laid = row
    ? tiles(list, inRow(columns), tileGap, columns)
    : tiles(list, Math.max(88, ...cells.map(tileHeight)), tileGap)
  return panel(Math.ceil(laid.height + tileGap), laid.svg, describeReference(cells))
}
