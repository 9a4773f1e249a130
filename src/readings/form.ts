// What a form for a reading asks, and how its typed fields become one value with its uncertainty.

import { guard } from '../ground/guard-band.ts'
import type { MeasuredQuantity, Quantity } from '../ground/quantities.ts'
import { claimedEnergyDensity, claimedEnergyPerMass } from './densities.ts'
import { type Instrument, instrumentsFor, type MenuInstrument, standardUncertainty } from './instrument.ts'
import { readTyped, type TypedRefusal } from './read-typed.ts'
import { type ClaimedCurrentReading, readClaimedCurrent } from './typed/read-claimed-current.ts'
import { voltageLost, voltageLostUnderLoad } from './voltage-lost.ts'

export type FormField = {
  readonly id:
    | 'value'
    | 'capacity'
    | 'diameter'
    | 'length'
    | 'mass'
    | 'nominal-voltage'
    | 'claimed-current'
    | 'ac-resistance'
    | 'fall'
    | 'load-current'
  readonly quantity: MeasuredQuantity
  /** Read off a label: exact as printed, no instrument. */
  readonly printed: boolean
  /** Used when the field is left empty; the field may then be. Canonical unit. */
  readonly otherwise?: { readonly value: number; readonly u: number }
}

const printed = (id: FormField['id'], quantity: MeasuredQuantity, otherwise?: FormField['otherwise']): FormField => ({
  id,
  quantity,
  printed: true,
  ...(otherwise === undefined ? {} : { otherwise }),
})
const measured = (id: FormField['id'], quantity: MeasuredQuantity): FormField => ({ id, quantity, printed: false })

/**
 * The nominal voltage of nickel and cobalt cells is 3.6 to 3.7 V, of iron phosphate 3.2 V: where none is typed in, 3.6 V is taken
 * as good to a half-width of 0.4 V, so that an iron phosphate cell is not accused by an assumption.
 */
const usualNominal = { value: 3.6, u: 0.4 / Math.sqrt(3) }

/** Figures that were given before, in canonical units with their standard uncertainty: no form asks for them again. */
export type KnownFigures = Partial<Record<FormField['id'], { readonly value: number; readonly u: number }>>

/** The fields of a form that are not known yet. */
export const fieldsLeft = (quantity: Quantity, known: KnownFigures): readonly FormField[] =>
  fieldsOf(quantity).filter(field => known[field.id] === undefined)

/** The fields a form shows, at most four, so that an instrument's menu fits beside them in one of Discord's forms. */
export function fieldsOf(quantity: Quantity): readonly FormField[] {
  switch (quantity) {
    case 'claimed-capacity':
      return [printed('value', 'capacity')]
    case 'claimed-current':
      return [printed('value', 'current')]
    case 'energy-per-volume':
      return [
        printed('capacity', 'capacity'),
        measured('diameter', 'diameter'),
        measured('length', 'length'),
        printed('nominal-voltage', 'voltage', usualNominal),
      ]
    case 'energy-per-mass':
      return [
        printed('capacity', 'capacity'),
        measured('mass', 'mass'),
        printed('nominal-voltage', 'voltage', usualNominal),
      ]
    case 'voltage-lost':
      return [printed('claimed-current', 'current'), measured('ac-resistance', 'ac-resistance')]
    case 'voltage-lost-under-load':
      return [printed('claimed-current', 'current'), measured('fall', 'voltage'), measured('load-current', 'current')]
    default:
      return [measured('value', quantity)]
  }
}

/** The instruments to choose from, each for every field; none where everything is read off a label or needs none. */
export function instrumentsOf(quantity: Quantity, known: KnownFigures = {}): readonly MenuInstrument[] {
  const [first, ...others] = fieldsLeft(quantity, known).flatMap(field => (field.printed ? [] : [field.quantity]))
  if (!first) return []
  return instrumentsFor(first).filter(kind => others.every(other => instrumentsFor(other).includes(kind)))
}

type TakenRate = { readonly rate: number; readonly current_A: number }
export type FormReading =
  /** `taken`: the claimed current was typed as this multiple of the capacity, and taken as so many amperes. */
  | { readonly ok: true; readonly value: number; readonly u: number; readonly taken?: TakenRate }
  | {
      readonly ok: false
      readonly refusals: readonly { readonly field: FormField['id']; readonly refusal: TypedRefusal }[]
    }

/**
 * Reads a filled form: value in the quantity's canonical unit and its standard uncertainty. Without an instrument a measured
 * value is taken with the widest of its menu, never as exact. `limits`: what it will be held against, in the same unit, as far as that is known.
 * `known`: what was given before and stands in no field.
 */
export function readForm(
  quantity: Quantity,
  typed: Readonly<Record<string, string>>,
  instrument: Instrument | undefined,
  locale: string,
  limits: readonly number[] = [],
  known: KnownFigures = {},
): FormReading {
  const values: Partial<Record<FormField['id'], { value: number; u: number }>> = { ...known }
  const refusals: { field: FormField['id']; refusal: TypedRefusal }[] = []
  let taken: TakenRate | undefined
  for (const field of fieldsLeft(quantity, known)) {
    const text = typed[field.id] ?? ''
    if (text.trim() === '' && field.otherwise !== undefined) values[field.id] = field.otherwise
    else {
      const read: ClaimedCurrentReading =
        field.printed && field.quantity === 'current'
          ? readClaimedCurrent(text, locale, known.capacity?.value)
          : readTyped(text, field.quantity, locale)
      if (read.ok && read.rate !== undefined) taken = { rate: read.rate, current_A: read.value }
      if (!read.ok) refusals.push({ field: field.id, refusal: read.refusal })
      else
        values[field.id] = {
          value: read.value,
          u: field.printed
            ? 0
            : uncertainty(field.quantity, read.value, instrument, field.id === 'value' ? limits : []),
        }
    }
  }
  if (refusals.length > 0) return { ok: false, refusals }
  return { ok: true, ...combine(quantity, values), ...(taken && { taken }) }
}

/**
 * The standard uncertainty of a measured value; without an instrument, the widest of those that measure it.
 *
 * Where one of the `limits` that the value will be held against lies above it and near, it is taken at that limit: the question is
 * what a cell exactly on the limit would show. An uncertainty in percent is smaller at a reading below the limit than at the limit
 * itself; taken there, it would call 2.9 % of cells on the limit below it, not 2.3 %.
 */
export function uncertainty(
  quantity: MeasuredQuantity,
  value: number,
  instrument: Instrument | undefined,
  limits: readonly number[] = [],
): number {
  const kinds = instrument ? [instrument] : instrumentsFor(quantity).map((kind): Instrument => ({ kind }))
  const at = (reading: number) => Math.max(0, ...kinds.map(kind => standardUncertainty(quantity, reading, kind)))
  const near = limits.filter(limit => limit > value && limit - value <= 2 * guard * at(limit))
  return Math.max(at(value), ...near.map(at))
}

type Values = Partial<Record<FormField['id'], { value: number; u: number }>>

function combine(quantity: Quantity, values: Values): { value: number; u: number } {
  const of = (id: FormField['id']) => values[id] ?? { value: Number.NaN, u: 0 }
  const energy = {
    capacity_mAh: of('capacity').value,
    nominalV: of('nominal-voltage').value,
    uNominalV: of('nominal-voltage').u,
  }
  if (quantity === 'energy-per-volume') {
    const [diameter, length] = [of('diameter'), of('length')]
    return claimedEnergyDensity({
      ...energy,
      diameter_mm: diameter.value,
      length_mm: length.value,
      uDiameter_mm: diameter.u,
      uLength_mm: length.u,
    })
  }
  if (quantity === 'energy-per-mass')
    return claimedEnergyPerMass({ ...energy, mass_g: of('mass').value, uMass_g: of('mass').u })
  const claimed_A = of('claimed-current').value
  const [resistance, fall, load] = [of('ac-resistance'), of('fall'), of('load-current')]
  if (quantity === 'voltage-lost')
    return voltageLost({ claimed_A, resistance_mΩ: resistance.value, uResistance_mΩ: resistance.u })
  if (quantity === 'voltage-lost-under-load')
    return voltageLostUnderLoad({ claimed_A, fall_V: fall.value, uFall_V: fall.u, at_A: load.value, uAt_A: load.u })
  return of('value')
}
