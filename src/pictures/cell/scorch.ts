// A scorched patch on the side.
import { lineWidths } from '../ink.ts'
import { line, part, tag } from '../svg.ts'
import type { Cell } from './anatomy.ts'
import { blob } from './blob.ts'
import { type Camera, rise } from './camera.ts'
import type { CellParameters } from './parameters.ts'

/** Draws it below the middle; nothing where the cell is not scorched. */
export function scorch(params: CellParameters, cell: Cell, camera: Camera): string {
  if (!params.scorched) return ''
  const px = cell.radius * camera.scale
  const [x, y] = [camera.x - px * 0.05, camera.y - rise(camera) * -cell.length * 0.58]
  const patch = (dx: number, dy: number, rx: number, ry: number, fill: string, opacity: number, turn: number): string =>
    tag('path', {
      d: blob(x + dx * px, y + dy * px, rx * px, ry * px, turn),
      fill,
      'fill-opacity': opacity,
    })
  // Heat leaves no clean spot: brown runs up from it, the black is ragged, and the skin cracks.
  const crack = (points: readonly [number, number][]) =>
    line(points.map(([dx, dy]) => ({ x: x + dx * px, y: y + dy * px })))
  const cracks = [
    crack([
      [-0.5, 0.3],
      [-0.2, 0.05],
      [-0.1, -0.35],
      [0.1, -0.7],
    ]),
    crack([
      [-0.2, 0.05],
      [0.15, 0.15],
      [0.4, 0.6],
    ]),
    crack([
      [0.15, 0.15],
      [0.45, -0.25],
    ]),
  ]
  return part(
    'scorch',
    patch(-0.05, -0.5, 0.78, 1.5, '#7a4a21', 0.45, 1),
    patch(0.3, 0.55, 0.5, 0.7, '#7a4a21', 0.55, 5),
    patch(-0.08, -0.2, 0.62, 0.95, '#3a2416', 0.8, 4),
    patch(0.22, 0.38, 0.42, 0.55, '#2a1a10', 0.9, 7),
    patch(-0.18, 0.05, 0.4, 0.6, '#140d09', 1, 2),
    tag('path', { d: cracks.join(''), fill: 'none', stroke: '#c98a4b', 'stroke-width': lineWidths.fine }),
  )
}
