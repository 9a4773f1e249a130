// What an earlier life leaves on a terminal: burnt weld pits, torn nickel strip, grinding marks.
import { inks, lineWidths, metals } from '../ink.ts'
import { type Point, part, round, tag } from '../svg.ts'
import { blob } from './blob.ts'
import type { CellParameters } from './parameters.ts'

/** The terminal's face on paper: middle, half width, half height in px. */
type Face = Point & { rx: number; ry: number }

const edge = { stroke: inks.line, 'stroke-width': lineWidths.inner }

const pit = (face: Face, dx: number, dy: number, size: number, turn: number): string => {
  const x = face.x + dx * face.rx
  const y = face.y + dy * face.ry
  const [rx, ry] = [size * face.rx, size * face.ry]
  return (
    tag('path', { d: blob(x, y, rx * 1.5, ry * 1.5, turn), fill: '#8a6a3f', 'fill-opacity': 0.5 }) +
    tag('path', {
      d: blob(x, y, rx, ry, turn + 2),
      fill: '#2a2622',
      stroke: inks.line,
      'stroke-width': lineWidths.fine,
    }) +
    tag('path', { d: blob(x - rx * 0.15, y - ry * 0.15, rx * 0.4, ry * 0.4, turn), fill: metals.mid })
  )
}

// Spot welders leave pairs. Three uneven pairs off the middle: four pits around it would look like a button.
const rustPits: readonly (readonly [number, number, number])[] = [
  [-0.62, -0.3, 0.13],
  [-0.55, 0.06, 0.15],
  [-0.06, -0.22, 0.14],
  [0, 0.16, 0.11],
  [0.52, -0.06, 0.15],
  [0.46, 0.34, 0.12],
]

const pits = (face: Face): string => rustPits.map(([x, y, size], i) => pit(face, x, y, size, i)).join('')

function strip(face: Face): string {
  const at = (dx: number, dy: number): string => `${round(face.x + dx * face.rx)} ${round(face.y + dy * face.ry)}`
  const shape = `M${at(-0.62, -0.42)}L${at(1.3, -0.42)}L${at(1.5, -0.2)}L${at(1.3, -0.05)}L${at(1.62, 0.12)}L${at(1.36, 0.28)}L${at(1.46, 0.46)}L${at(-0.62, 0.46)}Z`
  return (
    tag('path', { d: shape, fill: '#efe9d6', ...edge }) +
    [
      [-0.3, -0.12],
      [-0.3, 0.2],
      [0.3, -0.12],
      [0.3, 0.2],
    ]
      .map(([x = 0, y = 0], i) => pit(face, x, y, 0.1, i))
      .join('')
  )
}

function scratches(face: Face): string {
  const strokes = Array.from({ length: 9 }, (_, i) => {
    const t = -0.8 + i * 0.2
    const half = Math.sqrt(1 - t * t) * 0.92
    const [ax, ay] = [t * 0.55 - half * 0.83, t * 0.83 + half * 0.55]
    const [bx, by] = [t * 0.55 + half * 0.83, t * 0.83 - half * 0.55]
    return `M${round(face.x + ax * face.rx)} ${round(face.y + ay * face.ry)}L${round(face.x + bx * face.rx)} ${round(face.y + by * face.ry)}`
  })
  return (
    tag('path', { d: blob(face.x, face.y, face.rx * 0.8, face.ry * 0.8, 1), fill: '#ffffff', 'fill-opacity': 0.75 }) +
    tag('path', { d: strokes.join(''), stroke: metals.deep, 'stroke-width': lineWidths.inner, fill: 'none' })
  )
}

/** Paint or plating that was added later: slanted brush strokes with ragged ends that run past the edge, and a bare gap. */
function coating(face: Face): string {
  const at = (dx: number, dy: number): string => `${round(face.x + dx * face.rx)} ${round(face.y + dy * face.ry)}`
  const stroke = ([x1, y1, x2, y2]: readonly number[]): string => `M${at(x1 ?? 0, y1 ?? 0)}L${at(x2 ?? 0, y2 ?? 0)}`
  const coat = (strokes: readonly (readonly number[])[], width: number, colour: string): string =>
    tag('path', { d: strokes.map(stroke).join(''), fill: 'none', stroke: colour, 'stroke-width': width * face.ry })
  const ink = (2 * lineWidths.inner) / face.ry
  // Inked first and filled after, so that the strokes run into one coat with one outline.
  return (
    coat(brushed, 0.46 + ink, inks.line) +
    coat(brushed, 0.46, paint) +
    coat(bristles, lineWidths.inner / face.ry, paintLight)
  )
}

const paint = '#6d88a4'
const paintLight = '#c3d3e2'

// Starts and ends of the strokes as shares of the half width and height.
const brushed = [
  [-0.75, -0.1, 0.5, -0.95],
  [-1.1, 0.42, 0.95, -0.85],
  [-0.9, 0.72, 1.2, -0.52],
  [-0.62, 0.98, 0.95, 0.02],
  [-0.1, 1.12, 1.12, 0.36],
]
const bristles = [
  [-0.6, -0.14, 0.3, -0.76],
  [-0.85, 0.34, 0.2, -0.32],
  [0.1, -0.14, 0.8, -0.6],
  [-0.7, 0.68, 0.6, -0.12],
  [-0.3, 0.86, 0.7, 0.24],
  [0.2, 1, 0.9, 0.54],
]

/** Draws the marks on the terminal face. */
export const terminalMarks = (params: CellParameters, face: Face): string =>
  part('ground', params.terminal === 'ground' ? scratches(face) : '') +
  part('coating', params.terminal === 'plated' ? coating(face) : '') +
  part('welds', params.welds === 'scars' ? pits(face) : params.welds === 'nickel' ? strip(face) : '')
