// Sampling gaps under load: what could have flowed in them.
import type { Run } from './phases.ts'
import { quantile, type Trace } from './trace.ts'

export type Gap = {
  /** The last row before the gap. */
  readonly row: number
  readonly from_s: number
  readonly seconds: number
  /** The least and the most that can have flowed, A·s and W·s. */
  readonly charge_As: readonly [number, number]
  readonly energy_Ws: readonly [number, number]
  /** What the trapezoid across it would say. */
  readonly bridged_As: number
  readonly bridged_Ws: number
}

/** An interval between samples longer than this is a gap: three times what nine in ten intervals stay under. */
export function gapLimit(trace: Trace, run: Run): number {
  const longest = run.loads.reduce((best, each) => (each.to - each.from > best.to - best.from ? each : best))
  const { time_s } = trace
  const usual = quantile(
    longest.to - longest.from,
    at => time_s[longest.from + at + 1]! - time_s[longest.from + at]!,
    0.9,
  )
  return Math.max(2, 3 * (usual || 0))
}

/**
 * The gap after a row, in which the current is only taken to lie within `range_A`.
 *
 * The trapezoid across a gap assumes that nothing happened in it; over an hour without samples that is a guess of the
 * whole discharge, so it is kept apart (`bridged`).
 */
export function gapAfter(trace: Trace, row: number, range_A: readonly [number, number]): Gap {
  const { time_s, voltage_V, current_A } = trace
  const seconds = time_s[row + 1]! - time_s[row]!
  const [v1, v2] = [voltage_V[row]!, voltage_V[row + 1]!]
  const [i1, i2] = [current_A[row]!, current_A[row + 1]!]
  const [least, most] = range_A
  return {
    row,
    from_s: time_s[row]!,
    seconds,
    charge_As: [least * seconds, most * seconds],
    energy_Ws: [least * seconds * Math.min(v1, v2), most * seconds * Math.max(v1, v2)],
    bridged_As: ((i1 + i2) / 2) * seconds,
    bridged_Ws: ((v1 * i1 + v2 * i2) / 2) * seconds,
  }
}
