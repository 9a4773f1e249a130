// The measured series of a log, in SI-like units, as plain columns.

/** Columns of equal length, time never falling, current positive while the cell is discharged. */
export type Trace = {
  readonly rows: number
  readonly time_s: Float64Array
  readonly voltage_V: Float64Array
  readonly current_A: Float64Array
  /** NaN where a row had none; null when the log has no such column. */
  readonly temperature_C: Float64Array | null
}

/** Rows `from` to `to` of a trace, both included. */
export type Rows = {
  readonly from: number
  readonly to: number
}

/** The p-quantile (0 to 1) of numbers that need no order; NaN of none. Looks at no more than some thousand of them. */
export function quantile(count: number, at: (index: number) => number, p: number): number {
  const step = Math.max(1, Math.floor(count / 4096))
  const picked: number[] = []
  for (let index = 0; index < count; index += step) {
    const value = at(index)
    if (Number.isFinite(value)) picked.push(value)
  }
  picked.sort((a, b) => a - b)
  return picked[Math.min(picked.length - 1, Math.floor(p * picked.length))] ?? Number.NaN
}
