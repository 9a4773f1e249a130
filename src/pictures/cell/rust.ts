// Rust: patches that run into each other, on an end or along an edge.
import { damageInks } from '../ink.ts'
import { tag } from '../svg.ts'
import type { Cell } from './anatomy.ts'
import { blob } from './blob.ts'
import { type Camera, spot } from './camera.ts'

const rustSpots: readonly (readonly [number, number, number])[] = [
  [0.5, 0.72, 0.15],
  [0.95, 0.66, 0.1],
  [1.35, 0.78, 0.13],
  [1.9, 0.7, 0.17],
  [2.6, 0.74, 0.11],
  [3.3, 0.68, 0.14],
  [4.1, 0.76, 0.16],
  [4.8, 0.68, 0.1],
  [5.5, 0.74, 0.13],
  [0.2, 0.16, 0.1],
  [2.3, 0.14, 0.12],
]

type Patch = { x: number; y: number; rx: number; ry: number }

/** Patches that run into each other; a light casing around them all keeps rust visible on a brown or red wrap. */
function rustOf(patches: readonly Patch[]): string {
  const shapes = patches.map(({ x, y, rx, ry }, i) => blob(x, y, rx, ry, i)).join('')
  const specks = patches.flatMap(({ x, y, rx, ry }, i) =>
    [
      [1.35, 0.7, 0.22],
      [-1.15, 1.05, 0.18],
      [1.1, -1.1, 0.16],
    ].map(([dx = 0, dy = 0, size = 0]) => blob(x + rx * dx, y + ry * dy, rx * size, rx * size, i)),
  )
  const cores = patches.map(({ x, y, rx, ry }, i) => blob(x - rx * 0.2, y + ry * 0.15, rx * 0.5, ry * 0.4, i + 3))
  return (
    tag('path', { d: shapes, fill: 'none', stroke: '#fff1dc', 'stroke-width': 1.8 }) +
    tag('path', { d: shapes + specks.join(''), fill: damageInks.rust }) +
    tag('path', { d: cores.join(''), fill: damageInks.rustDark })
  )
}

/** Rust on an end; `z`: the height of its terminal in mm. */
export const endRust = (cell: Cell, camera: Camera, z: number): string =>
  rustOf(
    rustSpots.map(([angle, at, size]) => {
      const p = spot(camera, at * cell.radius, angle, at < 0.3 ? z : 0.2)
      const rx = size * cell.radius * camera.scale * 1.25
      return { ...p, rx, ry: rx * Math.max(camera.tilt, 0.3) }
    }),
  )

const edgeStains = [
  [-0.78, -0.18, 0.2],
  [-0.42, -0.02, 0.26],
  [-0.02, -0.06, 0.24],
  [0.4, 0, 0.26],
  [0.74, -0.16, 0.2],
  [-0.2, -0.34, 0.14],
  [0.5, -0.36, 0.13],
]

/** Rust along an edge that is seen from the side, around paper height `y`. */
export const edgeRust = (x: number, y: number, px: number): string =>
  rustOf(
    edgeStains.map(([dx = 0, dy = 0, s = 0]) => ({ x: x + dx * px, y: y + dy * px, rx: s * px, ry: s * px * 0.75 })),
  )
