// The discharge as a drawable curve: voltage and temperature over the charge drawn, with gaps marked.
import type { Gap } from './gaps.ts'
import type { Run } from './phases.ts'
import type { Trace } from './trace.ts'

export type CurvePoint = {
  readonly capacity_mAh: number
  readonly voltage_V: number
  readonly temperature_C: number | null
  /** A sampling gap lies between this point and the one before. */
  readonly afterGap: boolean
}

/** At most `most` points, evenly over the charge drawn, first and last sample under load included. */
export function curveOf(trace: Trace, run: Run, gaps: readonly Gap[], most = 400): CurvePoint[] {
  const { time_s, voltage_V, current_A, temperature_C } = trace
  const gapRows = new Set(gaps.map(gap => gap.row))
  const [first, last] = [run.loads[0].from, run.loads.at(-1)!.to]
  const step = (row: number) =>
    (((current_A[row]! + current_A[row - 1]!) / 2) * (time_s[row]! - time_s[row - 1]!)) / 3.6
  let whole = 0
  for (let row = first + 1; row <= last; row++) whole += Math.max(0, step(row))
  const points: CurvePoint[] = []
  let drawn = 0
  let due = 0
  let gapSince = false
  let loadAt = 0
  for (let row = first; row <= last; row++) {
    if (row > first) drawn += Math.max(0, step(row))
    if (gapRows.has(row - 1)) gapSince = true
    while (row > run.loads[loadAt]!.to) loadAt++
    // Rests between pulses would draw spikes upwards: only what happens under load is the curve.
    if (row < run.loads[loadAt]!.from) continue
    if (drawn < due && row !== last && !gapSince) continue
    const temperature = temperature_C?.[row] ?? Number.NaN
    points.push({
      capacity_mAh: drawn,
      voltage_V: voltage_V[row]!,
      temperature_C: Number.isFinite(temperature) ? temperature : null,
      afterGap: gapSince && points.length > 0,
    })
    gapSince = false
    due = drawn + whole / (most - 2)
  }
  return points
}
