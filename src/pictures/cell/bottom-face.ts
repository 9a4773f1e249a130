// The negative end, drawn as if the cell stood on its head: a plain can bottom, or a board's plate.
import { inks, lineWidths, metals, wraps } from '../ink.ts'
import { part, tag } from '../svg.ts'
import { type Cell, heights } from './anatomy.ts'
import { type Ring, wholeRing } from './broken-ring.ts'
import { type Camera, circle, rise } from './camera.ts'
import type { CellParameters } from './parameters.ts'

const edge = { stroke: inks.line, 'stroke-width': lineWidths.inner }

/** Draws the flat end; the wrap folds over it like over the rim of the top. */
export function bottomFace(params: CellParameters, cell: Cell, camera: Camera): string {
  const { radius, grow } = cell
  const flat = rise(camera) < 0.01
  const plate = (share: number, fill: string): string =>
    tag('path', { d: circle(camera, share * radius, 0), fill, ...edge })
  const can = part('can-end', plate(0.96, metals.light), plate(0.62, 'none'))
  const board = params.board
    ? part(
        'board',
        tag('path', { d: circle(camera, 0.9 * radius, 0), fill: '#5f7f6b', ...edge }),
        plate(0.66, metals.light),
      )
    : ''
  const one: Ring = { outer: radius, outerZ: flat ? 0 : heights.fold * grow, inner: 0.84 * radius, innerZ: 0.2 * grow }
  const fold =
    params.wrap === 'missing'
      ? ''
      : part(
          'wrap-fold',
          tag('path', {
            d: wholeRing(camera, one),
            'fill-rule': 'evenodd',
            fill: wraps[params.wrapColour],
            'fill-opacity': params.wrapColour === 'clear' ? 0.55 : undefined,
            ...(flat ? edge : {}),
          }),
          tag('path', { d: circle(camera, one.inner, one.innerZ), fill: 'none', ...edge }),
        )
  return can + board + fold
}
