// Capacity, energy, cut-off, gaps, resistance, relaxation and warming hold against figures computed elsewhere.
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { describe, expect, test } from 'vitest'
import { type ChainAccuracy, capacityBudget, energyBudget } from '../../../src/readings/discharge/budget.ts'
import { integrate, simpson } from '../../../src/readings/discharge/integrate.ts'
import type { MeasureOptions } from '../../../src/readings/discharge/measure-options.ts'
import { measureRun } from '../../../src/readings/discharge/measure-run.ts'
import { phasesOf, runsOf } from '../../../src/readings/discharge/phases.ts'
import { fitRelaxation } from '../../../src/readings/discharge/relaxation.ts'
import { type Step, stepResistance } from '../../../src/readings/discharge/resistance.ts'
import { expectedRise } from '../../../src/readings/discharge/thermal.ts'
import type { Trace } from '../../../src/readings/discharge/trace.ts'
import { normalFrom } from '../chance.ts'
import { example, keep, traceOf } from './reference.ts'

const trace = traceOf(example.t, example.V, example.I)
const whole = { from: 0, to: 15 }

/** The half-widths of the worked example: gain 1 %, offset 2 mA, clock 50 ppm, voltage gain 0.5 %; noise sd 1 mA. */
const chain: ChainAccuracy = {
  currentGain: 0.01,
  currentOffset_A: 0.002,
  currentNoise_A: 0.001,
  voltageGain: 0.005,
  voltageOffset_V: 0,
  clock: 50e-6,
}
const ends = [
  { current_A: 1, voltage_V: 4.105, halfWidth_s: 1 },
  { current_A: 1, voltage_V: 2.8, halfWidth_s: 1 },
]

const measure = (of: Trace, options: Partial<MeasureOptions> = {}) => {
  const [run] = runsOf(phasesOf(of, []), [])
  return measureRun(of, run!, { instrument: { kind: 'lab-load' }, ...options })
}

// numpy 1.24 trapz, scipy 1.10 simpson (even='avg'), python-uncertainties 3.1 and a Monte Carlo of 200,000 draws.
describe('the budget of JCGM 100 on 16 points', () => {
  const integral = integrate(trace, whole)

  test('charge and energy', () => {
    expect(integral.charge_As / 3.6).toBeCloseTo(2800.25, 9)
    expect(integral.energy_Ws / 3600).toBeCloseTo(10.229731875, 9)
    expect(simpson(trace, whole).energy_Ws / 3600).toBeCloseTo(10.235214641898148, 9)
  })

  test('every term in mAh, and u = 16.5', () => {
    const budget = capacityBudget(integral, chain, ends)
    expect(budget.gain).toBeCloseTo(16.167250912982496, 9)
    expect(budget.offset).toBeCloseTo(3.2331615074619044, 9)
    expect(budget.noise).toBeCloseTo(0.7522189397597838, 9)
    expect(budget.clock).toBeCloseTo(0.0808362545649125, 9)
    expect(budget.ends).toBeCloseTo(0.22680460581325726, 9)
    expect(budget.u).toBeCloseTo(16.506275884622497, 9)
    expect(budget.u / 16.496483387548064).toBeCloseTo(1, 2)
  })

  test('u of the energy, 0.067 Wh', () => {
    expect(energyBudget(integral, chain, ends).u).toBeCloseTo(0.06713686208511611, 3)
  })

  test('the whole way, through measureRun', () => {
    const { figures, budget } = measure(trace, { chain })
    expect(figures.capacity.value).toBeCloseTo(2800.25, 9)
    expect(figures.energy.value).toBeCloseTo(10.229731875, 9)
    expect(figures.meanVoltage.value).toBeCloseTo(3.653149495580752, 9)
    expect(budget.capacity.gain).toBeCloseTo(16.167250912982496, 9)
    // Energy differs by what Simpson's rule adds; that difference is in the budget as a half-width.
    expect(budget.energy.discretisation).toBeCloseTo((10.235214641898148 - 10.229731875) / Math.sqrt(3), 9)
  })
})

test('cut-off by linear interpolation: 3.0 V at 9974.7 s, 2771.01 mAh, 10.1449 Wh', () => {
  const reading = measure(trace, { cutoff_V: 3, chain })
  expect(reading.cutoff.state).toBe('crossed')
  expect(reading.figures.capacity.value).toBeCloseTo(2771.010233918129, 9)
  expect(reading.figures.energy.value).toBeCloseTo(10.144936553362577, 9)
  expect(reading.figures.duration.value).toBeCloseTo(9974.736842105263, 9)
})

describe('a gap of 3600 s in which 0 to 1.05 A can have flowed', () => {
  const gappy = keep(trace, [0, 1, 2, 3, 4, 5, 6, 7, 11, 12, 13, 14, 15])

  test('is an interval, though the trapezoid across it looks right', () => {
    const { figures, gaps, traps } = measure(gappy, { gapCurrent_A: [0, 1.05], chain })
    expect(figures.capacity.value).toBeNull()
    expect(figures.capacity.interval!.from).toBeCloseTo(1800.375, 9)
    expect(figures.capacity.interval!.to).toBeCloseTo(2850.375, 9)
    expect(gaps).toHaveLength(1)
    expect(gaps[0]!.seconds).toBe(3600)
    expect(traps.map(trap => trap.code)).toContain('gaps')
  })

  test('is bridged, and said so, for a declared constant-current load', () => {
    const { figures } = measure(gappy, { constantCurrent: true, chain })
    expect(figures.capacity.value).toBeCloseTo(2800.875, 9)
    expect(figures.energy.value).toBeCloseTo(10.2295055, 9)
    expect(figures.capacity.notes).toContainEqual({ code: 'gaps-bridged', gaps: 1, seconds: 3600 })
  })
})

test.each([
  [3600, 13140],
  [900, 13646.25],
  [360, 13674.6],
  [60, 13679.85],
])('the trapezoid rule on 4.1 − 0.9·(t/3600)² in steps of %d s gives %f (exact 13680)', (h, expected) => {
  const t = Array.from({ length: 3600 / h + 1 }, (_, step) => step * h)
  const of = traceOf(
    t,
    t,
    t.map(x => 4.1 - 0.9 * (x / 3600) ** 2),
  )
  expect(integrate(of, { from: 0, to: t.length - 1 }).charge_As).toBeCloseTo(expected, 6)
  if (t.length > 2) expect(simpson(of, { from: 0, to: t.length - 1 }).charge_As).toBeCloseTo(13680, 6)
})

// IEC 61960, as a maker of test equipment quotes it; the figures and their uncertainties by python-uncertainties.
describe('two pulses of IEC 61960: 0.52 A for 10 s to 3.742 V, 2.60 A for 1 s to 3.648 V', () => {
  const step: Step = {
    before: { voltage_V: 3.742, current_A: 0.52 },
    after: { voltage_V: 3.648, current_A: 2.6 },
    seconds: 1,
    method: 'two-pulse',
  }

  test('45.19 mΩ, u 0.70 mΩ', () => {
    const accuracy = { uVoltage_V: 0.001, uCurrent: 0.005 / Math.sqrt(3) }
    const independent = stepResistance(step, { ...accuracy, currents: 'independent' })
    expect(independent.value).toBeCloseTo(45.19230769230762, 9)
    expect(independent.u).toBeCloseTo(0.6999534679606622, 9)
    expect(stepResistance(step, { ...accuracy, currents: 'common-gain' }).u).toBeCloseTo(0.6923132567440196, 9)
  })

  test('is found in a log sampled at 10 Hz, and is not taken for a plain load step', () => {
    const t = Array.from({ length: 600 }, (_, n) => n / 10)
    const I = t.map(x => (x < 20 ? 0 : x < 30 ? 0.52 : x <= 31 ? 2.6 : 0))
    const V = t.map(x => (x < 20 ? 3.77 : x < 30 ? 3.742 : x <= 31 ? 3.648 : 3.76))
    const reading = measure(traceOf(t, V, I), { wiring: 'four-wire' })
    expect(reading.figures.resistance).toMatchObject({ method: 'two-pulse', unit: 'mΩ' })
    expect(reading.figures.resistance!.value).toBeCloseTo(45.19230769230762, 6)
    expect(reading.steps.map(each => each.method)).toEqual(['two-pulse', 'load-step'])
  })
})

describe('two pulses are told by how they stand to each other', () => {
  // From 0.5 A to 3 … 7 times as much (the method has 5), after 7 to 13 s (10), for 0.5 to 2.5 s (1).
  const methodOf = ({ times = 5, held = 10, pulsed = 1 }) => {
    const t = Array.from({ length: 800 }, (_, n) => n / 10)
    const at = (x: number) => (x < 20 ? 0 : x < 20 + held ? 0.5 : x <= 20 + held + pulsed ? 0.5 * times : 0)
    const I = t.map(at)
    const V = I.map(amperes => 3.77 - amperes * 0.045)
    return measure(traceOf(t, V, I), { wiring: 'four-wire' }).figures.resistance?.method
  }
  test.each([
    [{ times: 2.9 }, 'load-step'],
    [{ times: 3 }, 'two-pulse'],
    [{ times: 5 }, 'two-pulse'],
    [{ times: 7 }, 'two-pulse'],
    [{ times: 7.2 }, 'load-step'],
    [{ held: 6 }, 'load-step'],
    [{ held: 8 }, 'two-pulse'],
    [{ held: 12 }, 'two-pulse'],
    [{ held: 14 }, 'load-step'],
    [{ pulsed: 2 }, 'two-pulse'],
    [{ pulsed: 4 }, 'load-step'],
  ])('%j: %s', (pulse, method) => {
    expect(methodOf(pulse)).toBe(method)
  })
})

describe('relaxation after the load', () => {
  const t = [0, 60, 120, 180, 240, 300, 600, 900, 1800]
  const V = [3.13, 3.1598, 3.1822, 3.1991, 3.2117, 3.2212, 3.2431, 3.2483, 3.25]

  test('least squares as scipy curve_fit: V∞ 3.24999 V, τ 210.08 s', () => {
    const fit = fitRelaxation(t, V)!
    expect(fit.settled_V).toBeCloseTo(3.2499914427853134, 6)
    expect(fit.amplitude_V).toBeCloseTo(0.11999376173572307, 6)
    expect(fit.tau_s).toBeCloseTo(210.07889614086, 3)
  })

  test('three equally spaced points settle where the fit does: Aitken’s (V1·V3 − V2²)/(V1 + V3 − 2·V2)', () => {
    const [v1, v2, v3] = [3.13, 3.1822, 3.2117]
    const settled = (v1 * v3 - v2 ** 2) / (v1 + v3 - 2 * v2)
    expect(settled).toBeCloseTo(3.250037004405218, 9)
    expect(Math.abs(fitRelaxation(t, V)!.settled_V - settled)).toBeLessThan(0.0001)
  })

  test('the stated uncertainty of V∞ is the spread of fits to noisy rests', () => {
    const chance = xoroshiro128plus(210)
    const times = Array.from({ length: 31 }, (_, n) => n * 60)
    const fits = Array.from(
      { length: 600 },
      () =>
        fitRelaxation(
          times,
          times.map(x => 3.25 - 0.12 * Math.exp(-x / 210) + 0.001 * normalFrom(chance)),
        )!,
    )
    const mean = fits.reduce((sum, fit) => sum + fit.settled_V, 0) / fits.length
    const spread = Math.sqrt(fits.reduce((sum, fit) => sum + (fit.settled_V - mean) ** 2, 0) / fits.length)
    const stated = fits.reduce((sum, fit) => sum + fit.u_V, 0) / fits.length
    expect(mean).toBeCloseTo(3.25, 4)
    // τ counts as known once found, so a little less is stated than is true.
    expect(stated / spread).toBeGreaterThan(0.75)
    expect(stated / spread).toBeLessThan(1.1)
    const residual = fits.reduce((sum, fit) => sum + fit.residual_V, 0) / fits.length
    expect(residual).toBeCloseTo(0.001, 4)
  })

  test('a straight line settles nowhere', () => {
    expect(fitRelaxation([0, 60, 120, 180, 240, 300], [3, 3.1, 3.2, 3.3, 3.4, 3.5])).toBeNull()
    expect(fitRelaxation([0, 60, 120, 180, 240, 300], [3, 3, 3, 3, 3, 3])).toBeNull()
  })
})

// Closed form and scipy solve_ivp; adiabatic 7.33 K and steady 12.0 K are its two limits.
test('3 A through 60 mΩ, 46.5 g, 950 J/kgK, 0.045 W/K: 5.49 K after 600 s', () => {
  const model = { current_A: 3, resistance_mΩ: 60, mass_g: 46.5, heat_JpkgK: 950, loss_WpK: 0.045 }
  expect(expectedRise(model, 600)).toBeCloseTo(5.487644512260807, 9)
  expect(expectedRise(model, 1e9)).toBeCloseTo(12, 9)
  expect(expectedRise({ ...model, loss_WpK: 1e-9 }, 600)).toBeCloseTo(7.334465195246181, 5)
})
