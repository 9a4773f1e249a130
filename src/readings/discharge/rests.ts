// What the rests around a discharge say: the voltage it started from and where it settles afterwards.
import type { Run } from './phases.ts'
import { fitRelaxation, type Relaxation } from './relaxation.ts'
import type { Trace } from './trace.ts'

export type RestBefore = {
  /** The last sample before the load came on. */
  readonly voltage_V: number
  /** How long the log shows it resting; the true rest may have been longer. */
  readonly seconds: number
}

/** The rest before the first load of a run; null when the log begins under load. */
export function restBefore({ time_s, voltage_V }: Trace, run: Run): RestBefore | null {
  const last = run.loads[0].from - 1
  if (last < run.from) return null
  return { voltage_V: voltage_V[last]!, seconds: time_s[last]! - time_s[run.from]! }
}

/** The settling after the last load, from at least five samples over at least a minute; thinned to 500 samples. */
export function relaxationAfter({ time_s, voltage_V }: Trace, run: Run): Relaxation | null {
  const from = run.loads.at(-1)!.to + 1
  const count = run.to - from + 1
  if (count < 5 || time_s[run.to]! - time_s[from]! < 60) return null
  const every = Math.ceil(count / 500)
  const rows = Array.from({ length: Math.ceil(count / every) }, (_, at) => from + at * every)
  return fitRelaxation(
    rows.map(row => time_s[row]!),
    rows.map(row => voltage_V[row]!),
  )
}
