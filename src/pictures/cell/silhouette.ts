// The outline of the can from the side: straight, with a groove under the rim, bulged or dented.
import { type Point, round } from '../svg.ts'
import { boardLength, type Cell, heights } from './anatomy.ts'
import { type Camera, rise } from './camera.ts'
import type { CellParameters } from './parameters.ts'

/** How deep a dent goes, as a share of the radius, and how far it reaches up and down in mm. */
export const dentSize = { depth: 0.38, reach: 8 } as const

/** Where the middle of the dent is, in mm below the rim. */
export const dentAt = (params: CellParameters, cell: Cell): number | undefined =>
  ({ none: undefined, side: -cell.length * 0.45, 'top-edge': -4.6 * cell.grow, 'bottom-edge': 0.5 - cell.length })[
    params.dent
  ]

const hump = (t: number): number => (Math.abs(t) >= 1 ? 0 : (1 + Math.cos(Math.PI * t)) / 2)

/** How far the skin stands from the axis at height `z`, as a share of the radius; only the right side is dented. */
export function reachAt(params: CellParameters, cell: Cell, z: number, side: -1 | 1): number {
  const groove = 0.034 * hump((z - heights.groove * cell.grow) / (1.1 * cell.grow))
  const from = heights.groove * cell.grow - 1
  const along = (from - z) / (cell.length + from)
  const bulge = params.swollen && along > 0 && along < 1 ? 0.2 * Math.sin(Math.PI * along) : 0
  const middle = dentAt(params, cell)
  const dent = middle === undefined || side < 0 ? 0 : dentSize.depth * hump((z - middle) / dentSize.reach)
  const foot = params.board && z < -cell.length - 0.05 ? 0.07 : 0
  return 1 - groove + bulge - dent - foot
}

/** The lowest height in mm, board included. */
export const lowest = (params: CellParameters, cell: Cell): number =>
  -cell.length - (params.board ? boardLength * cell.grow : 0)

/** Heights at which the outline bends, from the rim down to `bottom`. */
function bends(params: CellParameters, cell: Cell, bottom: number): number[] {
  const fine = params.swollen || params.dent !== 'none'
  const list = [heights.fold * cell.grow]
  for (let z = heights.groove * cell.grow + 1.2; z > heights.groove * cell.grow - 1.3; z -= 0.4) list.push(z)
  for (let z = heights.groove * cell.grow - 2; fine && z > bottom + 1; z -= 1) list.push(z)
  if (params.board) list.push(-cell.length, -cell.length - 0.1)
  return list.filter(z => z > bottom + 0.8)
}

/** The skin's points on one side from the rim to `bottom` mm, on paper. */
export function skin(
  params: CellParameters,
  cell: Cell,
  camera: Camera,
  bottom: number,
  side: -1 | 1,
  cut: boolean,
): Point[] {
  const at = (share: number, z: number): Point => ({
    x: camera.x + side * share * cell.radius * camera.scale,
    y: camera.y - rise(camera) * z,
  })
  const rim = Math.min(0.95, reachAt(params, cell, 0, side))
  const end = reachAt(params, cell, bottom, side)
  return [
    at(rim, -0.2 * cell.grow),
    ...bends(params, cell, bottom).map(z => at(reachAt(params, cell, z, side), z)),
    ...(cut
      ? [at(end, bottom)]
      : [at(reachAt(params, cell, bottom + 0.8, side), bottom + 0.8), at(end - 0.05, bottom)]),
  ]
}

/** How far the break line swings below its ends, in px, at `share` of the radius (−1 left, 1 right); half width `px`. */
export const breakWave = (share: number, px: number): number => {
  const t = (1 - share) / 2
  const third = (2 * px) / 3
  return 3 * (1 - t) ** 2 * t * third * 0.5 - 3 * (1 - t) * t ** 2 * third * 0.35
}

/** Path data of the whole outline; `cut` ends it in a wavy break line instead of the bottom's curve. */
export function silhouette(params: CellParameters, cell: Cell, camera: Camera, bottom: number, cut: boolean): string {
  const right = skin(params, cell, camera, bottom, 1, cut)
  const left = skin(params, cell, camera, bottom, -1, cut).reverse()
  const to = (p: Point): string => `${round(p.x)} ${round(p.y)}`
  const first = right[0] as Point
  const end = left[0] as Point
  const low = right[right.length - 1] as Point
  const radius = (a: Point, b: Point): string => {
    const rx = Math.abs(b.x - a.x) / 2
    return `${round(rx)} ${round(rx * camera.tilt)}`
  }
  const third = (low.x - end.x) / 3
  const foot = cut
    ? `C${round(low.x - third)} ${round(low.y + third * 0.5)} ${round(end.x + third)} ${round(low.y - third * 0.35)} ${to(end)}`
    : `A${radius(end, low)} 0 0 1 ${to(end)}`
  const last = left[left.length - 1] as Point
  return (
    `M${to(first)}${right
      .slice(1)
      .map(p => `L${to(p)}`)
      .join('')}${foot}` +
    `${left
      .slice(1)
      .map(p => `L${to(p)}`)
      .join('')}A${radius(last, first)} 0 0 1 ${to(first)}Z`
  )
}
