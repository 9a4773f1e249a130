// Leaves out single rows whose values no cell and no load can have: slips of a logger, counted as broken rows.
import type { RawColumns } from './growing.ts'
import type { Scales } from './scales.ts'

export type Kept = {
  readonly raw: RawColumns
  /** The restarts, counted in the rows that are left. */
  readonly restarts: readonly number[]
  /** Rows with values that cannot be. */
  readonly dropped: number
  /** Rows of a device with no cell in it: 0 V, 0 A. */
  readonly empty: number
}

// Far outside what one cell, its charger or its load can show: such a number is no measurement, it is a slip.
const [lowest_V, highest_V, highest_A, longest_s] = [-1, 10, 500, 1e9] as const

// Nothing at all at the terminals: the cell was not in yet, or not any more. Such a row says nothing about it.
const [empty_V, empty_A] = [0.05, 0.005] as const

/** Works in place, on raw values; keeps the order of the rows. */
export function dropImpossible(raw: RawColumns, scales: Scales, restarts: readonly number[]): Kept {
  const { time, voltage, current, temperature, mode } = raw
  const start = time[0]!
  const moved = [...restarts]
  let kept = 0
  let empty = 0
  let nextRestart = 0
  for (let row = 0; row < time.length; row++) {
    while (restarts[nextRestart] === row) moved[nextRestart++] = kept
    const volts = voltage[row]! * scales.voltage
    const possible =
      volts >= lowest_V &&
      volts <= highest_V &&
      Math.abs(current[row]! * scales.current) <= highest_A &&
      Math.abs(time[row]! - start) * scales.time <= longest_s
    if (!possible) continue
    if (Math.abs(volts) < empty_V && Math.abs(current[row]! * scales.current) <= empty_A) {
      empty++
      continue
    }
    if (kept < row) {
      time[kept] = time[row]!
      voltage[kept] = voltage[row]!
      current[kept] = current[row]!
      temperature[kept] = temperature[row]!
      mode[kept] = mode[row]!
    }
    kept++
  }
  const cut = <C extends Float64Array | Uint8Array>(column: C) => column.subarray(0, kept) as C
  return {
    raw: {
      time: cut(time),
      voltage: cut(voltage),
      current: cut(current),
      temperature: cut(temperature),
      mode: cut(mode),
    },
    restarts: moved,
    dropped: time.length - kept - empty,
    empty,
  }
}
