// A close-up of the side with the layers laid back one by one, so that one sees on which of them the print is.
import { INK, METAL, STROKE } from '../ink.ts'
import { part, round, tag } from '../svg.ts'
import { measureText } from '../type/measure.ts'
import { crossedBin } from './crossed-bin.ts'
import { dotCode } from './dot-code.ts'
import { breaks, letter, TEXTS, underline } from './lettering.ts'
import type { CellParameters, Peeled } from './parameters.ts'
import type { Box } from './scene.ts'
import { groundOf, printOn, underWrap } from './wrap-colours.ts'

type Layer = 'can' | 'second-wrap' | 'wrap'
type Zone = { layer: Layer; from: number }

const edge = { stroke: INK.line, 'stroke-width': STROKE.inner }

function zones(params: CellParameters, about: Peeled): Zone[] {
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
  if (layer === 'can') return METAL.light
  if (isClear(params, layer)) return '#ffffff'
  return layer === 'wrap' ? groundOf(params) : underWrap(params)
}

/** Bare metal mirrors its surroundings in hard bands, which no wrap does. */
const mirror = (zone: Zone, box: Box): string =>
  [
    { from: 0.2, tall: 0.07, fill: METAL.dark },
    { from: 0.62, tall: 0.12, fill: '#ffffff' },
  ]
    .map(({ from, tall, fill }) =>
      tag('rect', {
        x: box.x + zone.from * box.width + 2,
        y: box.y + from * box.height,
        width: (1 - zone.from) * box.width - 4,
        height: tall * box.height,
        fill,
        'fill-opacity': 0.6,
      }),
    )
    .join('')

function glare(x: number, box: Box): string {
  const streaks = [0.12, 0.2, 0.3].map(
    share =>
      `M${round(x + share * box.width)} ${round(box.y + box.height * 0.08)}l${round(-box.height * 0.1)} ${round(box.height * 0.84)}`,
  )
  return tag('path', { d: streaks.join(''), stroke: '#ffffff', 'stroke-width': 5, fill: 'none' })
}

function skin(params: CellParameters, zone: Zone, box: Box): string {
  const x = box.x + zone.from * box.width
  const end = box.x + box.width
  const bow = box.height * 0.1
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
    stroke: INK.line,
    'stroke-width': STROKE.outline,
  })
  // A layer that is laid back curls up: its edge is lighter, but of its own colour, or it would look like one more layer.
  const curl = `M${round(x)} ${top}${bend(-bow * 2)} ${round(x)} ${low}${bend(-bow * 0.9)} ${round(x)} ${top}Z`
  const lip = first
    ? ''
    : tag('path', { d: curl, fill }) + tag('path', { d: curl, fill: '#ffffff', 'fill-opacity': 0.45 })
  return part(
    `layer-${zone.layer}`,
    body,
    zone.layer === 'can' ? mirror(zone, box) : '',
    clear ? glare(x, box) : '',
    lip,
  )
}

function shade(box: Box): string {
  return part(
    'shading',
    tag('rect', {
      x: box.x,
      y: box.y + box.height * 0.78,
      width: box.width,
      height: box.height * 0.2,
      fill: INK.line,
      'fill-opacity': 0.13,
    }),
    tag('rect', {
      x: box.x + 2,
      y: box.y + box.height * 0.1,
      width: box.width - 4,
      height: box.height * 0.08,
      fill: '#ffffff',
      'fill-opacity': 0.5,
    }),
  )
}

const startOf = (list: Zone[], layer: Layer): number => list.find(zone => zone.layer === layer)?.from ?? 0

/** Where groups of letters stand, as shares of the width: all on one layer, or half of them running on under the next. */
function groups(
  whole: string,
  list: Zone[],
  home: Layer,
): { text: string; from: number; to: number; under: boolean }[] {
  const i = list.findIndex(zone => zone.layer === home)
  const from = list[i]?.from ?? 0
  const next = list[i + 1]
  const [first = '', second = ''] = whole.split(' ')
  if (next === undefined)
    return [{ text: list.length === 1 ? whole : first, from: from + 0.06, to: 0.94, under: false }]
  return [
    { text: first, from: from + 0.03, to: next.from - 0.08, under: false },
    { text: second, from: next.from + 0.03, to: 0.94, under: true },
  ].filter(one => one.text !== '')
}

/** The width in px of stand-in print, set a little wide. */
const wideOf = (text: string, size: number): number => measureText(text, size, 'bold') + text.length * size * 0.1

function letters(params: CellParameters, list: Zone[], box: Box): string {
  if (params.lettering === 'none') return ''
  const home: Layer = list.some(zone => zone.layer === params.lettering) ? (params.lettering as Layer) : 'wrap'
  const ink = home === 'wrap' ? printOn(params) : INK.line
  const ground = home === 'wrap' ? groundOf(params) : METAL.light
  const set = groups(TEXTS[params.wording], list, home)
  const size = Math.min(box.height * 0.4, ...set.map(one => ((one.to - one.from) * box.width) / wideOf(one.text, 1)))
  const base = box.y + box.height * 0.47 + size * 0.36
  return part(
    'lettering',
    ...set.map(({ text, from, to, under }) => {
      const width = wideOf(text, size)
      const start = box.x + from * box.width + ((to - from) * box.width - width) / 2
      const see = under && params.wrapColour !== 'clear' ? 0.34 : 1
      const middle = (k: number): number => start + wideOf(text.slice(0, k), size) + wideOf(text[k] ?? '', size) / 2
      const signs = [...text].map((sign, k) => letter(sign, middle(k), base, size, params.letteringPrint, ink, see))
      const broken = params.letteringPrint === 'broken' ? breaks(start, base, width, size, ground) : ''
      const wrong =
        params.wording === 'misspelt'
          ? underline(middle(4) - size * 0.34, base + size * 0.24, size * 1.05, INK.against)
          : ''
      return signs.join('') + broken + wrong
    }),
  )
}

function code(params: CellParameters, list: Zone[], box: Box): string {
  if (params.code === 'none') return ''
  const alone = list.length === 1
  const split = startOf(list, 'wrap')
  const share = alone ? 0.5 : params.code === 'can' ? split / 2 - 0.02 : (split + 1) / 2 + 0.02
  const room = alone ? 1 : params.code === 'can' ? split : 1 - split
  const side = Math.min(box.height * (alone ? 0.74 : 0.56), room * box.width * 0.66)
  return dotCode(
    box.x + share * box.width,
    box.y + box.height * 0.47,
    side,
    { kind: params.codeKind, print: params.codePrint },
    params.code === 'can' ? INK.line : printOn(params),
  )
}

function binMark(params: CellParameters, box: Box): string {
  const side = box.height * 0.66
  return params.bin
    ? crossedBin(box.x + box.width / 2, box.y + box.height * 0.47, side, printOn(params), groundOf(params))
    : ''
}

/** Draws the close-up of `about` into `box`. */
export function peel(params: CellParameters, about: Peeled, box: Box): string {
  const list = zones(params, about)
  const seam =
    about === 'seam' && params.seam
      ? part(
          'seam',
          tag('rect', {
            x: box.x,
            y: box.y + box.height * 0.52,
            width: box.width,
            height: box.height * 0.1,
            fill: INK.line,
            'fill-opacity': 0.22,
          }),
          tag('path', { d: `M${box.x} ${box.y + box.height * 0.52}h${box.width}`, ...edge }),
        )
      : ''
  const marks = about.startsWith('lettering')
    ? letters(params, list, box)
    : about.startsWith('code')
      ? code(params, list, box)
      : about === 'bin'
        ? binMark(params, box)
        : ''
  return part('peel', ...list.map(zone => skin(params, zone, box)), shade(box), seam, marks)
}
