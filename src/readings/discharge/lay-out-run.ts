// The plain facts of a run that everything else is computed with: its longest load, pace, accuracy and end.
import { type ChainAccuracy, chainOf } from './budget.ts'
import { gapLimit } from './gaps.ts'
import type { MeasureOptions } from './measure-options.ts'
import type { Run } from './phases.ts'
import { sampleNoise } from './resistance.ts'
import { quantile, type Rows, type Trace } from './trace.ts'

export type RunLayout = {
  readonly trace: Trace
  readonly run: Run
  readonly longest: Rows
  readonly chain: ChainAccuracy
  /** Median interval between samples under load, s; NaN with a single sample. */
  readonly usual_s: number
  /** Interval above which nothing is interpolated, s. */
  readonly gapLimit_s: number
  readonly highest_A: number
  /** The last voltage under load. */
  readonly end_V: number
  /** Standard uncertainty of a voltage reading, V. */
  readonly uVoltage: (volts: number) => number
}

export function layOut(trace: Trace, run: Run, options: MeasureOptions): RunLayout {
  const longest = longestLoad(run)
  const chain = {
    ...chainOf(options.instrument, sampleNoise(trace.current_A, longest.from, longest.to)),
    ...options.chain,
  }
  const { time_s } = trace
  const interval = (at: number) => time_s[longest.from + at + 1]! - time_s[longest.from + at]!
  return {
    trace,
    run,
    longest,
    chain,
    usual_s: quantile(longest.to - longest.from, interval, 0.5),
    gapLimit_s: gapLimit(trace, run),
    highest_A: run.loads.reduce((most, load) => Math.max(most, highestIn(trace.current_A, load)), 0),
    end_V: trace.voltage_V[run.loads.at(-1)!.to]!,
    // Gain and offset are two independent causes here, as in the budget.
    uVoltage: volts => Math.hypot(volts * chain.voltageGain, chain.voltageOffset_V) / Math.sqrt(3),
  }
}

/** The load with the most samples. */
export function longestLoad(run: Run): Rows {
  return run.loads.reduce((best, each) => (each.to - each.from > best.to - best.from ? each : best))
}

function highestIn(values: Float64Array, { from, to }: Rows): number {
  let most = 0
  for (let row = from; row <= to; row++) if (values[row]! > most) most = values[row]!
  return most
}
