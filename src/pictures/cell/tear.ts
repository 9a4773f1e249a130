// A tear in the wrap below the rim, with metal showing and a flap folded back.
import { inks, lineWidths, metals } from '../ink.ts'
import { line, part, tag } from '../svg.ts'
import { type Cell, heights } from './anatomy.ts'
import { arc, type Camera, spot } from './camera.ts'
import type { CellParameters } from './parameters.ts'

/** Where pieces are torn out, in radians around the axis, so that the side view and the top view agree. */
export const tearShape = { wrap: { start: 0.72, end: 1.4 }, ring: { start: 1.85, end: 2.6 } } as const

const edge = { stroke: inks.line, 'stroke-width': lineWidths.inner, fill: 'none' }

/** `reach`: how long the tear is drawn, 1 where the whole side is shown. */
export function tear(params: CellParameters, cell: Cell, camera: Camera, reach: number): string {
  if (params.wrap !== 'torn') return ''
  const { start, end } = tearShape.wrap
  const { radius: r, grow } = cell
  const at = (angle: number, z: number) => spot(camera, r, angle, (z === heights.fold ? z : z * reach) * grow)
  const hole = [
    at(start, heights.fold),
    at(0.86, -3.4),
    at(0.74, -5.2),
    at(0.98, -8),
    at(0.9, -10.5),
    at(1.16, -13.5),
    at(1.22, -9.6),
    at(1.42, -6.8),
    at(1.28, -4.2),
    at(end, heights.fold),
  ]
  const flap = [at(1.42, -6.8), at(1.22, -9.6), at(1.16, -13.5), at(1.46, -12.2), at(1.68, -9)]
  const groove = arc(camera, r * 0.97, heights.groove * grow, 0.85, 1.28)
  return part(
    'tear',
    tag('path', { d: line(hole), ...edge, fill: metals.light }),
    tag('path', { d: groove, ...edge, stroke: metals.dark }),
    tag('path', { d: line(flap, true), ...edge, fill: '#fdfdfb' }),
  )
}
