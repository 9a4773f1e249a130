// A close-up of the side with the layers laid back one by one, so that one sees on which of them the print is.
import { inks, lineWidths, metals } from '../ink.ts'
import { part, tag } from '../svg.ts'
import { measureText } from '../type/measure.ts'
import { crossedBin } from './crossed-bin.ts'
import { dotCode } from './dot-code.ts'
import { band, drawLayer, type Layer, type Zone, zones } from './layers.ts'
import { breaks, letter, letterings, sheen, underline } from './lettering.ts'
import type { CellParameters, Peeled } from './parameters.ts'
import type { Box } from './scene.ts'
import { groundOf, printOn } from './wrap-colours.ts'

const edge = { stroke: inks.line, 'stroke-width': lineWidths.inner }

const shade = (box: Box): string =>
  part('shading', band(box, 0.78, 0.98, inks.line, 0.13) + band(box, 0.1, 0.18, '#ffffff', 0.5))

const startOf = (list: readonly Zone[], layer: Layer): number => list.find(zone => zone.layer === layer)?.from ?? 0

/** Where letters stand, as shares of the width: on one layer, or running on under the next, whose edge then cuts across them. */
function standing(
  whole: string,
  list: Zone[],
  home: Layer,
): { text: string; from: number; to: number; under: boolean } {
  const i = list.findIndex(zone => zone.layer === home)
  const from = list[i]?.from ?? 0
  const under = list[i + 1] !== undefined
  const [first = ''] = whole.split(' ')
  const text = under ? whole.replaceAll(' ', '') : list.length === 1 ? whole : first
  return { text, from: from + (under ? 0.03 : 0.06), to: 0.94, under }
}

/** The width in px of stand-in print, set a little wide. */
const wideOf = (text: string, size: number): number => measureText(text, size, 'bold') + text.length * size * 0.1

/** `below`: what is drawn before the layers that lie on it; `over`: what shows of it on or through them. */
function letters(params: CellParameters, list: Zone[], box: Box): { readonly below: string; readonly over: string } {
  if (params.lettering === 'none') return { below: '', over: '' }
  const home = homeOf(params, list)
  const ink = home === 'wrap' ? printOn(params) : inks.line
  const ground = home === 'wrap' ? groundOf(params) : metals.light
  const { text, from, to, under } = standing(letterings[params.wording], list, home)
  const size = Math.min(box.height * 0.4, ((to - from) * box.width) / wideOf(text, 1))
  const base = box.y + box.height * 0.47 + size * 0.36
  const width = wideOf(text, size)
  const start = box.x + from * box.width + ((to - from) * box.width - width) / 2
  const middle = (k: number): number => start + wideOf(text.slice(0, k), size) + wideOf(text[k] ?? '', size) / 2
  const signs = (see: number): string =>
    [...text].map((sign, k) => letter(sign, middle(k), base, size, params.letteringPrint, ink, see)).join('')
  const broken = params.letteringPrint === 'broken' ? breaks(start, base, width, size, ground) : ''
  const wrong =
    params.wording === 'misspelt'
      ? underline(middle(4) - size * 0.34, base + size * 0.24, size * 1.05, inks.against)
      : ''
  if (!under || params.wrapColour === 'clear') return { below: '', over: part('lettering', signs(1), broken, wrong) }
  const covered = list[list.findIndex(zone => zone.layer === home) + 1]?.from ?? 0
  const shine = sheen(
    box.x + (covered + 0.05) * box.width,
    box.y + box.height * 0.06,
    (0.92 - covered) * box.width,
    box.height * 0.88,
    true,
  )
  return {
    below: part('lettering', signs(1)),
    over: part('lettering', signs(0.34), broken, wrong, part('sheen', shine)),
  }
}

const homeOf = ({ lettering }: CellParameters, list: readonly Zone[]): Layer =>
  list.find(zone => zone.layer === lettering)?.layer ?? 'wrap'

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
  const said = about.startsWith('lettering') ? letters(params, list, box) : { below: '', over: '' }
  const marks = about.startsWith('lettering')
    ? said.over
    : about.startsWith('code')
      ? code(params, list, box)
      : about === 'bin'
        ? binMark(params, box)
        : ''
  // Print is drawn on its own layer, so that the next one lies on it and cuts across it.
  const home = homeOf(params, list)
  const layers = list.map(zone => drawLayer(params, zone, box) + (zone.layer === home ? said.below : ''))
  return part('peel', ...layers, shade(box), seam, marks)
}
