// Which units the raw columns are in: from header or cells, else from what only one lithium cell can be.

import { quantile } from '../discharge/trace.ts'
import { type Dimension, unitsWritten } from '../typed/units.ts'
import type { CurrentUnit, LogAnswers, LogQuestion, LogRefusal, NeededRole, TimeUnit, VoltageUnit } from './answers.ts'
import type { Assigned } from './assign-columns.ts'
import { unitOfColumn } from './cell-units.ts'
import type { RawColumns } from './growing.ts'
import type { DecimalMark } from './number-cell.ts'
import { powerBetween } from './own-counter.ts'
import { firstRows, type TableShape } from './table-shape.ts'
import type { TimeKind } from './time-cell.ts'

/** Factors to s, V and A; the temperature is brought to °C by `temperature`. */
export type Scales = {
  readonly time: number
  readonly voltage: number
  readonly current: number
  readonly temperature: (value: number) => number
  /** How many times as much the file's own counter shows, by a power of ten; 1 where it agrees, or cannot be compared. */
  readonly counterFactor: number
  readonly units: {
    readonly time: TimeUnit | 'clock' | 'stamp'
    readonly voltage: VoltageUnit
    readonly current: CurrentUnit
  }
}

export type ScaleResult =
  | { readonly ok: true; readonly scales: Scales }
  | { readonly ok: false; readonly question: LogQuestion }
  | { readonly ok: false; readonly refusal: LogRefusal }

export type ScaleInput = {
  readonly raw: RawColumns
  readonly shape: TableShape
  readonly columns: Assigned
  readonly mark: DecimalMark
  readonly timeKind: TimeKind
  /** Clock texts had two parts and were read as m:ss. */
  readonly twoPartClock: boolean
  readonly answers: LogAnswers
  /** The charge by the file's own counter, mAh. */
  readonly counted_mAh: number | null
}

const timeFactors: Record<TimeUnit, number> = { ms: 0.001, s: 1, min: 60, h: 3600, d: 86_400 }
const voltageFactors: Record<VoltageUnit, number> = { V: 1, mV: 0.001 }
const currentFactors: Record<CurrentUnit, number> = { A: 1, mA: 0.001, '10mA': 0.01, '100mA': 0.1 }

/** Settles all scales. A unit written in the file, or answered, is never overruled; it can only be refused. */
export function scalesOf(input: ScaleInput): ScaleResult {
  const { raw, shape, columns, answers, mark } = input
  const stated = {
    time: answers.units?.time ?? unitOf<TimeUnit>(shape, columns.time, mark, 'time', timeFactors),
    voltage: answers.units?.voltage ?? unitOf<VoltageUnit>(shape, columns.voltage, mark, 'voltage', voltageFactors),
    current: answers.units?.current ?? unitOf<CurrentUnit>(shape, columns.current, mark, 'current', currentFactors),
  }
  // A device that waits for its cell logs zeros.
  const typical_V = quantile(raw.voltage.length, row => Math.abs(raw.voltage[row]!) || Number.NaN, 0.5) || 0
  const voltage = stated.voltage ?? (typical_V > 100 ? 'mV' : 'V')
  const volts = typical_V * voltageFactors[voltage]
  if (!(volts >= 0.5 && volts <= 5)) return { ok: false, refusal: { code: 'voltage-not-one-cell', typical_V: volts } }

  const drawn = draw(raw)
  const times = timeOptions(input, stated.time)
  const currents: readonly CurrentUnit[] = stated.current ? [stated.current] : ['A', 'mA']
  const all = times.flatMap(time => currents.map(current => ({ time, current })))
  const plausible = all.filter(({ time, current }) => isPlausible(drawn, time.factor, currentFactors[current]))
  const power = ({ time, current }: (typeof all)[number]) =>
    powerBetween(input.counted_mAh, (drawn.charge * time.factor * currentFactors[current]) / 3.6)
  const counted = all.filter(each => power(each) === 0)
  const fitting = all.length === 1 ? all : counted.length === 1 ? counted : plausible
  const settled = fitting[0]
  if (!settled || fitting.length > 1) return { ok: false, question: ask(input, times, currents, fitting) }

  const off = power(settled) ?? 0
  const other = off === 0 || answers.units?.current ? undefined : shifted(settled.current, off)
  if (other) {
    const options = [other, settled.current]
    const counter = { factor: 10 ** off }
    const label = shape.columns[columns.current]!.label.slice(0, 40)
    const question = { code: 'which-unit', role: 'current', label, options, rows: firstRows(shape), counter } as const
    return { ok: false, question }
  }
  const amperes = drawn.typical * currentFactors[settled.current]
  if (amperes > 300) return { ok: false, refusal: { code: 'current-implausible', typical_A: amperes } }
  return {
    ok: true,
    scales: {
      time: settled.time.factor,
      voltage: voltageFactors[voltage],
      current: currentFactors[settled.current],
      temperature: temperatureScale(input),
      counterFactor: 10 ** off,
      units: {
        time: settled.time.unit ?? (input.timeKind === 'stamp' ? 'stamp' : 'clock'),
        voltage,
        current: settled.current,
      },
    },
  }
}

/** The unit that is 10^power times as large, where devices log in it. */
function shifted(unit: CurrentUnit, power: number): CurrentUnit | undefined {
  const wanted = currentFactors[unit] * 10 ** power
  const units = Object.keys(currentFactors) as CurrentUnit[]
  return units.find(each => Math.abs(currentFactors[each] / wanted - 1) < 1e-9)
}

type TimeOption = {
  readonly factor: number
  readonly unit: TimeUnit | null
}

function timeOptions({ timeKind, twoPartClock, answers }: ScaleInput, stated: TimeUnit | undefined): TimeOption[] {
  if (timeKind === 'number') {
    const units = stated ? [stated] : (Object.keys(timeFactors) as TimeUnit[])
    return units.map(unit => ({ factor: timeFactors[unit], unit }))
  }
  if (!twoPartClock || answers.clock === 'm:ss') return [{ factor: 1, unit: null }]
  // Read as m:ss; as h:mm every figure is exactly sixty times longer.
  return answers.clock === 'h:mm'
    ? [{ factor: 60, unit: null }]
    : [
        { factor: 1, unit: null },
        { factor: 60, unit: null },
      ]
}

type RawDraw = {
  readonly typical: number
  readonly charge: number
  readonly loaded: number
}

/** Usual current, charge and loaded time in raw units: for telling units apart only. */
function draw({ time, current }: RawColumns): RawDraw {
  const typical = quantile(current.length, row => Math.abs(current[row]!) || Number.NaN, 0.9)
  const floor = 0.05 * (typical || 0)
  let charge = 0
  let loaded = 0
  for (let row = 1; row < time.length; row++) {
    const step = Math.abs(time[row]! - time[row - 1]!)
    const amperes = Math.abs(current[row]!)
    if (amperes <= floor) continue
    charge += amperes * step
    loaded += step
  }
  return { typical: Number.isNaN(typical) ? 0 : typical, charge, loaded }
}

/** One cell: 50 mAh to 40 Ah, 10 mA to 60 A, loaded for 4 minutes to 100 hours (common practice, no source). */
function isPlausible({ typical, charge, loaded }: RawDraw, timeFactor: number, currentFactor: number): boolean {
  const mAh = (charge * timeFactor * currentFactor) / 3.6
  const seconds = loaded * timeFactor
  const amperes = typical * currentFactor
  return mAh >= 50 && mAh <= 40_000 && amperes >= 0.01 && amperes <= 60 && seconds >= 240 && seconds <= 360_000
}

function ask(
  { shape, columns }: ScaleInput,
  times: readonly TimeOption[],
  currents: readonly CurrentUnit[],
  fitting: readonly { readonly time: TimeOption; readonly current: CurrentUnit }[],
): LogQuestion {
  const rows = firstRows(shape)
  const label = (role: NeededRole) => shape.columns[columns[role]]!.label.slice(0, 40)
  const among = fitting.length > 0 ? fitting : times.flatMap(time => currents.map(current => ({ time, current })))
  if (new Set(among.map(each => each.time)).size > 1) {
    const options = times.flatMap(({ unit }) => (unit && among.some(each => each.time.unit === unit) ? [unit] : []))
    if (options.length === 0) return { code: 'which-clock', label: label('time'), options: ['h:mm', 'm:ss'], rows }
    return { code: 'which-unit', role: 'time', label: label('time'), options, rows }
  }
  return { code: 'which-unit', role: 'current', label: label('current'), options: currents, rows }
}

/** The unit a column states, if it is one of those known. */
function unitOf<U extends string>(
  shape: TableShape,
  column: number,
  mark: DecimalMark,
  dimension: Dimension,
  known: Record<U, number>,
): U | undefined {
  const written = unitsWritten(unitOfColumn(shape.columns[column]!, mark))
  const unit = written.find(each => each.measures === dimension)
  return unit && unit.symbol in known ? (unit.symbol as U) : undefined
}

/** Temperatures only serve notes, so an unlabelled column above 70 is taken for °F rather than asked about. */
function temperatureScale({ raw, shape, columns, mark }: ScaleInput): (value: number) => number {
  if (columns.temperature === undefined) return value => value
  const written = unitOf(shape, columns.temperature, mark, 'temperature', { '°C': 1, '°F': 1, K: 1 })
  const typical = quantile(raw.temperature.length, row => raw.temperature[row]!, 0.5)
  const unit = written ?? (typical > 250 ? 'K' : typical > 70 ? '°F' : '°C')
  if (unit === '°F') return value => ((value - 32) * 5) / 9
  return unit === 'K' ? value => value - 273.15 : value => value
}
