// A hand-made discharge of 16 points whose figures were computed with numpy and scipy outside this project.
import type { Trace } from '../../../src/readings/discharge/trace.ts'

/** Seconds, amperes and volts of the example: about 1 A for 10,080 s. */
export const example = {
  t: [0, 600, 1200, 1800, 2400, 3000, 3600, 4500, 5400, 6300, 7200, 8100, 9000, 9600, 9900, 10080],
  I: [1, 1.001, 0.999, 1, 1.002, 0.999, 1, 1.001, 1, 0.999, 1, 1, 1.001, 0.999, 1, 1],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: 3.142 is a voltage here
  V: [4.105, 3.985, 3.912, 3.852, 3.801, 3.757, 3.718, 3.669, 3.628, 3.591, 3.552, 3.505, 3.431, 3.31, 3.142, 2.8],
}

/** A trace of these columns. */
export function traceOf(
  t: readonly number[],
  V: readonly number[],
  I: readonly number[],
  T?: readonly number[],
): Trace {
  return {
    rows: t.length,
    time_s: Float64Array.from(t),
    voltage_V: Float64Array.from(V),
    current_A: Float64Array.from(I),
    temperature_C: T ? Float64Array.from(T) : null,
  }
}

/** Only the rows of these indices. */
export function keep(trace: Trace, rows: readonly number[]): Trace {
  const pick = (column: Float64Array) => rows.map(row => column[row]!)
  return traceOf(
    pick(trace.time_s),
    pick(trace.voltage_V),
    pick(trace.current_A),
    trace.temperature_C ? pick(trace.temperature_C) : undefined,
  )
}
