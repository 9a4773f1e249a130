// Light and shade on the side: a band of each on a wrap, hard reflections on bare metal, the fold inside a dent.
import { inks, metals } from '../ink.ts'
import { line, part, tag } from '../svg.ts'
import { type Cell, heights } from './anatomy.ts'
import { type Camera, rise } from './camera.ts'
import type { CellParameters } from './parameters.ts'
import { breakWave, dentAt, dentSize, reachAt } from './silhouette.ts'

/** Draws the bands down to `bottom` mm; `cut` ends them at a break line. */
export function shading(params: CellParameters, cell: Cell, camera: Camera, bottom: number, cut: boolean): string {
  const px = cell.radius * camera.scale
  const bowed = params.swollen || params.dent !== 'none'
  const top = heights.fold * cell.grow - 0.6
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
      ? strip(-0.5, -0.34, metals.deep, 0.5) + strip(-0.12, 0.3, '#ffffff', 0.75) + strip(0.4, 0.52, metals.deep, 0.5)
      : ''
  return part('shading', mirror, strip(0.62, 0.97, inks.line, 0.16), strip(-0.78, -0.66, '#ffffff', 0.5))
}

/** The fold a dent leaves inside its bite. */
export function crease(params: CellParameters, cell: Cell, camera: Camera): string {
  const middle = dentAt(params, cell)
  if (middle === undefined) return ''
  const reach = dentSize.reach * 0.62
  const bite = (t: number, inset: number) => {
    const z = middle + t * reach
    const share = reachAt(params, cell, z, 1) - inset
    return { x: camera.x + share * cell.radius * camera.scale, y: camera.y - rise(camera) * z }
  }
  const steps = [-1, -0.7, -0.35, 0, 0.35, 0.7, 1].filter(
    t => middle + t * reach > -cell.length && middle + t * reach < -1,
  )
  const shape = [...steps.map(t => bite(t, 0.02)), ...steps.toReversed().map(t => bite(t, 0.05 + 0.26 * (1 - t * t)))]
  return part('crease', tag('path', { d: line(shape, true), fill: inks.line, 'fill-opacity': 0.3 }))
}
