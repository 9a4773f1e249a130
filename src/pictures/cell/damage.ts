// Signs that a cell is unsafe: leak, rust, water, heat, smoke, swelling.
import { DAMAGE, INK, STROKE } from '../ink.ts'
import { type Point, part, round, tag } from '../svg.ts'
import { type Cell, HEIGHT } from './anatomy.ts'
import { blob, drop, run } from './blob.ts'
import { type Camera, rise, spot } from './camera.ts'
import type { CellParameters } from './parameters.ts'

const edge = { stroke: INK.line, 'stroke-width': STROKE.inner }
const liquid = { fill: DAMAGE.leak, ...edge }

/** Liquid on an end, running over its edge; `below` is how far it runs down in px (0 when seen straight from above). */
function leak(cell: Cell, camera: Camera, below: number): string {
  const r = cell.radius
  const pool = spot(camera, 0.72 * r, 2.2, 0.4)
  const px = r * camera.scale
  const runs =
    below === 0
      ? ''
      : [
          [2.35, 0.16, 1],
          [1.95, 0.13, 0.62],
        ]
          .map(([angle = 0, width = 0, share = 0]) => {
            const p = spot(camera, r, angle, HEIGHT.fold * cell.grow)
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
        fill: DAMAGE.crust,
        stroke: INK.line,
        'stroke-width': STROKE.fine,
      })
    })
    .join('')
  return (
    runs +
    tag('path', { d: blob(pool.x, pool.y, px * 0.4, px * 0.27 * Math.max(camera.tilt, 0.4), 3), ...liquid }) +
    crust
  )
}

const RUST: readonly (readonly [number, number, number])[] = [
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
    tag('path', { d: shapes + specks.join(''), fill: DAMAGE.rust }) +
    tag('path', { d: cores.join(''), fill: DAMAGE.rustDark })
  )
}

/** Rust on an end. */
const rust = (cell: Cell, camera: Camera, z: number): string =>
  rustOf(
    RUST.map(([angle, at, size]) => {
      const p = spot(camera, at * cell.radius, angle, at < 0.3 ? z : 0.2)
      const rx = size * cell.radius * camera.scale * 1.25
      return { ...p, rx, ry: rx * Math.max(camera.tilt, 0.3) }
    }),
  )

const EDGE_RUST = [
  [-0.78, -0.18, 0.2],
  [-0.42, -0.02, 0.26],
  [-0.02, -0.06, 0.24],
  [0.4, 0, 0.26],
  [0.74, -0.16, 0.2],
  [-0.2, -0.34, 0.14],
  [0.5, -0.36, 0.13],
]

/** Rust along an edge that is seen from the side, around paper height `y`. */
const edgeRust = (x: number, y: number, px: number): string =>
  rustOf(
    EDGE_RUST.map(([dx = 0, dy = 0, s = 0]) => ({ x: x + dx * px, y: y + dy * px, rx: s * px, ry: s * px * 0.75 })),
  )

/** Drops of water at places given as shares of a box. */
const DROPS: readonly (readonly [number, number, number])[] = [
  [0.3, 0.2, 1],
  [0.68, 0.34, 0.8],
  [0.42, 0.5, 1.1],
  [0.72, 0.64, 1],
  [0.3, 0.76, 0.8],
]

export const waterDrops = (x: number, y: number, width: number, height: number, size: number): string =>
  DROPS.map(([dx, dy, s]) => {
    const [px, py] = [x + dx * width, y + dy * height]
    return (
      tag('path', { d: drop(px, py, size * s), fill: DAMAGE.water, ...edge }) +
      tag('path', {
        d: `M${round(px - size * s * 0.3)} ${round(py + size * s * 1.5)}a${round(size * s * 0.4)} ${round(size * s * 0.4)} 0 0 0 ${round(size * s * 0.3)} ${round(size * s * 0.45)}`,
        fill: 'none',
        stroke: '#ffffff',
        'stroke-width': STROKE.inner,
      })
    )
  }).join('')

/** Wavy lines of heat or puffs of smoke over the point `at`, `size` px tall. */
export function heatOver(params: CellParameters, at: Point, size: number): string {
  if (params.heat === 'none') return ''
  if (params.heat === 'hot') {
    const wave = (x: number): string =>
      `M${round(x)} ${round(at.y)}q${round(size * 0.22)} ${round(-size * 0.25)} 0 ${round(-size * 0.5)}t0 ${round(-size * 0.5)}`
    const d = [-0.5, 0, 0.5].map(k => wave(at.x + k * size * 0.9)).join('')
    return part('heat', tag('path', { d, fill: 'none', stroke: INK.against, 'stroke-width': STROKE.outline * 1.2 }))
  }
  const puffs = [
    [0, -0.06, 0.13],
    [0.1, -0.26, 0.17],
    [-0.12, -0.42, 0.2],
    [0.14, -0.56, 0.22],
    [-0.04, -0.8, 0.26],
    [0.28, -0.84, 0.2],
  ]
  // Inked first and filled after, so that the puffs run into one cloud with one outline.
  const puff = ([dx = 0, dy = 0, r = 0]: number[], style: Record<string, string | number>): string =>
    tag('circle', { cx: at.x + dx * size, cy: at.y + dy * size, r: r * size, ...style })
  const inked = puffs.map(one => puff(one, { fill: INK.line, stroke: INK.line, 'stroke-width': STROKE.outline * 1.4 }))
  return part('smoke', ...inked, ...puffs.map(one => puff(one, { fill: '#d3d6d9' })))
}

/** What shows on the end that faces the viewer. */
export function endDamage(
  params: CellParameters,
  cell: Cell,
  camera: Camera,
  below: number,
  terminalZ: number,
): string {
  const side = params.view === 'side'
  const here = params.end === 'negative' && !side ? 'bottom' : 'top'
  return (
    part(
      'rust',
      params.rust !== here
        ? ''
        : side
          ? edgeRust(camera.x, camera.y + cell.radius * camera.scale * 0.28, cell.radius * camera.scale)
          : rust(cell, camera, terminalZ),
    ) + part('leak', params.leak === here ? leak(cell, camera, below) : '')
  )
}

/** What shows at the far end in a side view: liquid and rust around the bottom edge, `bottom` in mm. */
export function footDamage(params: CellParameters, cell: Cell, camera: Camera, bottom: number): string {
  const r = cell.radius
  const px = r * camera.scale
  const y = camera.y - rise(camera) * bottom + px * camera.tilt * 0.9
  let out = ''
  if (params.leak === 'bottom') {
    const pool = tag('path', { d: blob(camera.x - px * 0.1, y + px * 0.16, px * 1.35, px * 0.26, 4), ...liquid })
    out += part(
      'leak',
      pool,
      tag('path', { d: run(camera.x - px * 0.4, y - px * 0.75, px * 0.2, px * 0.8), ...liquid }),
    )
  }
  if (params.rust === 'bottom') out += part('rust', edgeRust(camera.x, y - px * 0.1, px))
  return out
}
