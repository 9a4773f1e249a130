// The outside of the cell below its rim: can or wrap, groove, seam, board, and what lies on them.
import { inks, lineWidths } from '../ink.ts'
import { part, round, tag } from '../svg.ts'
import { type Cell, heights } from './anatomy.ts'
import { arc, type Camera, rise } from './camera.ts'
import type { CellParameters } from './parameters.ts'
import { print } from './print.ts'
import { scorch } from './scorch.ts'
import { crease, shading } from './shading.ts'
import { lowest, silhouette } from './silhouette.ts'
import { tear } from './tear.ts'
import { groundOf } from './wrap-colours.ts'

const edge = { stroke: inks.line, 'stroke-width': lineWidths.inner, fill: 'none' }

/** Draws the side down to `bottom` mm; `cut` ends it in a break line, and leaves out what would not fit above that. */
export const body = (params: CellParameters, cell: Cell, camera: Camera, bottom: number, cut: boolean): string =>
  skin(params, silhouette(params, cell, camera, bottom, cut)) +
  shading(params, cell, camera, bottom, cut) +
  crease(params, cell, camera) +
  groove(params, cell, camera) +
  seam(params, cell, camera, bottom, cut) +
  (cut ? '' : board(params, cell, camera) + print(params, cell, camera) + scorch(params, cell, camera)) +
  tear(params, cell, camera, cut ? 0.6 : 1)

function skin(params: CellParameters, outline: string): string {
  const clear = params.wrapColour === 'clear' && params.wrap !== 'missing'
  return part(
    'body',
    tag('path', { d: outline, fill: groundOf(params), stroke: inks.line, 'stroke-width': lineWidths.outline }),
    clear ? tag('path', { d: outline, fill: '#ffffff', 'fill-opacity': 0.35 }) : '',
  )
}

function groove(params: CellParameters, { radius, grow }: Cell, camera: Camera): string {
  const start = params.dent === 'top-edge' ? 0.95 : 0.12
  const d = arc(camera, radius * 0.955, heights.groove * grow, start, Math.PI - 0.12)
  return part('groove', tag('path', { d, ...edge, 'stroke-opacity': 0.55 }))
}

/** One edge and the shade of what it overlaps: two lines would look like two seams. */
function seam(params: CellParameters, { radius, grow }: Cell, camera: Camera, bottom: number, cut: boolean): string {
  if (!params.seam || params.wrap === 'missing') return ''
  const px = radius * camera.scale
  const down = 0.8 * px * camera.tilt
  const x = round(camera.x - 0.58 * px)
  const top = round(camera.y - rise(camera) * heights.fold * grow + down)
  const end = round(camera.y - rise(camera) * (bottom + 0.6) + (cut ? 0 : down))
  return part(
    'seam',
    tag('path', { d: `M${x} ${top}V${end}h5V${top}Z`, fill: inks.line, 'fill-opacity': 0.22 }),
    tag('path', { d: `M${x} ${top}V${end}`, ...edge }),
  )
}

/** A protection board: a plate under the negative end, and the strip that runs to it down the side, both over-wrapped. */
function board(params: CellParameters, cell: Cell, camera: Camera): string {
  if (!params.board) return ''
  const { radius, grow } = cell
  const px = radius * camera.scale
  const y = (z: number): string => round(camera.y - rise(camera) * z + 0.9 * px * camera.tilt)
  const strip = `M${round(camera.x + 0.44 * px)} ${y(-6 * grow)}V${y(lowest(params, cell) + 1)}h${round(0.2 * px)}V${y(-6 * grow)}z`
  const step = arc(camera, radius, -cell.length, 0, Math.PI)
  return part(
    'board',
    tag('path', { d: strip, ...edge, fill: '#ffffff', 'fill-opacity': 0.35 }),
    tag('path', { d: step, ...edge, 'stroke-width': lineWidths.outline }),
  )
}
