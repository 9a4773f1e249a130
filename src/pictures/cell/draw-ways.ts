// Ways of building below each other, a lettered row each: what is seen on the positive end, in it, and where the print is.
import { describeOptions } from '../alt/describe-cell.ts'
import type { Drawing } from '../drawing.ts'
import { inks } from '../ink.ts'
import { panel } from '../panel.ts'
import { lookClose } from './compose-cell.ts'
import { optionLetter, unknown } from './draw-options.ts'
import { badge } from './mark.ts'
import { type CellParameters, completeCell, type Part } from './parameters.ts'
import type { Box } from './scene.ts'
import { tileGap, tiles } from './tiles.ts'

/** `or`: what is as normal as the drawing, said below it, column by column; '' where nothing else is. */
export type Way = { readonly show: Partial<CellParameters>; readonly label: string; readonly or?: Columns }
/** The words of the four columns. */
export type Columns = readonly [end: string, vent: string, lettering: string, code: string]

type Column = {
  readonly view: 'top' | 'side'
  readonly pointAt: Part
  readonly tells: readonly (keyof CellParameters)[]
}
const columns: readonly Column[] = [
  { view: 'top', pointAt: 'dimples', tells: ['legs', 'dimples', 'contact'] },
  { view: 'top', pointAt: 'vent', tells: ['vent'] },
  { view: 'side', pointAt: 'lettering', tells: ['lettering'] },
  { view: 'side', pointAt: 'code', tells: ['code'] },
]
/** px; four columns are too narrow to draw anything taller. */
const picture = 76

/** 360 px wide, a row a way; what is not said of one is a question mark and not a drawing. */
export function drawWays(ways: readonly Way[], heads: Columns): Drawing {
  const list = ways.flatMap(({ show, or }, i) =>
    columns.map(({ view, pointAt, tells }, column) => ({
      name: `way-${optionLetter(i)}-${pointAt}`,
      label: [i === 0 ? heads[column] : '', or?.[column]].filter(Boolean).join(' '),
      draw: (box: Box, corner: { x: number; y: number }): string => {
        const said = tells.some(tell => show[tell] !== undefined)
        // Without dimples to be looked for, the ring is whole, and the legs stand on it plainly.
        const at = pointAt === 'dimples' && show.dimples === undefined ? 'none' : pointAt
        const drawn = said ? lookClose(completeCell({ ...show, view, pointAt: at }), box).svg : unknown(box)
        return drawn + (column === 0 ? badge(corner.x, corner.y, 11, optionLetter(i), inks.line) : '')
      },
    })),
  )
  const laid = tiles(list, picture, tileGap, columns.length)
  // In words each way is what it is called by, since no single view shows all of it.
  const cells = ways.map(() => undefined)
  const labels = ways.map(({ label }) => label)
  return panel(Math.ceil(laid.height + tileGap), laid.svg, describeOptions(cells, labels, optionLetter))
}
