// Leaked liquid and crust: running over the plus end, or in a puddle under the foot.
import { damageInks, inks, lineWidths } from '../ink.ts'
import { tag } from '../svg.ts'
import { type Cell, heights } from './anatomy.ts'
import { blob, run } from './blob.ts'
import { type Camera, spot } from './camera.ts'

const edge = { stroke: inks.line, 'stroke-width': lineWidths.inner }
const liquid = { fill: damageInks.leak, ...edge }

/** Liquid on an end, running over its edge; `below` is how far it runs down in px (0 when seen straight from above). */
export function endLeak(cell: Cell, camera: Camera, below: number): string {
  const r = cell.radius
  const pool = spot(camera, 0.8 * r, 2.15, 0.4)
  const px = r * camera.scale
  const runs =
    below === 0
      ? ''
      : [
          [2.35, 0.16, 1],
          [1.95, 0.13, 0.62],
        ]
          .map(([angle = 0, width = 0, share = 0]) => {
            const p = spot(camera, r, angle, heights.fold * cell.grow)
            return tag('path', {
              d: run(
                p.x,
                p.y - 2,
                width * px * (camera.tilt < 0.3 ? 1.9 : 1),
                below * share * (camera.tilt < 0.3 ? 1.7 : 1),
              ),
              ...liquid,
            })
          })
          .join('')
  const crust = [
    [1.35, 0.8],
    [1.6, 0.68],
    [2.95, 0.8],
    [3.2, 0.7],
  ]
    .map(([angle = 0, at = 0], i) => {
      const p = spot(camera, at * r, angle, 0.4)
      return tag('path', {
        d: blob(p.x, p.y, px * 0.075, px * 0.06 * Math.max(camera.tilt, 0.5), i),
        fill: damageInks.crust,
        stroke: inks.line,
        'stroke-width': lineWidths.fine,
      })
    })
    .join('')
  return (
    runs +
    tag('path', { d: blob(pool.x, pool.y, px * 0.4, px * 0.33 * Math.max(camera.tilt, 0.4), 3), ...liquid }) +
    crust
  )
}

/** A puddle under a standing cell, and a run down to it; `x`, `y` are the middle of its foot, `px` its half width. */
export const footLeak = (x: number, y: number, px: number): string =>
  tag('path', { d: blob(x - px * 0.1, y + px * 0.16, px * 1.35, px * 0.26, 4), ...liquid }) +
  tag('path', { d: run(x - px * 0.4, y - px * 0.75, px * 0.2, px * 0.8), ...liquid })
