// The outside of the cell below its rim: can, wrap, seam, print, tear, board.
import { INK, METAL, STROKE } from '../ink.ts'
import { line, part, round, tag } from '../svg.ts'
import { type Cell, HEIGHT } from './anatomy.ts'
import { blob } from './blob.ts'
import { arc, type Camera, rise, spot } from './camera.ts'
import { crossedBin } from './crossed-bin.ts'
import { dotCode } from './dot-code.ts'
import { TEXTS } from './lettering.ts'
import type { CellParameters } from './parameters.ts'
import { breakWave, DENT, dentAt, lowest, reachAt, silhouette } from './silhouette.ts'
import { TEAR } from './top-face.ts'
import { groundOf, printOn } from './wrap-colours.ts'

const edge = { stroke: INK.line, 'stroke-width': STROKE.inner, fill: 'none' }

function shading(params: CellParameters, cell: Cell, camera: Camera, bottom: number, cut: boolean): string {
  const px = cell.radius * camera.scale
  const bowed = params.swollen || params.dent !== 'none'
  const top = HEIGHT.fold * cell.grow - 0.6
  const low = cut ? bottom : bottom + 1.2
  const at = (share: number, z: number) => ({
    x: camera.x + share * px,
    y: camera.y - rise(camera) * z + Math.sqrt(Math.max(0, 1 - share * share)) * px * camera.tilt,
  })
  const end = (share: number) => {
    const p = at(share, low)
    return cut ? { x: p.x, y: camera.y - rise(camera) * bottom + breakWave(share, px) } : p
  }
  // Over a break line the last millimetres are left out: the wave would cut through the shade.
  const last = cut ? low + 2.6 : low
  const edgeOf = (to: number) =>
    bowed && to > 0.9
      ? Array.from({ length: 40 }, (_, i) =>
          at(reachAt(params, cell, top + ((last - top) * i) / 39, 1) - 0.03, top + ((last - top) * i) / 39),
        )
      : [at(to, top), end(to)]
  const strip = (from: number, to: number, fill: string, opacity: number): string =>
    tag('path', { d: line([at(from, top), ...edgeOf(to), end(from)], true), fill, 'fill-opacity': opacity })
  // Bare metal mirrors its surroundings in hard bands; a wrap only dims towards its edge.
  const mirror =
    params.wrap === 'missing'
      ? strip(-0.5, -0.34, METAL.deep, 0.5) + strip(-0.12, 0.3, '#ffffff', 0.75) + strip(0.4, 0.52, METAL.deep, 0.5)
      : ''
  return part('shading', mirror, strip(0.62, 0.97, INK.line, 0.16), strip(-0.78, -0.66, '#ffffff', 0.5))
}

function print(params: CellParameters, cell: Cell, camera: Camera): string {
  const see = (place: string): number =>
    place === 'wrap' || params.wrap === 'missing' || params.wrapColour === 'clear' ? 1 : 0.38
  const r = cell.radius * camera.scale
  const at = (z: number): number => camera.y - rise(camera) * z + r * camera.tilt
  let out = ''
  if (params.lettering !== 'none') {
    const y = at(-cell.length * 0.36)
    const style = {
      'font-size': r * 0.62,
      'font-weight': 700,
      'text-anchor': 'middle',
      fill: printOn(params),
      'fill-opacity': see(params.lettering),
      transform: `translate(${round(camera.x + r * 0.14)} ${round(y)}) rotate(-90)`,
    }
    out += part('lettering', tag('text', style, TEXTS[params.wording]))
  }
  if (params.code !== 'none') {
    out += dotCode(
      camera.x - r * 0.08,
      at(-cell.length * 0.76),
      r * 0.72,
      { kind: params.codeKind, print: params.codePrint },
      printOn(params),
      see(params.code),
    )
  }
  if (params.bin)
    out += crossedBin(camera.x - r * 0.08, at(-cell.length * 0.63), r * 0.66, printOn(params), groundOf(params))
  return out
}

function tear(params: CellParameters, cell: Cell, camera: Camera, reach: number): string {
  if (params.wrap !== 'torn') return ''
  const { start, end } = TEAR.wrap
  const { radius: r, grow } = cell
  const at = (angle: number, z: number) => spot(camera, r, angle, (z === HEIGHT.fold ? z : z * reach) * grow)
  const hole = [
    at(start, HEIGHT.fold),
    at(0.86, -3.4),
    at(0.74, -5.2),
    at(0.98, -8),
    at(0.9, -10.5),
    at(1.16, -13.5),
    at(1.22, -9.6),
    at(1.42, -6.8),
    at(1.28, -4.2),
    at(end, HEIGHT.fold),
  ]
  const flap = [at(1.42, -6.8), at(1.22, -9.6), at(1.16, -13.5), at(1.46, -12.2), at(1.68, -9)]
  const groove = arc(camera, r * 0.97, HEIGHT.groove * grow, 0.85, 1.28)
  return part(
    'tear',
    tag('path', { d: line(hole), ...edge, fill: METAL.light }),
    tag('path', { d: groove, ...edge, stroke: METAL.dark }),
    tag('path', { d: line(flap, true), ...edge, fill: '#fdfdfb' }),
  )
}

/** The fold a dent leaves inside its bite. */
function crease(params: CellParameters, cell: Cell, camera: Camera): string {
  const middle = dentAt(params, cell)
  if (middle === undefined) return ''
  const reach = DENT.reach * 0.62
  const bite = (t: number, inset: number) => {
    const z = middle + t * reach
    const share = reachAt(params, cell, z, 1) - inset
    return { x: camera.x + share * cell.radius * camera.scale, y: camera.y - rise(camera) * z }
  }
  const steps = [-1, -0.7, -0.35, 0, 0.35, 0.7, 1].filter(
    t => middle + t * reach > -cell.length && middle + t * reach < -1,
  )
  const shape = [...steps.map(t => bite(t, 0.02)), ...steps.toReversed().map(t => bite(t, 0.05 + 0.26 * (1 - t * t)))]
  return part('crease', tag('path', { d: line(shape, true), fill: INK.line, 'fill-opacity': 0.3 }))
}

/** A scorched patch on the wrap. */
function scorch(params: CellParameters, cell: Cell, camera: Camera): string {
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
    tag('path', { d: cracks.join(''), fill: 'none', stroke: '#c98a4b', 'stroke-width': STROKE.fine }),
  )
}

/** Draws the side down to `bottom` mm; `cut` ends it in a break line. */
export function body(params: CellParameters, cell: Cell, camera: Camera, bottom: number, cut: boolean): string {
  const outline = silhouette(params, cell, camera, bottom, cut)
  const { radius, grow } = cell
  const front = (z: number, share = 1): string =>
    arc(camera, radius * share, z, params.dent === 'top-edge' ? 0.95 : 0.12, Math.PI - 0.12)
  const groove = tag('path', { d: front(HEIGHT.groove * grow, 0.955), ...edge, 'stroke-opacity': 0.55 })
  const seamX = camera.x - 0.58 * radius * camera.scale
  const seamTop = camera.y - rise(camera) * HEIGHT.fold * grow + 0.8 * radius * camera.scale * camera.tilt
  const seamEnd = camera.y - rise(camera) * (bottom + 0.6) + (cut ? 0 : 0.8 * radius * camera.scale * camera.tilt)
  const seam =
    params.seam && params.wrap !== 'missing'
      ? tag('path', {
          d: `M${round(seamX)} ${round(seamTop)}V${round(seamEnd)}h5V${round(seamTop)}Z`,
          fill: INK.line,
          'fill-opacity': 0.22,
        }) + tag('path', { d: `M${round(seamX)} ${round(seamTop)}V${round(seamEnd)}`, ...edge })
      : ''
  const board = params.board && !cut ? boardMarks(params, cell, camera) : ''
  const shine =
    params.wrapColour === 'clear' && params.wrap !== 'missing'
      ? tag('path', {
          d: silhouette(params, cell, { ...camera, scale: camera.scale }, bottom, cut),
          fill: '#ffffff',
          'fill-opacity': 0.35,
        })
      : ''
  return (
    part(
      'body',
      tag('path', { d: outline, fill: groundOf(params), stroke: INK.line, 'stroke-width': STROKE.outline }),
      shine,
    ) +
    shading(params, cell, camera, bottom, cut) +
    crease(params, cell, camera) +
    part('groove', groove) +
    part('seam', seam) +
    board +
    (cut ? '' : print(params, cell, camera) + scorch(params, cell, camera)) +
    tear(params, cell, camera, cut ? 0.6 : 1)
  )
}

/** A protection board: a plate under the negative end, and the strip that runs to it down the side, both over-wrapped. */
function boardMarks(params: CellParameters, cell: Cell, camera: Camera): string {
  const { radius, grow } = cell
  const x = camera.x + 0.44 * radius * camera.scale
  const down = 0.9 * radius * camera.scale * camera.tilt
  const y = (z: number): string => round(camera.y - rise(camera) * z + down)
  const step = tag('path', {
    d: arc(camera, radius, -cell.length, 0, Math.PI),
    ...edge,
    'stroke-width': STROKE.outline,
  })
  const wide = round(0.2 * radius * camera.scale)
  const strip = tag('path', {
    d: `M${round(x)} ${y(-6 * grow)}V${y(lowest(params, cell) + 1)}h${wide}V${y(-6 * grow)}z`,
    ...edge,
    fill: '#ffffff',
    'fill-opacity': 0.35,
  })
  return part('board', strip, step)
}
