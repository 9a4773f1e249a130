// Chooses what a picture of a cell consists of: the whole cell, a close-up, or both joined.
import { inks, lineWidths } from '../ink.ts'
import { oval, part, round, tag } from '../svg.ts'
import { cutAway } from './cut-away.ts'
import { halo, pointer } from './mark.ts'
import { measures, withoutSizes } from './measures.ts'
import { outsideView } from './outside-view.ts'
import { type CellParameters, isPeeled, type Peeled } from './parameters.ts'
import { peel } from './peel.ts'
import type { Box, Place, Scene } from './scene.ts'

/** The plain scene without marks. */
const scene = (params: CellParameters, box: Box, sameScale = false): Scene =>
  params.view === 'cut-away' ? cutAway(params, box) : outsideView(params, box, sameScale)

function joined(params: CellParameters, about: Peeled, box: Box): Scene {
  const left = { ...box, width: box.width * 0.3 }
  const whole = scene(params, left)
  const place = whole.places[about] as Place
  const close = {
    x: box.x + box.width * 0.42,
    y: box.y + box.height * 0.5 - box.width * 0.16,
    width: box.width * 0.56,
    height: box.width * 0.32,
  }
  const cone = tag('path', {
    d: `M${place.x + place.rx} ${place.y - place.ry * 0.6}L${close.x} ${close.y}M${place.x + place.rx} ${place.y + place.ry * 0.6}L${close.x} ${close.y + close.height}`,
    stroke: inks.point,
    'stroke-width': lineWidths.inner,
    'stroke-dasharray': '1 5',
  })
  const ring = halo(place, inks.point, 3.2)
  return { svg: whole.svg + part('pointer', cone, ring) + peel(params, about, close), places: whole.places }
}

/** A picture for a question: the whole cell with the part pointed at. */
export function lookHere(params: CellParameters, box: Box, bounds: Box): Scene {
  if (isPeeled(params)) return joined(params, params.pointAt, box)
  const about = params.pointAt
  const whole = scene(params, box)
  const sized = about === 'length' || about === 'diameter' || params.sizes
  const size = sized && params.view === 'side' ? measures(params, whole, bounds) : ''
  const place = whole.places[about]
  const mark = place === undefined || about === 'length' || about === 'diameter' ? '' : pointer(place, bounds)
  return { svg: whole.svg + size + mark, places: whole.places }
}

// Tells that are small on a whole end are cut out and enlarged.
const zooms: Readonly<Record<string, number>> = { vent: 1.45, 'weld-marks': 2.2 }
const positiveZooms: Readonly<Record<string, number>> = { welds: 1.7, terminal: 2.1 }

/** A round cut-out under a magnifying glass, in the colour of marks: it is no part of the cell, and larger than life. */
function enlarged(params: CellParameters, box: Box, zoom: number): Scene {
  const r = Math.min(box.width, box.height) / 2 - 3
  const [cx, cy] = [box.x + box.width / 2, box.y + box.height / 2]
  const lens = { x: cx - r, y: cy - r, width: 2 * r, height: 2 * r }
  const side = 2 * r * zoom
  const inner = scene(params, { x: r - side / 2, y: r - side / 2, width: side, height: side })
  const cut = `M${round(lens.x - 1)} ${round(lens.y - 1)}h${round(2 * r + 2)}v${round(2 * r + 2)}h${round(-2 * r - 2)}Z${oval(cx, cy, r - 1, r - 1)}`
  const k = r * Math.SQRT1_2
  const handle = `M${round(cx + k)} ${round(cy + k)}l${round(r * 0.26)} ${round(r * 0.26)}`
  const rim =
    tag('circle', { cx, cy, r: r - 1, fill: 'none', stroke: inks.point, 'stroke-width': 4 }) +
    tag('path', { d: handle, stroke: inks.point, 'stroke-width': 8 })
  const svg =
    tag('svg', { ...lens, overflow: 'hidden' }, inner.svg) +
    // Around the lens the tile's own ground covers what overhangs.
    tag('path', { d: cut, 'fill-rule': 'evenodd', fill: inks.casing }) +
    part('lens', rim)
  const moved = Object.entries(inner.places).map(
    ([name, p]) => [name, { ...p, x: p.x + lens.x, y: p.y + lens.y }] as const,
  )
  return { svg, places: Object.fromEntries(moved) }
}

/** A picture for an option or a verdict: as large as the tell allows, without a pointer, on a tile. */
export function lookClose(params: CellParameters, box: Box): Scene {
  const about = params.pointAt
  if (isPeeled(params)) {
    const height = Math.min(box.height - 12, box.width * 0.56)
    const close = { x: box.x + 8, y: box.y + (box.height - height) / 2, width: box.width - 18, height }
    const [rx, ry] = [close.width / 2 + 8, height / 2 + 6]
    const place: Place = { x: close.x + close.width / 2, y: close.y + height / 2, rx, ry, shape: 'box' }
    return { svg: peel(params, params.pointAt, close), places: { [about]: place } }
  }
  const zoom =
    params.view !== 'top' ? 1 : (zooms[about] ?? (params.end === 'positive' ? positiveZooms[about] : undefined) ?? 1)
  if (zoom > 1) return enlarged(params, box, zoom)
  const whole = scene(params, withoutSizes(params, box), true)
  const sized = params.view === 'side' && (about === 'length' || about === 'diameter' || params.sizes)
  return { svg: whole.svg + (sized ? measures(params, whole, box) : ''), places: whole.places }
}
