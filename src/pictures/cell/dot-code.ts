// The square dot code on a wrap or can: looks like one, decodes to nothing.
import { part, tag } from '../svg.ts'
import type { CellParameters } from './parameters.ts'

/**
 * Eight by eight dots. No reader can take this for a code, for reasons of form that a test checks:
 * - size: 8 × 8 is no size of Data Matrix (ECC 200: 10 × 10 and up, rectangles from 8 × 18; the old ECC 000–140: odd,
 *   9 × 9 and up), QR (21 and up), Micro QR (11 to 17), Aztec (11 and up) nor DotCode (height plus width is odd);
 *   ISO/IEC 16022, 18004 and 24778, sizes from memory;
 * - no solid L: each of the four edge rows and columns has at least two gaps, so there is no Data Matrix border;
 * - no regular clock: none of the edges alternates dark and light all along;
 * - no finder square: no row or column holds the 1:1:3:1:1 run of QR, and dots never touch in the clear print.
 */
export const DOTS: readonly string[] = [
  '11010011',
  '10110100',
  '01001101',
  '11100110',
  '00111001',
  '10010110',
  '01101011',
  '11001101',
]

type Print = CellParameters['codePrint']

const SHAPE: Readonly<Record<Print, { size: number; opacity: number }>> = {
  clear: { size: 0.36, opacity: 0.95 },
  faint: { size: 0.3, opacity: 0.26 },
  dark: { size: 0.56, opacity: 1 },
  smeared: { size: 0.36, opacity: 0.85 },
  solid: { size: 0.62, opacity: 1 },
}

/** Draws the code in a square of `side` px whose middle is `x`, `y`, in one colour; `see` fades what lies under a wrap. */
export function dotCode(x: number, y: number, side: number, print: Print, fill: string, see = 1): string {
  const n = DOTS.length
  const step = side / n
  const { size, opacity } = SHAPE[print]
  const dots: string[] = []
  DOTS.forEach((row, j) => {
    for (let i = 0; i < n; i++) {
      const on = row[i] === '1'
      // Nearly solid print: the gaps have run full, but for a few.
      const filled = print === 'solid' && (i * 5 + j * 3) % 11 !== 0
      if (!on && !filled) continue
      const cx = x - side / 2 + (i + 0.5) * step
      const cy = y - side / 2 + (j + 0.5) * step
      dots.push(tag('circle', { cx, cy, r: size * step }))
      // Smeared: each dot drags a paler tail to the right.
      if (print === 'smeared') {
        dots.push(
          tag('ellipse', {
            cx: cx + step * 0.75,
            cy: cy + step * 0.12,
            rx: step * 0.95,
            ry: step * 0.26,
            'fill-opacity': 0.45,
          }),
        )
      }
    }
  })
  return part('code', tag('g', { fill, 'fill-opacity': opacity * see }, ...dots))
}
