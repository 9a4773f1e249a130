// Irregular soft shapes: drops, puddles, patches. Always the same for the same numbers.
import { type Point, round } from '../svg.ts'

const wobble = [1, 0.9, 1.08, 0.94, 1.12, 0.9, 1.04, 0.95, 1.1, 0.88]

/** Path data of a wobbly closed curve around `x`, `y`; `turn` picks another shape. */
export function blob(x: number, y: number, rx: number, ry: number, turn = 0): string {
  const n = wobble.length
  const points: Point[] = wobble.map((_, i) => {
    const share = wobble[(i * 3 + turn) % n] ?? 1
    const angle = (2 * Math.PI * i) / n
    return { x: x + rx * share * Math.cos(angle), y: y + ry * share * Math.sin(angle) }
  })
  const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 })
  const to = (p: Point): string => `${round(p.x)} ${round(p.y)}`
  const start = middle(points[n - 1] as Point, points[0] as Point)
  const curves = points.map((p, i) => `Q${to(p)} ${to(middle(p, points[(i + 1) % n] as Point))}`)
  return `M${to(start)}${curves.join('')}Z`
}

/** Path data of a drop that hangs: round below, pointed above; `y` is its tip. */
export const drop = (x: number, y: number, size: number): string =>
  `M${round(x)} ${round(y)}c${round(size * 0.5)} ${round(size)} ${round(size * 0.75)} ${round(size * 1.2)} ${round(size * 0.75)} ${round(size * 1.65)}` +
  `a${round(size * 0.75)} ${round(size * 0.75)} 0 0 1 ${round(-size * 1.5)} 0c0 ${round(-size * 0.45)} ${round(size * 0.25)} ${round(-size * 0.65)} ${round(size * 0.75)} ${round(-size * 1.65)}Z`

/** Path data of a run of liquid that hangs down from `y` by `length`, `width` wide, with a thick end. */
export const run = (x: number, y: number, width: number, length: number): string => {
  const w = width / 2
  return (
    `M${round(x - w * 1.6)} ${round(y)}Q${round(x - w)} ${round(y + w)} ${round(x - w * 0.8)} ${round(y + length * 0.5)}` +
    `L${round(x - w)} ${round(y + length - w)}A${round(w)} ${round(w)} 0 0 0 ${round(x + w)} ${round(y + length - w)}` +
    `L${round(x + w * 0.8)} ${round(y + length * 0.5)}Q${round(x + w)} ${round(y + w)} ${round(x + w * 1.6)} ${round(y)}Z`
  )
}
