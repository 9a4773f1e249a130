// Turns raw columns into a trace: right units, time forwards, current positive while discharging.
import { type Phase, phasesOf } from '../discharge/phases.ts'
import type { Trace } from '../discharge/trace.ts'
import type { LogRefusal } from './answers.ts'
import type { RawColumns } from './growing.ts'
import type { Scales } from './scales.ts'

export type Sign = 'positive' | 'negative' | 'unsigned' | 'by-mode'

export type OrderResult =
  | {
      readonly ok: true
      readonly trace: Trace
      /** Rows at which the clock, or the header, starts again. */
      readonly restarts: readonly number[]
      readonly newestFirst: boolean
      readonly sign: Sign
    }
  | { readonly ok: false; readonly refusal: LogRefusal }

/** Works in place: the raw columns must not be used afterwards. `marked` are restarts the file itself shows. */
export function putInOrder(
  raw: RawColumns,
  scales: Scales,
  marked: readonly number[],
  hasTemperature: boolean,
): OrderResult {
  const { time, voltage, current, temperature, mode } = raw
  const rows = time.length
  const newestFirst = countsDown(time)
  if (newestFirst) for (const column of [time, voltage, current, temperature, mode]) column.reverse()
  const start = time[0]!
  for (let row = 0; row < rows; row++) {
    time[row] = (time[row]! - start) * scales.time
    voltage[row]! *= scales.voltage
    current[row]! *= scales.current
    if (hasTemperature) temperature[row] = scales.temperature(temperature[row]!)
  }
  const straight = straighten(time, newestFirst ? [] : marked)
  if (!straight.ok) return straight
  if (time[rows - 1] === time[0]) return { ok: false, refusal: { code: 'time-stands-still', rows } }
  const trace: Trace = {
    rows,
    time_s: time,
    voltage_V: voltage,
    current_A: current,
    temperature_C: hasTemperature ? temperature : null,
  }
  const signed = signCurrent(trace, mode, straight.restarts)
  if (!signed.ok) return signed
  return { ok: true, trace, restarts: straight.restarts, newestFirst, sign: signed.sign }
}

/** Whether time falls from row to row throughout: the newest row came first. */
function countsDown(time: Float64Array): boolean {
  if (!(time[time.length - 1]! < time[0]!)) return false
  for (let row = 1; row < time.length; row++) if (time[row]! > time[row - 1]!) return false
  return true
}

type Straight =
  | { readonly ok: true; readonly restarts: number[] }
  | { readonly ok: false; readonly refusal: LogRefusal }

/** Joins runs whose clocks start again by adding on; time that jumps back anywhere else is refused. */
function straighten(time: Float64Array, marked: readonly number[]): Straight {
  const restarts: number[] = []
  const isMarked = new Set(marked)
  let added = 0
  let runStart = time[0]!
  let before = runStart
  let widest = 0
  for (let row = 1; row < time.length; row++) {
    const now = time[row]!
    const step = now - before
    if (step < 0 || isMarked.has(row)) {
      // A new run begins near the moment its predecessor began, counted from its own zero.
      const begins = now - runStart <= Math.max(0.05 * (before - runStart), widest) || isMarked.has(row)
      if (!begins) {
        return {
          ok: false,
          refusal: { code: 'time-backwards', row: row + 1, from_s: before - runStart, to_s: now - runStart },
        }
      }
      restarts.push(row)
      if (step < 0) added += -step
      runStart = now
    } else if (step > widest) widest = step
    before = now
    time[row] = now + added
  }
  return { ok: true, restarts }
}

type Signed = { readonly ok: true; readonly sign: Sign } | { readonly ok: false; readonly refusal: LogRefusal }

/** Makes the discharge positive: by the mode column, or by which current makes the voltage fall. */
function signCurrent(trace: Trace, mode: Uint8Array, restarts: readonly number[]): Signed {
  const { current_A, rows } = trace
  let highest = 0
  for (let row = 0; row < rows; row++) highest = Math.max(highest, Math.abs(current_A[row]!))
  if (highest <= 0.005) return { ok: false, refusal: { code: 'no-load', highest_A: highest } }
  if (mode.includes(3)) {
    for (let row = 0; row < rows; row++) {
      const amperes = Math.abs(current_A[row]!)
      if (mode[row] === 3) current_A[row] = amperes
      else if (mode[row] === 2) current_A[row] = -amperes
    }
    return { ok: true, sign: 'by-mode' }
  }
  if (mode.includes(2) && onlyCharges(trace, mode)) return { ok: false, refusal: { code: 'charge-only' } }
  const moving = phasesOf(trace, restarts).filter(phase => phase.kind !== 'rest')
  const change = (kind: Phase['kind']) =>
    moving.filter(phase => phase.kind === kind).reduce((sum, phase) => sum + voltageChange(trace, phase), 0)
  const kinds = new Set(moving.map(phase => phase.kind))
  if (kinds.size === 2) {
    if (change('load') <= change('charge')) return { ok: true, sign: 'positive' }
    flip(trace, { from: 0, to: rows - 1 })
    return { ok: true, sign: 'negative' }
  }
  const negative = kinds.has('charge')
  if (negative) flip(trace, { from: 0, to: rows - 1 })
  // One sign only: a stretch in which the voltage rises was a charge written without its sign.
  const rising = moving.filter(phase => voltageChange(trace, phase) > 0 || holdsVoltage(trace, phase))
  const falls = moving.some(phase => !rising.includes(phase) && voltageChange(trace, phase) < -leastFall_V)
  if (moving.length === 0) return { ok: false, refusal: { code: 'no-load', highest_A: highest } }
  if (rising.length === moving.length || (rising.length > 0 && !falls)) {
    return { ok: false, refusal: { code: 'charge-only' } }
  }
  for (const phase of rising) flip(trace, phase)
  return { ok: true, sign: rising.length > 0 ? 'unsigned' : negative ? 'negative' : 'positive' }
}

/** Voltage at the end of a stretch against the sample before it, or its first one where the log begins with it. */
function voltageChange({ voltage_V, current_A }: Trace, { from, to }: Phase): number {
  const rested = from > 0 && Math.abs(current_A[from - 1]!) < Math.abs(current_A[from]!) / 2
  return voltage_V[to]! - voltage_V[rested ? from - 1 : from]!
}

/** A discharge lets the voltage fall by more than this, whatever the cell. */
const leastFall_V = 0.01

/** Whether every row with a current belongs to a charge by the mode column. */
function onlyCharges({ current_A }: Trace, mode: Uint8Array): boolean {
  return current_A.every((amperes, row) => mode[row] === 2 || Math.abs(amperes) <= 0.005)
}

/**
 * Whether a stretch is the second half of a charge: the voltage is held near full while the current tapers off. A step of its own in
 * the logs of cyclers, in which the voltage does not rise any more. Nothing is discharged at a held voltage this high.
 */
function holdsVoltage({ voltage_V, current_A }: Trace, { from, to }: Phase): boolean {
  if (to - from < 4 || Math.abs(current_A[to]!) > 0.7 * Math.abs(current_A[from]!)) return false
  let [least, most] = [Number.POSITIVE_INFINITY, 0]
  for (let row = from; row <= to; row++) {
    least = Math.min(least, voltage_V[row]!)
    most = Math.max(most, voltage_V[row]!)
  }
  return least >= 3.5 && most - least <= 0.02
}

function flip({ current_A }: Trace, { from, to }: { readonly from: number; readonly to: number }): void {
  for (let row = from; row <= to; row++) current_A[row] = -current_A[row]!
}
