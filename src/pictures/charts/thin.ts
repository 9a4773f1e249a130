// Thins a long log to what a plot can show, without losing a dip or a peak.

type Point = { readonly capacity: number; readonly voltage: number }

/** Keeps, per px column, the first, lowest, highest and last point by voltage, in their order. */
export function thin<P extends Point>(points: readonly P[], columns: number): readonly P[] {
  if (points.length <= columns * 4) return points
  const most = Math.max(1e-9, (points[points.length - 1] as P).capacity)
  const kept: P[] = []
  let from = 0
  for (let column = 1; column <= columns && from < points.length; column++) {
    const edge = (most * column) / columns
    let to = from
    while (to < points.length && (column === columns || (points[to] as P).capacity <= edge)) to++
    if (to === from) continue
    let [low, high] = [from, from]
    for (let i = from; i < to; i++) {
      if ((points[i] as P).voltage < (points[low] as P).voltage) low = i
      if ((points[i] as P).voltage > (points[high] as P).voltage) high = i
    }
    const chosen = [...new Set([from, low, high, to - 1])].sort((a, b) => a - b)
    kept.push(...chosen.map(i => points[i] as P))
    from = to
  }
  return kept
}
