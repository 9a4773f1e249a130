// What a discharge weighs: asymmetric, never rescaled, never below a minimum by the instrument's fault.
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator'
import { describe, expect, test } from 'vitest'
import { evidenceOf } from '../../src/readings/discharge/evidence.ts'
import type { MeasureOptions } from '../../src/readings/discharge/measure-options.ts'
import { measureRun } from '../../src/readings/discharge/measure-run.ts'
import { phasesOf, runsOf } from '../../src/readings/discharge/phases.ts'
import type { MenuInstrument } from '../../src/readings/instrument.ts'
import { menu } from '../../src/readings/instrument.ts'
import { type DischargeClaim, weighDischarge } from '../../src/readings/weigh-discharge.ts'
import { normalFrom, uniformFrom } from './chance.ts'
import { traceOf } from './discharge/reference.ts'
import { discharge, type Sample, usualCell } from './generate-log.ts'

const measure = (samples: readonly Sample[], options: Partial<MeasureOptions> = {}) => {
  const of = (key: keyof Sample) => samples.map(sample => sample[key])
  const trace = traceOf(of('t'), of('V'), of('I'), of('T'))
  const [run] = runsOf(phasesOf(trace, []), [])
  return measureRun(trace, run!, { instrument: { kind: 'lab-load' }, cutoff_V: 2.8, ...options })
}
const samples = discharge()
const whole = measure(samples)
const findings = (claim: DischargeClaim, run = whole) =>
  weighDischarge(evidenceOf(run), claim).map(each => `${each.code}: ${each.bearing}`)
const drawn = whole.figures.capacity.value!

test('an instrument that takes no logs counts as a hobby load', () => {
  const [scale, hobby] = (['kitchen-scale', 'hobby-load'] as const).map(kind =>
    measure(samples, { instrument: { kind } }),
  )
  expect(scale!.figures.capacity).toEqual(hobby!.figures.capacity)
})

describe('against the label', () => {
  test.each([
    [9900, 'far-below-label: strong'],
    [6200, 'far-below-label: strong'],
    [5700, 'label-undecided: none'],
    [5000, 'below-label: moderate'],
    [3000, 'label-reached: none'],
    [2000, 'label-reached: none'],
  ])('2.88 Ah of %d mAh', (label_mAh, expected) => {
    // Between the lines a lab load's uncertainty is enough; 5,760 and 3,600 mAh are where 50 and 80 % lie.
    const found = findings({ label_mAh })
    if (label_mAh === 5700) expect(['below-label: moderate', 'label-undecided: none']).toContain(found[0])
    else expect(found).toEqual([expected])
  })

  test('a cold room or a high rate explains a low capacity, and takes nothing from a good one', () => {
    const cold = measure(samples.map(sample => ({ ...sample, T: sample.T - 15 })))
    const [found] = weighDischarge(evidenceOf(cold), { label_mAh: 9900 })
    expect(found).toMatchObject({
      code: 'label-not-comparable',
      bearing: 'none',
      because: [{ code: 'cold-room', least_C: 15 }],
    })
    expect(findings({ label_mAh: 3000 }, cold)).toEqual(['label-reached: none'])
    const fast = measure(discharge({ ...usualCell, capacity_mAh: 1000, current_A: 4, every_s: 5 }))
    expect(findings({ label_mAh: 3000 }, fast)).toEqual(['label-not-comparable: none'])
  })

  test('half of a discharge shows nothing missing', () => {
    const half = measure(samples.filter(sample => sample.I === 0 || sample.V > 3.7))
    expect(findings({ label_mAh: 9900 }, half)).toEqual(['only-a-lower-bound: none'])
    expect(findings({ label_mAh: 1000 }, half)).toEqual(['label-reached: none'])
  })

  test('a gap that could hold the rest keeps it open', () => {
    const gap = measure(samples.filter(sample => sample.t < 1500 || sample.t > 9300))
    expect(gap.figures.capacity.value).toBeNull()
    expect(findings({ label_mAh: 9900 }, gap)).toEqual(['far-below-label: strong'])
    expect(findings({ label_mAh: 5000 }, gap)).toEqual(['below-label: moderate'])
    expect(findings({ label_mAh: 3500 }, gap)).toEqual(['label-undecided: none'])
  })
})

describe('against the maker’s minimum', () => {
  const minimum = { capacity_mAh: 3100, current_A: 1, cutoff_V: 2.8 }

  test('below, met, undecided', () => {
    expect(findings({ minimum })).toEqual(['below-minimum: must'])
    expect(findings({ minimum: { ...minimum, capacity_mAh: drawn + 10 } })).toEqual(['minimum-undecided: none'])
    expect(findings({ minimum: { ...minimum, capacity_mAh: drawn * 0.9 } })).toEqual(['meets-minimum: none'])
  })

  test('the cut-off counted to is what matters, not where the load stopped', () => {
    const early = measure(samples, { cutoff_V: 3 })
    expect(early.figures.endVoltage.value).toBeLessThan(2.85)
    expect(findings({ minimum: { ...minimum, cutoff_V: 3 } }, early)).toEqual(['below-minimum: must'])
    expect(findings({ minimum }, early)).toEqual(['minimum-not-comparable: none'])
  })

  test('another current, cut-off or temperature is no comparison, and nothing is rescaled', () => {
    const because = (claim: DischargeClaim, run = whole) => {
      const [found] = weighDischarge(evidenceOf(run), claim)
      return found?.code === 'minimum-not-comparable' ? found.because.map(each => each.code) : found?.code
    }
    expect(because({ minimum: { ...minimum, current_A: 0.5 } })).toEqual(['other-current'])
    expect(because({ minimum: { ...minimum, cutoff_V: 2.5 } })).toEqual(['other-cutoff'])
    expect(because({ minimum: { ...minimum, room_C: 0 } })).toEqual(['other-temperature'])
    const power = samples.map(sample => ({ ...sample, I: (sample.I * 3.6) / sample.V }))
    expect(because({ minimum }, measure(power))).toContain('current-not-constant')
  })
})

describe('at the claimed current', () => {
  const hot = samples.map(sample => ({ ...sample, T: sample.I > 0 ? sample.T + 45 : sample.T }))

  test('only when it was really drawn', () => {
    expect(findings({ continuous_A: 10 })).toEqual([])
    expect(findings({ continuous_A: 1 })).toEqual(['holds-claimed-current: none'])
  })

  test('heat, or half the label missing, separates', () => {
    expect(findings({ continuous_A: 1 }, measure(hot))).toEqual(['too-hot-at-claimed-current: strong'])
    expect(findings({ continuous_A: 1, label_mAh: 9900 })).toEqual([
      'far-below-label: strong',
      'gives-out-at-claimed-current: strong',
    ])
  })
})

describe('below the claimed current', () => {
  const hot = samples.map(sample => ({ ...sample, T: sample.I > 0 ? sample.T + 45 : sample.T }))

  test('heat or half the label missing counts all the more, and holding it says nothing', () => {
    expect(findings({ continuous_A: 3 }, measure(hot))).toEqual(['too-hot-at-claimed-current: strong'])
    expect(findings({ continuous_A: 3, label_mAh: 9900 })).toContain('gives-out-at-claimed-current: strong')
    expect(findings({ continuous_A: 3, label_mAh: 1900 })).toEqual(['label-reached: none'])
  })

  test('in a cold room a sound cell gives out too, and without a current nothing was drawn', () => {
    const cold = samples.map(sample => ({ ...sample, T: sample.T - 20 }))
    expect(findings({ continuous_A: 1, label_mAh: 9900 }, measure(cold)).join()).not.toContain('gives-out')
    const evidence = { ...evidenceOf(whole), current_A: 0 }
    expect(weighDischarge(evidence, { continuous_A: 3, label_mAh: 9900 }).map(({ code }) => code)).toEqual([
      'far-below-label',
    ])
  })
})

describe('chance', () => {
  // The true discharge, every 5 s; an instrument looks every 120 s, beginning whenever it happens to.
  const resting = Array.from({ length: 60 }, (_, n): Sample => ({ t: (n - 60) * 5, V: 4.172, I: 0, T: 22.4 }))
  const fine = [...resting, ...discharge({ ...usualCell, every_s: 5 })]
  const exact = { currentGain: 0, currentOffset_A: 0, voltageGain: 0, voltageOffset_V: 0 }
  const limit = measure(fine, { chain: exact }).figures.capacity.value!

  /** What an instrument shows: a gain and an offset of its own for each channel, a little noise, and its own moments. */
  const shown = (kind: MenuInstrument, chance: RandomGenerator) => {
    const { current, voltage } = menu[kind]
    const error = (of: { percent: number; fixed: number }) => {
      const [gain, offset] = [
        uniformFrom(chance, -of.percent, of.percent) / 100,
        uniformFrom(chance, -of.fixed, of.fixed),
      ]
      return (value: number) => value * (1 + gain) + offset
    }
    const [ofCurrent, ofVoltage] = [error(current!), error(voltage!)]
    const first = Math.floor(uniformFrom(chance, 0, 24))
    return fine
      .filter((_, at) => at % 24 === first)
      .map(sample => ({
        ...sample,
        I: sample.I === 0 ? 0 : ofCurrent(sample.I) + 0.001 * normalFrom(chance),
        V: ofVoltage(sample.V),
      }))
  }

  test.each(['hobby-load', 'lab-load'] as const)(
    '%s: a cell just at its minimum is hardly ever called below it',
    kind => {
      const chance = xoroshiro128plus(106)
      const minimum = { capacity_mAh: limit, current_A: usualCell.current_A, cutoff_V: usualCell.cutoff_V }
      const trials = 2000
      let below = 0
      for (let trial = 0; trial < trials; trial++) {
        const run = measure(shown(kind, chance), { instrument: { kind } })
        if (weighDischarge(evidenceOf(run), { minimum }).some(finding => finding.code === 'below-minimum')) below++
      }
      console.log(
        `called below its minimum though at it, ${kind}: ${((100 * below) / trials).toFixed(2)} % of ${trials}`,
      )
      expect(below / trials).toBeLessThanOrEqual(0.023)
    },
  )

  test.each(['hobby-load', 'lab-load'] as const)('%s: the readings spread as each of them says', kind => {
    const chance = xoroshiro128plus(101)
    const readings = Array.from({ length: 1500 }, () => measure(shown(kind, chance), { instrument: { kind } }))
    for (const name of ['capacity', 'energy', 'meanCurrent', 'meanVoltage', 'endVoltage'] as const) {
      const values = readings.map(reading => reading.figures[name].value!)
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length
      const spread = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1))
      const stated = readings.reduce((sum, reading) => sum + reading.figures[name].u, 0) / readings.length
      if (name === 'capacity') expect(Math.abs(mean - limit)).toBeLessThan(stated / 2)
      console.log(`${kind}, ${name}: u stated ${stated.toPrecision(3)}, spread ${spread.toPrecision(3)}`)
      // The last voltage under load also depends on the moment it was taken.
      if (name === 'endVoltage') continue
      expect(stated / spread).toBeGreaterThan(0.9)
      expect(stated / spread).toBeLessThan(name === 'meanVoltage' ? 1.25 : 1.15)
    }
  })
})
