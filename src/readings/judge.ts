// Whether a measured value is below, meets or leaves open a limit, with its uncertainty (JCGM 106:2012 guard bands).
import { type LowerZone, type UpperZone, zone } from '../ground/guard-band.ts'
import type { MeasuredQuantity } from '../ground/quantities.ts'
import { type Instrument, standardUncertainty } from './instrument.ts'

/** A reading of one instrument against one limit, all in the quantity's canonical unit. */
export type JudgedReading = {
  readonly quantity: MeasuredQuantity
  readonly value: number
  readonly instrument: Instrument
  readonly limit: number
  readonly width?: number
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
