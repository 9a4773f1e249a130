// Which signs of leak and rust an outside view shows, and where.
import { part } from '../svg.ts'
import type { Cell } from './anatomy.ts'
import { type Camera, rise } from './camera.ts'
import { endLeak, footLeak } from './leak.ts'
import type { CellParameters } from './parameters.ts'
import { edgeRust, endRust } from './rust.ts'

/** What shows on the end that faces the viewer; `below`: how far liquid runs down in px, `terminalZ`: the terminal's height in mm. */
export function endDamage(
  params: CellParameters,
  cell: Cell,
  camera: Camera,
  below: number,
  terminalZ: number,
): string {
  const side = params.view === 'side'
  const here = params.end === 'negative' && !side ? 'bottom' : 'top'
  const px = cell.radius * camera.scale
  const rust = side ? edgeRust(camera.x, camera.y + px * 0.28, px) : endRust(cell, camera, terminalZ)
  return (
    part('rust', params.rust === here ? rust : '') +
    part('leak', params.leak === here ? endLeak(cell, camera, below) : '')
  )
}

/** What shows around the bottom edge in a side view, `bottom` in mm. */
export function footDamage(params: CellParameters, cell: Cell, camera: Camera, bottom: number): string {
  const px = cell.radius * camera.scale
  const y = camera.y - rise(camera) * bottom + px * camera.tilt * 0.9
  return (
    part('leak', params.leak === 'bottom' ? footLeak(camera.x, y, px) : '') +
    part('rust', params.rust === 'bottom' ? edgeRust(camera.x, y - px * 0.1, px) : '')
  )
}
