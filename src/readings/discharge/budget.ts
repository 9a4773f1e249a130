// The uncertainty budget of a capacity and an energy (JCGM 100:2008), term by term.
import { type Instrument, menu } from '../instrument.ts'
import type { Integral } from './integrate.ts'

/** What the measuring chain can be off by: half-widths, except the noise, which is a standard deviation. */
export type ChainAccuracy = {
  /** Relative half-width of the current's gain: 0.01 is 1 %. */
  readonly currentGain: number
  readonly currentOffset_A: number
  /** Standard deviation of one current sample. */
  readonly currentNoise_A: number
  readonly voltageGain: number
  readonly voltageOffset_V: number
  /** Relative half-width of the clock: 50e-6 is 50 ppm, a usual crystal (common practice, no source). */
  readonly clock: number
}

/** The accuracy of a load of the menu or of a typed figure (its percent and amperes are the current's); else a hobby load's. */
export function chainOf(instrument: Instrument, currentNoise_A: number): ChainAccuracy {
  const stated =
    instrument.kind === 'typed-figure' ? { current: instrument, voltage: undefined } : menu[instrument.kind]
  const current = stated.current ?? menu['hobby-load'].current!
  const voltage = stated.voltage ?? menu['hobby-load'].voltage!
  return {
    currentGain: current.percent / 100,
    currentOffset_A: current.fixed,
    currentNoise_A,
    voltageGain: voltage.percent / 100,
    voltageOffset_V: voltage.fixed,
    clock: 50e-6,
  }
}

/** An end of the integral whose moment is known only to ± `halfWidth_s`, with the current there. */
export type LooseEnd = {
  readonly current_A: number
  readonly voltage_V: number
  readonly halfWidth_s: number
}

/** Standard uncertainties of one figure by cause, and together; all in mAh or all in Wh. */
export type Budget = {
  readonly gain: number
  readonly offset: number
  readonly noise: number
  readonly clock: number
  readonly ends: number
  readonly discretisation: number
  readonly u: number
}

const root3 = Math.sqrt(3)
const mAh = 1 / 3.6
const Wh = 1 / 3600

/**
 * u²(Q) = (Q·u_gain)² + (T·u_offset)² + σ²·Σw² + (Q·u_clock)² + Σ(I_end·u_end)² + discretisation², in mAh.
 *
 * Gain and offset are common to all samples, so they do not average out. Half-widths a count as u = a/√3.
 */
export function capacityBudget(
  integral: Integral,
  chain: ChainAccuracy,
  ends: readonly LooseEnd[],
  off_As = 0,
): Budget {
  return total({
    gain: (integral.charge_As * chain.currentGain * mAh) / root3,
    offset: (integral.duration_s * chain.currentOffset_A * mAh) / root3,
    noise: chain.currentNoise_A * Math.sqrt(integral.weightSquares_s2) * mAh,
    clock: (integral.charge_As * chain.clock * mAh) / root3,
    ends: (rootSum(ends, end => end.current_A * end.halfWidth_s) * mAh) / root3,
    discretisation: (Math.abs(off_As) * mAh) / root3,
  })
}

/** The same for energy, in Wh: the gain term joins current and voltage, the offset term both offsets. */
export function energyBudget(integral: Integral, chain: ChainAccuracy, ends: readonly LooseEnd[], off_Ws = 0): Budget {
  const meanVoltage = integral.duration_s > 0 ? integral.voltage_Vs / integral.duration_s : 0
  return total({
    gain: (integral.energy_Ws * Math.hypot(chain.currentGain, chain.voltageGain) * Wh) / root3,
    offset:
      (Math.hypot(integral.voltage_Vs * chain.currentOffset_A, integral.charge_As * chain.voltageOffset_V) * Wh) /
      root3,
    noise: chain.currentNoise_A * meanVoltage * Math.sqrt(integral.weightSquares_s2) * Wh,
    clock: (integral.energy_Ws * chain.clock * Wh) / root3,
    ends: (rootSum(ends, end => end.current_A * end.voltage_V * end.halfWidth_s) * Wh) / root3,
    discretisation: (Math.abs(off_Ws) * Wh) / root3,
  })
}

function total(terms: Omit<Budget, 'u'>): Budget {
  const { gain, offset, noise, clock, ends, discretisation } = terms
  return { ...terms, u: Math.hypot(gain, offset, noise, clock, ends, discretisation) }
}

/** √Σx² over the ends, however many a pulsed discharge has. */
export function rootSum(ends: readonly LooseEnd[], of: (end: LooseEnd) => number): number {
  return Math.sqrt(ends.reduce((sum, end) => sum + of(end) ** 2, 0))
}
