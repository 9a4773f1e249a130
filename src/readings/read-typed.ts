// Turns what a person typed after a question ("44,7 g", "0.018 ohm", "3.2Ah") into a value in the canonical unit.
import { type MeasuredQuantity, type MeasuredUnit, measuredUnit } from '../ground/quantities.ts'
import { plausible } from './typed/plausible.ts'
import { readNumber } from './typed/read-number.ts'
import { splitTyped } from './typed/split-typed.ts'
import { type Dimension, dimensionOf, type Unit, unitKey, unitsOf, unitsWritten } from './typed/units.ts'

/** One way an ambiguous answer can be meant. */
export type PossibleReading = {
  /** In the canonical unit. */
  readonly value: number
  readonly unit: MeasuredUnit
  /** The number and unit as they would have been typed: 1.6 and "oz". */
  readonly number: number
  readonly writtenUnit: string
}

export type TypedRefusal =
  | { readonly code: 'nothing-typed'; readonly quantity: MeasuredQuantity }
  | {
      readonly code: 'too-long'
      readonly quantity: MeasuredQuantity
      readonly length: number
      readonly longest: number
    }
  | { readonly code: 'not-a-number'; readonly quantity: MeasuredQuantity; readonly typed: string }
  | {
      readonly code: 'several-numbers'
      readonly quantity: MeasuredQuantity
      readonly typed: string
      readonly numbers: readonly string[]
    }
  /** Two ends where one figure is asked for. */
  | { readonly code: 'range'; readonly quantity: MeasuredQuantity; readonly typed: string }
  | {
      readonly code: 'unknown-unit'
      readonly quantity: MeasuredQuantity
      readonly typed: string
      readonly unit: string
      readonly accepted: readonly string[]
    }
  | {
      readonly code: 'unit-does-not-fit'
      readonly quantity: MeasuredQuantity
      readonly typed: string
      readonly unit: string
      readonly measures: Dimension
      readonly accepted: readonly string[]
    }
  | {
      readonly code: 'ambiguous'
      readonly quantity: MeasuredQuantity
      readonly typed: string
      readonly readings: readonly PossibleReading[]
    }
  /** "45C", a multiple of a capacity that is not known. */
  | { readonly code: 'rate-without-capacity'; readonly quantity: MeasuredQuantity; readonly typed: string }
  | { readonly code: 'negative'; readonly quantity: MeasuredQuantity; readonly typed: string; readonly value: number }
  | {
      readonly code: 'out-of-range'
      readonly quantity: MeasuredQuantity
      readonly typed: string
      readonly side: 'too-low' | 'too-high'
      readonly value: number
      readonly unit: MeasuredUnit
      readonly lowest: number
      readonly highest: number
      /** The figure with its decimal mark one place on, where that is a usual one: 42 V may be 4.2 V. */
      readonly meant: number | null
    }

export type TypedReading =
  | { readonly ok: true; readonly value: number; readonly unit: MeasuredUnit; readonly typed: string }
  | { readonly ok: false; readonly refusal: TypedRefusal }

const longest = 60

/**
 * Reads one typed value.
 *
 * A number whose comma or missing unit can be meant in two ways is never guessed: it is `ambiguous` when both ways are
 * plausible for one cell (`typed/plausible.ts`), with the readings to ask back, the likeliest by locale first. One
 * reading in that list means "did you mean this?". The value is in the canonical unit of the quantity.
 */
export function readTyped(text: string, quantity: MeasuredQuantity, locale: string): TypedReading {
  const typed = text.trim()
  if (typed === '') return refuse({ code: 'nothing-typed', quantity })
  if (typed.length > longest) return refuse({ code: 'too-long', quantity, length: typed.length, longest })
  const parts = splitTyped(typed, quantity === 'rest-time')
  switch (parts.kind) {
    case 'no-number':
      return refuse({ code: 'not-a-number', quantity, typed })
    case 'several-numbers':
      return refuse({ code: 'several-numbers', quantity, typed, numbers: parts.numbers })
    case 'range':
      return refuse({ code: 'range', quantity, typed })
    case 'time':
      return settle(
        typed,
        quantity,
        parts.hours.map(hours => reading(hours, unitsOf(quantity)[0]!, quantity)),
      )
    case 'number-and-unit': {
      const number = readNumber(parts.number, locale)
      if (!number.ok) return refuse({ code: 'not-a-number', quantity, typed })
      return parts.unit === ''
        ? bare(typed, quantity, number.values)
        : withUnit(typed, quantity, number.values, parts.unit)
    }
  }
}

function withUnit(
  typed: string,
  quantity: MeasuredQuantity,
  numbers: readonly number[],
  written: string,
): TypedReading {
  const dimension = dimensionOf[quantity]
  const known = unitsWritten(written)
  const unit = known.find(each => each.measures === dimension)
  const accepted = unitsOf(quantity).map(each => each.symbol)
  if (!unit) {
    const other = known[0]
    if (!other) return refuse({ code: 'unknown-unit', quantity, typed, unit: written.slice(0, 20), accepted })
    return refuse({
      code: 'unit-does-not-fit',
      quantity,
      typed,
      unit: other.symbol,
      measures: other.measures,
      accepted,
    })
  }
  const readings = numbers.map(number => reading(number, unit, quantity))
  // A meter shows MΩ for an open circuit, so a capital M before ohm is asked back; MAH and MV can only mean milli.
  if (dimension === 'resistance' && /^m/.test(unitKey(written)) && /^M(?!illi|ili)/.test(written.trim())) {
    const within = readings.filter(each => inRange(each.value, quantity))
    if (within.length > 0) return refuse({ code: 'ambiguous', quantity, typed, readings: within })
  }
  return settle(typed, quantity, readings)
}

function bare(typed: string, quantity: MeasuredQuantity, numbers: readonly number[]): TypedReading {
  const [own, ...others] = unitsOf(quantity)
  const usual = ({ value }: PossibleReading) =>
    value >= plausible[quantity].usualFrom && value <= plausible[quantity].usualTo
  const inOwn = numbers.map(number => reading(number, own!, quantity))
  const inOthers = numbers.flatMap(number => others.map(unit => reading(number, unit, quantity))).filter(usual)
  const sure = inOwn.filter(usual)
  if (numbers.length === 1 && sure.length === 1) return settle(typed, quantity, sure)
  // Zero is the same in every unit that starts at zero.
  if (numbers[0] === 0 && others.every(unit => unit.offset === undefined)) return settle(typed, quantity, inOwn)
  const candidates = distinct([...sure, ...inOwn.filter(each => inRange(each.value, quantity)), ...inOthers])
  if (candidates.length === 0) return settle(typed, quantity, inOwn)
  // Two readings of the comma, but only one of them makes sense in the unit that was asked for.
  if (sure.length === 1 && candidates.length === 1) return settle(typed, quantity, sure)
  return refuse({ code: 'ambiguous', quantity, typed, readings: candidates })
}

function settle(typed: string, quantity: MeasuredQuantity, readings: readonly PossibleReading[]): TypedReading {
  const within = distinct(readings.filter(each => inRange(each.value, quantity)))
  const [only, second] = within
  if (second) return refuse({ code: 'ambiguous', quantity, typed, readings: within })
  if (only) return { ok: true, value: only.value, unit: only.unit, typed }
  const { lowest, highest } = plausible[quantity]
  const { value, unit } = readings[0]!
  if (value < 0 && lowest >= 0) return refuse({ code: 'negative', quantity, typed, value })
  const side = value < lowest ? 'too-low' : 'too-high'
  const { usualFrom, usualTo } = plausible[quantity]
  const shifted = Number((side === 'too-low' ? value * 10 : value / 10).toPrecision(12))
  const meant = shifted >= usualFrom && shifted <= usualTo ? shifted : null
  return refuse({ code: 'out-of-range', quantity, typed, side, value, unit, lowest, highest, meant })
}

function reading(number: number, unit: Unit, quantity: MeasuredQuantity): PossibleReading {
  // Twelve digits: hides the binary noise of the factor, loses nothing a person can type.
  const value = Number((number * unit.factor + (unit.offset ?? 0)).toPrecision(12))
  return { value, unit: measuredUnit[quantity], number, writtenUnit: unit.symbol }
}

function inRange(value: number, quantity: MeasuredQuantity): boolean {
  return value >= plausible[quantity].lowest && value <= plausible[quantity].highest
}

function distinct(readings: readonly PossibleReading[]): PossibleReading[] {
  return readings.filter((each, at) => readings.findIndex(other => other.value === each.value) === at)
}

function refuse(refusal: TypedRefusal): TypedReading {
  return { ok: false, refusal }
}
