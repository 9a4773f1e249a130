// Whether a measured value is below, meets or leaves open a limit, with its uncertainty (JCGM 106:2012 guard bands).
import { type Instrument, standardUncertainty } from './instrument.ts'
import type { Quantity } from './quantity.ts'

export type LowerZone = 'below' | 'meets' | 'undecided'
export type UpperZone = 'above' | 'within' | 'undecided'

export type Judged = {
  readonly value: number
  /** Standard uncertainty of the value, same unit. */
  readonly u: number
  readonly limit: number
  /** Width of the guard band in standard uncertainties: w = guard · u. With 2 a wrong call happens in at most 2.3 %. */
  readonly guard?: number
}

/**
 * The zone of a value against one tolerance limit.
 *
 * Against a lower limit T: `below` only if value ≤ T − w, `meets` only if value ≥ T + w, otherwise `undecided`; mirrored
 * for an upper limit. A value, uncertainty or limit that is no finite number leaves it undecided.
 * Source: JCGM 106:2012 clause 8, guarded acceptance and guarded rejection.
 */
export function zone(judged: Judged & { readonly side: 'lower' }): LowerZone
export function zone(judged: Judged & { readonly side: 'upper' }): UpperZone
export function zone(judged: Judged & { readonly side: 'lower' | 'upper' }): LowerZone | UpperZone
export function zone(judged: Judged & { readonly side: 'lower' | 'upper' }): LowerZone | UpperZone {
  const { value, u, limit, side, guard = 2 } = judged
  const w = guard * u
  if (![value, limit, w].every(Number.isFinite) || w < 0) return 'undecided'
  // A reading without uncertainty that lies exactly on the limit conforms.
  if (side === 'lower') {
    if (value >= limit + w) return 'meets'
    return value <= limit - w ? 'below' : 'undecided'
  }
  if (value <= limit - w) return 'within'
  return value >= limit + w ? 'above' : 'undecided'
}

/** A reading of one instrument against one limit, all in the quantity's canonical unit. */
export type JudgedReading = {
  readonly quantity: Quantity
  readonly value: number
  readonly instrument: Instrument
  readonly limit: number
  readonly guard?: number
}

/**
 * The zone of a reading, with the instrument's uncertainty where it is larger, at the reading or at the limit.
 *
 * The question is what a cell exactly on the limit would show. An uncertainty in percent is smaller at a reading below
 * the limit than at the limit itself: taken there, it would call 2.9 % of cells on the limit below it, not 2.3 %.
 */
export function judgeReading(reading: JudgedReading & { readonly side: 'lower' }): LowerZone
export function judgeReading(reading: JudgedReading & { readonly side: 'upper' }): UpperZone
export function judgeReading(reading: JudgedReading & { readonly side: 'lower' | 'upper' }): LowerZone | UpperZone
export function judgeReading({
  quantity,
  instrument,
  ...judged
}: JudgedReading & { readonly side: 'lower' | 'upper' }): LowerZone | UpperZone {
  const widest = Math.max(Math.abs(judged.value), Math.abs(judged.limit))
  return zone({ ...judged, u: standardUncertainty(quantity, widest, instrument) })
}
