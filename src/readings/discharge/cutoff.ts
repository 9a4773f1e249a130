// Where a discharge reaches its cut-off voltage, or how it misses it.
import type { End } from './integrate.ts'
import type { Run } from './phases.ts'
import type { Rows, Trace } from './trace.ts'

export type Cutoff =
  /** The voltage crossed it under load: integrate to `end`, which lies after `row`, the last row above. */
  | {
      readonly state: 'crossed'
      readonly load: number
      readonly row: number
      readonly end: End
      readonly slope_Vps: number
    }
  /** Crossed inside a sampling gap after `row`: where, nobody knows. */
  | { readonly state: 'crossed-in-gap'; readonly load: number; readonly row: number; readonly gap_s: number }
  /** The load stopped where the next sample would have been at the cut-off: as good as reached. */
  | { readonly state: 'reached-at-end' }
  | { readonly state: 'not-reached' }

/**
 * Finds the first time the voltage stays at or below `cutoff_V` under load, by linear interpolation between samples.
 *
 * One single sample below it, with the next above again, is a bad contact and not the cut-off. `gap_s` is the interval
 * above which nothing is interpolated; `tolerance_V` is what the volt reading can be off by at the end of the load.
 */
export function findCutoff(trace: Trace, run: Run, cutoff_V: number, gap_s: number, tolerance_V: number): Cutoff {
  const { time_s, voltage_V, current_A } = trace
  for (const [load, { from, to }] of run.loads.entries()) {
    for (let row = from; row <= to; row++) {
      if (voltage_V[row]! > cutoff_V || (row < to && voltage_V[row + 1]! > cutoff_V)) continue
      const before = row - 1
      if (before < from) {
        const end = { time_s: time_s[row]!, voltage_V: voltage_V[row]!, current_A: current_A[row]! }
        return { state: 'crossed', load, row, end, slope_Vps: 0 }
      }
      const seconds = time_s[row]! - time_s[before]!
      if (seconds > gap_s) return { state: 'crossed-in-gap', load, row: before, gap_s: seconds }
      const drop = voltage_V[before]! - voltage_V[row]!
      const part = drop > 0 ? (voltage_V[before]! - cutoff_V) / drop : 1
      const end = {
        time_s: time_s[before]! + part * seconds,
        voltage_V: cutoff_V,
        current_A: current_A[before]! + part * (current_A[row]! - current_A[before]!),
      }
      return { state: 'crossed', load, row: before, end, slope_Vps: seconds > 0 ? drop / seconds : 0 }
    }
  }
  return nearEnd(trace, run, run.loads.at(-1)!, cutoff_V, tolerance_V)
    ? { state: 'reached-at-end' }
    : { state: 'not-reached' }
}

/** Whether the voltage, falling on as it did at the end, would be at the cut-off by the next sample. */
function nearEnd(
  { time_s, voltage_V }: Trace,
  run: Run,
  { from, to }: Rows,
  cutoff_V: number,
  tolerance_V: number,
): boolean {
  const last = voltage_V[to]!
  if (last - tolerance_V <= cutoff_V) return true
  if (to - from < 2) return false
  const seconds = time_s[to]! - time_s[to - 1]!
  if (seconds <= 0) return false
  const slope = Math.max(0, (voltage_V[to - 1]! - last) / seconds)
  const next = to < run.to ? Math.min(time_s[to + 1]! - time_s[to]!, 3 * seconds) : seconds
  return last - slope * next - tolerance_V <= cutoff_V
}
