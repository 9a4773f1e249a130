// A close-up of the side with the layers laid back one by one, so that one sees on which of them the print is.
import { inks, lineWidths, metals } from '../ink.ts'
import { part, tag } from '../svg.ts'
import { measureText } from '../type/measure.ts'
import { crossedBin } from './crossed-bin.ts'
import { dotCode } from './dot-code.ts'
import { band, drawLayer, type Layer, type Zone, zones } from './layers.ts'
import { breaks, letter, letterings, underline } from './lettering.ts'
import type { CellParameters, Peeled } from './parameters.ts'
import type { Box } from './scene.ts'
import { groundOf, printOn } from './wrap-colours.ts'

const edge = { stroke: inks.line, 'stroke-width': lineWidths.inner }

const shade = (box: Box): string =>
  part('shading', band(box, 0.78, 0.98, inks.line, 0.13) + band(box, 0.1, 0.18, '#ffffff', 0.5))

const startOf = (list: readonly Zone[], layer: Layer): number => list.find(zone => zone.layer === layer)?.from ?? 0

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
  const ink = home === 'wrap' ? printOn(params) : inks.line
  const ground = home === 'wrap' ? groundOf(params) : metals.light
  const set = groups(letterings[params.wording], list, home)
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
          ? underline(middle(4) - size * 0.34, base + size * 0.24, size * 1.05, inks.against)
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
    params.code === 'can' ? inks.line : printOn(params),
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
            fill: inks.line,
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
  return part('peel', ...list.map(zone => drawLayer(params, zone, box)), shade(box), seam, marks)
}
