// Letters on a can or wrap: a meaningless stand-in, since no real marking may be drawn.
import { tag } from '../svg.ts'
import type { CellParameters } from './parameters.ts'

/** Stands for whatever is printed; means nothing. */
export const LETTERS = 'ABC 123'

type Print = CellParameters['letteringPrint']

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
  if (print === 'blurred') return [-0.07, 0, 0.07].map(d => one(d * size, d * size * 0.6, 0.36)).join('')
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
