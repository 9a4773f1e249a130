// Thins a long log to what a plot can show, without losing a dip or a peak.
import type { CurvePoint } from './draw-discharge-curve.ts'

/** Keeps, per px column, the first, lowest, highest and last point by voltage, in their order. */
export function thin(points: readonly CurvePoint[], columns: number): readonly CurvePoint[] {
  if (points.length <= columns * 4) return points
  const most = Math.max(1e-9, (points[points.length - 1] as CurvePoint).capacity)
  const kept: CurvePoint[] = []
  let from = 0
  for (let column = 1; column <= columns && from < points.length; column++) {
    const edge = (most * column) / columns
    let to = from
    while (to < points.length && (column === columns || (points[to] as CurvePoint).capacity <= edge)) to++
    if (to === from) continue
    let [low, high] = [from, from]
    for (let i = from; i < to; i++) {
      if ((points[i] as CurvePoint).voltage < (points[low] as CurvePoint).voltage) low = i
      if ((points[i] as CurvePoint).voltage > (points[high] as CurvePoint).voltage) high = i
    }
    const chosen = [...new Set([from, low, high, to - 1])].sort((a, b) => a - b)
    kept.push(...chosen.map(i => points[i] as CurvePoint))
    from = to
  }
  return kept
}
