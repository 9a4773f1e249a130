// DC resistance from steps of the load current, by the two-pulse method of IEC 61960 where a log has it.
import { type Figure, plainFigure } from '../figure.ts'
import type { Run } from './phases.ts'
import { quantile, type Trace } from './trace.ts'

/** Voltage and current just before and some time after a step. */
export type Step = {
  readonly before: { readonly voltage_V: number; readonly current_A: number }
  readonly after: { readonly voltage_V: number; readonly current_A: number }
  /** From the last sample before the step to the sample after it. */
  readonly seconds: number
  readonly method: 'two-pulse' | 'load-step'
}

export type StepAccuracy = {
  /** Standard uncertainty of one voltage reading in a difference, V: noise and resolution, not the common gain. */
  readonly uVoltage_V: number
  /** Relative standard uncertainty of the currents. */
  readonly uCurrent: number
  /** One meter measured both currents, so that its gain error is common to them. */
  readonly currents: 'common-gain' | 'independent'
}

/**
 * R = (U1 − U2)/(I2 − I1) with its standard uncertainty, both in mΩ.
 *
 * Source of the method: IEC 61960, as a maker of test equipment quotes it: 0.2 It for 10 s, then 1 It for 1 s. u by JCGM 100:2008 5.1.2.
 */
export function stepResistance(step: Step, accuracy: StepAccuracy): { readonly value: number; readonly u: number } {
  const { before, after } = step
  const change = after.current_A - before.current_A
  const ohms = (before.voltage_V - after.voltage_V) / change
  const fromVoltage = (Math.SQRT2 * accuracy.uVoltage_V) / change
  const fromCurrent =
    accuracy.currents === 'common-gain'
      ? ohms * accuracy.uCurrent
      : (ohms / change) * accuracy.uCurrent * Math.hypot(before.current_A, after.current_A)
  return { value: ohms * 1000, u: Math.abs(Math.hypot(fromVoltage, fromCurrent)) * 1000 }
}

type Plateau = {
  readonly from: number
  readonly to: number
  readonly current_A: number
}

/** The steps of a run a resistance can be had from, two-pulse ones first; at most eight. */
export function stepsOf(trace: Trace, run: Run): Step[] {
  const { time_s } = trace
  const found: Step[] = []
  for (const [first, second] of neighbours(trace, run)) {
    if (found.length === 64) break
    if (second.current_A < first.current_A + 0.1) continue
    const switched = time_s[first.to]!
    if (time_s[second.from]! - switched > 2.5) continue
    const held = switched - time_s[first.from]!
    const pulsed = time_s[second.to]! - switched
    const ratio = second.current_A / first.current_A
    const twoPulse = held >= 7 && held <= 13 && pulsed >= 0.5 && pulsed <= 2.5 && ratio >= 3 && ratio <= 7
    const row = twoPulse ? second.to : firstAfter(trace, second, switched + 1)
    const seconds = time_s[row]! - switched
    if (seconds > 12) continue
    found.push({
      before: sample(trace, first.to),
      after: sample(trace, row),
      seconds,
      method: twoPulse ? 'two-pulse' : 'load-step',
    })
  }
  const order = (step: Step) => (step.method === 'two-pulse' ? 0 : 1)
  return found.sort((a, b) => order(a) - order(b)).slice(0, 8)
}

/** The figure of a step, with what its method makes of it. */
export function resistanceFigure(step: Step, accuracy: StepAccuracy, wiring: 'four-wire' | 'two-wire'): Figure {
  const { value, u } = stepResistance(step, accuracy)
  return plainFigure(value, 'mΩ', u, step.method, [
    { code: 'seconds-after-step', seconds: step.seconds },
    ...(wiring === 'two-wire' ? ([{ code: 'includes-leads' }] as const) : []),
  ])
}

/** Standard deviation of one voltage sample within the longest load: from second differences, which drop the trend. */
export function sampleNoise(values: Float64Array, from: number, to: number): number {
  const count = to - from - 1
  const middle = quantile(
    count,
    at => {
      const row = from + 1 + at
      return Math.abs(values[row + 1]! - 2 * values[row]! + values[row - 1]!)
    },
    0.5,
  )
  // Median of |x| is 0.6745 σ, and a second difference has 6 times the variance of a sample.
  return Number.isFinite(middle) ? middle / (0.6745 * Math.sqrt(6)) : 0
}

/** Neighbouring stretches of steady current (within 5 % or 20 mA of their first sample), rests among them. */
function* neighbours({ current_A }: Trace, run: Run): Generator<readonly [Plateau, Plateau]> {
  let previous: Plateau | undefined
  let from = run.from
  for (let row = run.from + 1; row <= run.to + 1; row++) {
    const level = current_A[from]!
    const steady = row <= run.to && Math.abs(current_A[row]! - level) <= Math.max(0.02, 0.05 * Math.abs(level))
    if (steady) continue
    const plateau = { from, to: row - 1, current_A: level }
    if (previous) yield [previous, plateau]
    previous = plateau
    from = row
  }
}

function firstAfter({ time_s }: Trace, { from, to }: Plateau, time: number): number {
  let row = from
  while (row < to && time_s[row]! < time - 1e-9) row++
  return row
}

function sample({ voltage_V, current_A }: Trace, row: number) {
  return { voltage_V: voltage_V[row]!, current_A: current_A[row]! }
}
