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
export const dotRows: readonly string[] = [
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

const dotShapes: Readonly<Record<Print, { size: number; opacity: number }>> = {
  clear: { size: 0.36, opacity: 0.95 },
  faint: { size: 0.3, opacity: 0.26 },
  dark: { size: 0.56, opacity: 1 },
  smeared: { size: 0.36, opacity: 0.85 },
  solid: { size: 0.62, opacity: 1 },
}

type Kind = CellParameters['codeKind']

// A hint of a Data Matrix: solid left and bottom edges around the same dots; still 8 × 8, so no reader knows the size.
const edgeL = dotRows.map((row, j) => (j === dotRows.length - 1 ? '1'.repeat(dotRows.length) : `1${row.slice(1)}`))

/** Rows and columns of the code with corner squares: even, so neither QR (21, 25, …) nor Micro QR (11, 13, 15, 17). */
export const cornerGrid = 16
const cornerDots = 5

// A hint of a QR code: three squares in the corners, but hollow with a small dot, so that no line through them has the
// 1:1:3:1:1 run that readers look for.
const inCorner = (i: number, j: number): boolean => {
  const far = cornerGrid - cornerDots - 1
  return (i <= cornerDots && j <= cornerDots) || (i >= far && j <= cornerDots) || (i <= cornerDots && j >= far)
}

function cornerSquares(left: number, top: number, side: number): string {
  const step = side / cornerGrid
  const far = (cornerGrid - cornerDots) * step
  const squares = [
    [0, 0],
    [far, 0],
    [0, far],
  ].map(([x = 0, y = 0]) => {
    const ring = `M${left + x} ${top + y}h${cornerDots * step}v${cornerDots * step}h${-cornerDots * step}Zm${step} ${step}v${3 * step}h${3 * step}v${-3 * step}Z`
    const dot = tag('circle', { cx: left + x + 2.5 * step, cy: top + y + 2.5 * step, r: 0.4 * step })
    return tag('path', { d: ring, 'fill-rule': 'evenodd' }) + dot
  })
  const cells: string[] = []
  for (let j = 0; j < cornerGrid; j++) {
    for (let i = 0; i < cornerGrid; i++) {
      if (inCorner(i, j) || (i * 7 + j * 11 + i * j) % 5 > 1) continue
      cells.push(tag('rect', { x: left + i * step, y: top + j * step, width: step * 0.86, height: step * 0.86 }))
    }
  }
  return [...squares, ...cells].join('')
}

function dots(rows: readonly string[], left: number, top: number, side: number, print: Print): string {
  const n = rows.length
  const step = side / n
  const { size } = dotShapes[print]
  let out = ''
  rows.forEach((row, j) => {
    for (let i = 0; i < n; i++) {
      // Nearly solid print: the gaps have run full, but for a few.
      const filled = print === 'solid' && (i * 5 + j * 3) % 11 !== 0
      if (row[i] !== '1' && !filled) continue
      const [cx, cy] = [left + (i + 0.5) * step, top + (j + 0.5) * step]
      out += tag('circle', { cx, cy, r: size * step })
      // Smeared: each dot drags a paler tail to the right.
      if (print === 'smeared') {
        out += tag('ellipse', {
          cx: cx + step * 0.75,
          cy: cy + step * 0.12,
          rx: step * 0.95,
          ry: step * 0.26,
          'fill-opacity': 0.45,
        })
      }
    }
  })
  return out
}

/** Draws the code in a square of `side` px whose middle is `x`, `y`, in one colour; `see` fades what lies under a wrap. */
export function dotCode(
  x: number,
  y: number,
  side: number,
  code: { kind: Kind; print: Print },
  fill: string,
  see = 1,
): string {
  const [left, top] = [x - side / 2, y - side / 2]
  const bars =
    code.kind === 'edge-l'
      ? tag('path', { d: `M${left} ${top}h${side * 0.1}v${side * 0.9}h${side * 0.9}v${side * 0.1}h${-side}Z` })
      : ''
  const pattern =
    code.kind === 'corner-squares'
      ? cornerSquares(left, top, side)
      : dots(code.kind === 'edge-l' ? edgeL : dotRows, left, top, side, code.print)
  return part('code', tag('g', { fill, 'fill-opacity': dotShapes[code.print].opacity * see }, bars, pattern))
}
