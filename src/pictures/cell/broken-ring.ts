// A flat ring around the axis, whole or with a jagged piece torn out of it.
import { line, type Point, round } from '../svg.ts'
import { type Camera, circle, spot } from './camera.ts'

export type Ring = { outer: number; outerZ: number; inner: number; innerZ: number }

/** Path data (even-odd) of a whole ring; radii and heights in mm. */
export const wholeRing = (camera: Camera, ring: Ring): string =>
  circle(camera, ring.outer, ring.outerZ) + circle(camera, ring.inner, ring.innerZ)

// A tear runs from the inner to the outer edge in a few teeth; the numbers are shares of the ring's width.
const teeth = [0, 0.22, 0.4, 0.66, 0.82, 1]
const swing = [0, 0.07, -0.05, 0.09, -0.04, 0.03]

/** The points of one torn edge, from the inner to the outer circle, near `angle`. */
export const tornEdge = (camera: Camera, ring: Ring, angle: number): Point[] =>
  teeth.map((share, i) =>
    spot(
      camera,
      ring.inner + (ring.outer - ring.inner) * share,
      angle + (swing[i] ?? 0),
      ring.innerZ + (ring.outerZ - ring.innerZ) * share,
    ),
  )

/** Path data of a ring with the piece between the angles `start` and `end` (clockwise on paper) torn out. */
export function tornRing(camera: Camera, ring: Ring, start: number, end: number): string {
  const after = tornEdge(camera, ring, end)
  const before = tornEdge(camera, ring, start)
  const rx = (r: number): string => round(r * camera.scale)
  const ry = (r: number): string => round(r * camera.scale * camera.tilt)
  const outerEnd = before[before.length - 1] as Point
  const innerStart = after[0] as Point
  return (
    line(after) +
    `A${rx(ring.outer)} ${ry(ring.outer)} 0 1 1 ${round(outerEnd.x)} ${round(outerEnd.y)}` +
    line([...before].reverse()).replace('M', 'L') +
    `A${rx(ring.inner)} ${ry(ring.inner)} 0 1 0 ${round(innerStart.x)} ${round(innerStart.y)}Z`
  )
}
