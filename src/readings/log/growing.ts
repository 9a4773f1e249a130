// Four columns of numbers that grow together while a log is read, without ever holding two copies.

/** Columns of raw numbers as read: time, voltage, current, temperature; `mode` holds 0 unknown, 1 rest, 2 charge, 3 discharge. */
export type RawColumns = {
  readonly time: Float64Array
  readonly voltage: Float64Array
  readonly current: Float64Array
  readonly temperature: Float64Array
  readonly mode: Uint8Array
}

export type Growing = {
  push(time: number, voltage: number, current: number, temperature: number, mode: number): void
  /** Rows so far. */
  readonly rows: () => number
  /** The columns filled so far, over the same memory; nothing may be pushed afterwards. */
  readonly columns: () => RawColumns
}

export function growing(start = 1024): Growing {
  let room = start
  let rows = 0
  let time = new Float64Array(room)
  let voltage = new Float64Array(room)
  let current = new Float64Array(room)
  let temperature = new Float64Array(room)
  let mode = new Uint8Array(room)
  const wider = (column: Float64Array<ArrayBuffer>) => new Float64Array(column.buffer.transfer(room * 8))
  return {
    push(t, v, i, c, m) {
      if (rows === room) {
        room = Math.ceil(room * 1.5)
        time = wider(time)
        voltage = wider(voltage)
        current = wider(current)
        temperature = wider(temperature)
        mode = new Uint8Array(mode.buffer.transfer(room))
      }
      time[rows] = t
      voltage[rows] = v
      current[rows] = i
      temperature[rows] = c
      mode[rows] = m
      rows++
    },
    rows: () => rows,
    columns: () => ({
      time: time.subarray(0, rows),
      voltage: voltage.subarray(0, rows),
      current: current.subarray(0, rows),
      temperature: temperature.subarray(0, rows),
      mode: mode.subarray(0, rows),
    }),
  }
}
