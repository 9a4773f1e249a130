// The layers of the side in a close-up: can, second wrap, wrap, each laid back from the one below.
import { inks, lineWidths, metals } from '../ink.ts'
import { line, type Point, part, round, tag } from '../svg.ts'
import type { CellParameters, Peeled } from './parameters.ts'
import type { Box } from './scene.ts'
import { groundOf, underWrap } from './wrap-colours.ts'

export type Layer = 'can' | 'second-wrap' | 'wrap'
/** A layer and where it begins, as a share of the width; each lies on those before it. */
export type Zone = { layer: Layer; from: number }

/** The layers a close-up about that part lays back, the lowest first; one where layers do not matter. */
export function zones(params: CellParameters, about: Peeled): Zone[] {
  if (params.wrap === 'missing') return [{ layer: 'can', from: 0 }]
  if (about === 'seam' || about === 'bin' || about === 'lettering-print' || about === 'code-print') {
    const place = about === 'code-print' ? params.code : params.lettering
    const bare = about.endsWith('print') && place === 'can'
    return bare ? [{ layer: 'can', from: 0 }] : [{ layer: 'wrap', from: 0 }]
  }
  const second = params.secondWrap !== 'none' || (about === 'lettering' && params.lettering === 'second-wrap')
  const first: Zone = { layer: 'can', from: 0 }
  if (!second)
    return [first, { layer: 'wrap', from: about === 'second-wrap' || params.lettering === 'wrap' ? 0.34 : 0.45 }]
  return [first, { layer: 'second-wrap', from: 0.22 }, { layer: 'wrap', from: 0.63 }]
}

const isClear = (params: CellParameters, layer: Layer): boolean =>
  layer === 'second-wrap' ? params.secondWrap !== 'coloured' : layer === 'wrap' && params.wrapColour === 'clear'

function fillOf(params: CellParameters, layer: Layer): string {
  if (layer === 'can') return metals.light
  if (isClear(params, layer)) return '#ffffff'
  return layer === 'wrap' ? groundOf(params) : underWrap(params)
}

/** How far the broken ends swing to the right at `share` of the height: left above the middle, right below it. */
function swing(box: Box, share: number): number {
  const along = (share % 0.5) * 2
  return (share < 0.5 ? -1 : 1) * 2 * along * (1 - along) * usualBow * box.height
}

const usualBow = 0.1

/** A level band of light or shade between two heights (as shares) from end to end of the close-up, however these swing. */
export function band(box: Box, from: number, to: number, fill: string, opacity: number): string {
  const shares = Array.from({ length: 5 }, (_, i) => from + ((to - from) * i) / 4)
  const edge = (x: number): Point[] =>
    shares.map(share => ({ x: x + swing(box, share), y: box.y + share * box.height }))
  const shape = line([...edge(box.x), ...edge(box.x + box.width).reverse()], true)
  return tag('path', { d: shape, fill, 'fill-opacity': opacity })
}

/** Bare metal mirrors its surroundings in hard bands, which no wrap does. */
const mirror = (box: Box): string => band(box, 0.2, 0.27, metals.dark, 0.6) + band(box, 0.62, 0.74, '#ffffff', 0.6)

function glare(x: number, box: Box): string {
  const streaks = [0.12, 0.2, 0.3].map(
    share =>
      `M${round(x + share * box.width)} ${round(box.y + box.height * 0.08)}l${round(-box.height * 0.1)} ${round(box.height * 0.84)}`,
  )
  return tag('path', { d: streaks.join(''), stroke: '#ffffff', 'stroke-width': 5, fill: 'none' })
}

/** Draws one layer from where it begins to the right end. */
export function drawLayer(params: CellParameters, zone: Zone, box: Box): string {
  const x = box.x + zone.from * box.width
  const end = box.x + box.width
  const bow = box.height * usualBow
  const [top, low] = [round(box.y), round(box.y + box.height)]
  const bend = (dx: number): string => `Q${round(x + dx)} ${round(box.y + box.height / 2)}`
  const wave = (way: 1 | -1): string =>
    `q${round(-way * bow)} ${round((way * box.height) / 4)} 0 ${round((way * box.height) / 2)}t0 ${round((way * box.height) / 2)}`
  // The left edge bows with the cylinder; the first layer and the far end are broken off in a wave.
  const first = zone.from === 0
  const left = `M${round(x)} ${top}${first ? wave(1) : `${bend(-bow * 2)} ${round(x)} ${low}`}`
  const clear = isClear(params, zone.layer)
  const fill = fillOf(params, zone.layer)
  const body = tag('path', {
    d: `${left}H${round(end)}${wave(-1)}Z`,
    fill,
    'fill-opacity': clear ? 0.5 : undefined,
    stroke: inks.line,
    'stroke-width': lineWidths.outline,
  })
  // A layer that is laid back curls up: its edge is lighter, but of its own colour, or it would look like one more layer.
  const curl = `M${round(x)} ${top}${bend(-bow * 2)} ${round(x)} ${low}${bend(-bow * 0.9)} ${round(x)} ${top}Z`
  const lip = first
    ? ''
    : tag('path', { d: curl, fill }) + tag('path', { d: curl, fill: '#ffffff', 'fill-opacity': 0.45 })
  return part(`layer-${zone.layer}`, body, zone.layer === 'can' ? mirror(box) : '', clear ? glare(x, box) : '', lip)
}
