// Letters on a can or wrap: what they say, and how well they are printed.
import { round, tag } from '../svg.ts'
import type { CellParameters } from './parameters.ts'

type Wording = CellParameters['wording']

/**
 * What stands on the drawn cell. Size codes and chemistry letters are the trade's (18650 by common practice, INR19/66 after
 * IEC 61960-3, from memory); the rest means nothing, since no real marking may be drawn.
 */
export const letterings: Readonly<Record<Wording, string>> = {
  signs: 'ABC 123',
  word: 'LITHIUM',
  misspelt: 'LITHUIM',
  'trade-code': '18650',
  'standard-code': 'INR19/66',
  nickel: 'INR 3.7V',
  iron: 'IFR 3.2V',
  contrary: 'IFR 3.7V',
  capacity: '????mAh',
  current: '?? A',
}

type Print = CellParameters['letteringPrint']

// Many faint copies on two rings and in the middle: soft edges, where three copies showed as steps.
const smears: readonly (readonly [number, number])[] = [0.045, 0.085].flatMap(r =>
  Array.from({ length: 6 }, (_, i): [number, number] => [
    r * 1.3 * Math.cos((Math.PI * i) / 3 + r * 6),
    r * Math.sin((Math.PI * i) / 3 + r * 6),
  ]),
)

/** One stand-in letter centred on `x` with its base line at `y`, in the given print quality; `see` fades it. */
export function letter(sign: string, x: number, y: number, size: number, print: Print, fill: string, see = 1): string {
  const one = (dx: number, dy: number, opacity: number): string =>
    tag(
      'text',
      {
        x: x + dx,
        y: y + dy,
        'font-size': size,
        'font-weight': 700,
        'text-anchor': 'middle',
        fill,
        'fill-opacity': opacity * see,
      },
      sign,
    )
  if (print === 'faint') return one(0, 0, 0.28)
  if (print === 'blurred') return smears.map(([dx, dy]) => one(dx * size, dy * size, 0.15)).join('')
  return one(0, 0, 1)
}

/** Gaps scratched through broken print: strips in the colour of the ground, over a line of letters. */
export function breaks(x: number, y: number, width: number, size: number, ground: string): string {
  return [0.22, 0.4, 0.6]
    .map((share, i) =>
      tag('path', {
        d: `M${x} ${y - size * share + i}l${width / 3} ${i % 2 === 0 ? 2 : -2}l${width / 3} ${i % 2 === 0 ? -3 : 3}l${width / 3} 2`,
        stroke: ground,
        'stroke-width': size * 0.085,
        fill: 'none',
      }),
    )
    .join('')
}

/** A wavy line under letters that are wrong, `width` px long from `x`. */
export const underline = (x: number, y: number, width: number, colour: string): string => {
  const step = width / 6
  const waves = Array.from({ length: 6 }, (_, i) => `q${step / 2} ${i % 2 === 0 ? -4 : 4} ${step} 0`).join('')
  return tag('path', { d: `M${x} ${y}${waves}`, stroke: colour, 'stroke-width': 2.6, fill: 'none' })
}

/**
 * The sheen of a wrap over what lies below it: slanting bands of light right across a box, so that nobody takes the print for print on
 * the wrap. `lying`: the cell lies on its side.
 */
export function sheen(x: number, y: number, width: number, height: number, lying: boolean): string {
  const [long, short] = lying ? [width, height] : [height, width]
  const lean = short * 0.34
  const band = Math.min(long * 0.13, short * 0.2)
  const starts = [0.22, 0.5].map(share => lean + share * (long - lean))
  const bands = starts.map(from =>
    lying
      ? `M${round(x + from)} ${round(y)}h${round(band)}l${round(-lean)} ${round(height)}h${round(-band)}Z`
      : `M${round(x)} ${round(y + from)}l${round(width)} ${round(-lean)}v${round(band)}l${round(-width)} ${round(lean)}Z`,
  )
  return tag('path', { d: bands.join(''), fill: '#ffffff', 'fill-opacity': 0.5 })
}
