// Zones, instruments and densities hold against published examples and against chance.
import normalQuantile from '@stdlib/stats-base-dists-normal-quantile'
import fc from 'fast-check'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { describe, expect, test } from 'vitest'
import { zone } from '../../src/ground/guard-band.ts'
import { measuredQuantities } from '../../src/ground/quantities.ts'
import { claimedEnergyDensity, claimedEnergyPerMass } from '../../src/readings/densities.ts'
import { uncertainty } from '../../src/readings/form.ts'
import { type Instrument, instrumentsFor, standardUncertainty } from '../../src/readings/instrument.ts'
import { normalFrom, uniformFrom } from './chance.ts'

describe('JCGM 106', () => {
  // The decision rule of clause 8 with a guard band of 2u.
  test.each([
    [2900, 40, 3000, 'below'],
    [2960, 40, 3000, 'undecided'],
    [3010, 40, 3000, 'undecided'],
    [1450, 20, 3000, 'below'],
    [3085, 40, 3000, 'meets'],
  ])('%d mAh with u %d against %d mAh', (value, u, limit, expected) => {
    expect(zone({ value, u, limit, side: 'lower' })).toBe(expected)
  })

  test('upper limits mirror lower ones', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -999, max: 999 }),
        fc.integer({ min: 0, max: 99 }),
        fc.integer({ min: -999, max: 999 }),
        (value, u, limit) => {
          const mirror = { below: 'above', meets: 'within', undecided: 'undecided' } as const
          expect(zone({ value: -value, u, limit: -limit, side: 'upper' })).toBe(
            mirror[zone({ value, u, limit, side: 'lower' })],
          )
        },
      ),
    )
  })

  test('what is no finite number decides nothing', () => {
    for (const odd of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      expect(zone({ value: odd, u: 1, limit: 1, side: 'lower' })).toBe('undecided')
      expect(zone({ value: 1, u: odd, limit: 1, side: 'upper' })).toBe('undecided')
      expect(zone({ value: 1, u: 1, limit: odd, side: 'upper' })).toBe('undecided')
    }
  })
})

describe('instruments', () => {
  test('a half-width becomes a standard uncertainty by the square root of three (JCGM 100 4.3.7)', () => {
    expect(standardUncertainty('capacity', 3000, { kind: 'typed-figure', percent: 1, fixed: 0 })).toBeCloseTo(
      17.3205,
      4,
    )
    expect(standardUncertainty('mass', 45, { kind: 'tenth-gram-scale' })).toBeCloseTo(0.29 / Math.sqrt(3), 12)
  })

  test('an instrument that does not measure the quantity knows nothing', () => {
    const u = standardUncertainty('voltage', 4, { kind: 'kitchen-scale' })
    expect(u).toBe(Number.POSITIVE_INFINITY)
    expect(zone({ value: 4, u, limit: 2, side: 'lower' })).toBe('undecided')
  })

  test('a basic multimeter cannot judge a cell resistance', () => {
    const u = standardUncertainty('ac-resistance', 60, { kind: 'basic-multimeter' })
    expect(zone({ value: 60, u, limit: 20, side: 'upper' })).toBe('undecided')
  })
})

describe('a cell that meets its minimum is seldom called below it', () => {
  // Every instrument of the menu against every quantity it measures, the true value exactly on the limit: the worst case.
  const limits = {
    mass: 45,
    diameter: 18.2,
    length: 65,
    voltage: 3.6,
    'ac-resistance': 25,
    'dc-resistance': 40,
    capacity: 3000,
    current: 3,
    temperature: 25,
  }
  const cases = measuredQuantities.flatMap(quantity => {
    const limit = limits[quantity as keyof typeof limits]
    return limit === undefined ? [] : instrumentsFor(quantity).map(kind => ({ quantity, kind, limit }))
  })
  const trials = 20_000

  test.each(cases)('$quantity by $kind', ({ quantity, kind, limit }) => {
    const instrument: Instrument = { kind }
    const u = standardUncertainty(quantity, limit, instrument)
    const chance = xoroshiro128plus(106)
    const rate = (errorAt: (part: number) => number) => {
      let wrong = 0
      for (let trial = 0; trial < trials; trial++) {
        // One draw in each of 20,000 equal slices of probability: the rate is exact to 1/20,000.
        const value = limit + errorAt((trial + uniformFrom(chance, 0, 1)) / trials)
        const taken = uncertainty(quantity, value, instrument, [limit])
        if (zone({ value, u: taken, limit, side: 'lower' }) === 'below') wrong++
      }
      return wrong / trials
    }
    const even = rate(part => (2 * part - 1) * Math.sqrt(3) * u)
    // Many small causes of that size instead of one even one: the normal law of the 2.3 % promise, Φ(−2) = 2.28 %.
    const normal = rate(part => normalQuantile(part, 0, u))
    console.log(
      `called below though on the limit: ${quantity} by ${kind}: even ${percent(even)}, normal ${percent(normal)}`,
    )
    expect(even).toBeLessThanOrEqual(0.023)
    expect(normal).toBeLessThanOrEqual(0.023)
  })
})

const percent = (part: number) => `${(part * 100).toFixed(2)} %`

describe('energy densities', () => {
  test('a 9.9 Ah claim on an 18650 would need about 2 150 Wh/L (nominal size, 3.6 V)', () => {
    const { value } = claimedEnergyDensity({ capacity_mAh: 9900, nominalV: 3.6, diameter_mm: 18, length_mm: 65 })
    expect(value).toBeGreaterThan(2145)
    expect(value).toBeLessThan(2160)
  })

  // 725 Wh/L (NASA abstract, "Safe, High Specific Energy & Power Li-ion Cells") at nominal volume and 3.6 V.
  test.each<[string, number, number, number]>([
    ['18650', 18, 65, 3.33],
    ['21700', 21, 70, 4.88],
    ['20700', 20, 70, 4.43],
    ['26650', 26, 65, 6.95],
    ['14500', 14, 50, 1.55],
  ])('725 Wh/L in a %s (%d × %d mm) is %f Ah', (_format, diameter_mm, length_mm, ah) => {
    const { value } = claimedEnergyDensity({ capacity_mAh: ah * 1000, nominalV: 3.6, diameter_mm, length_mm })
    expect(value).toBeGreaterThan(725 * 0.998)
    expect(value).toBeLessThan(725 * 1.002)
  })

  test('propagated uncertainties agree with chance (Monte Carlo of JCGM 101, 40,000 draws)', () => {
    const chance = xoroshiro128plus(101)
    const claim = { capacity_mAh: 3000, nominalV: 3.6, diameter_mm: 18.3, length_mm: 65.2, mass_g: 45 }
    const us = { uCapacity_mAh: 30, uNominalV: 0.02, uDiameter_mm: 0.06, uLength_mm: 0.12, uMass_g: 0.9 }
    const perVolume: number[] = []
    const perMass: number[] = []
    for (let draw = 0; draw < 40_000; draw++) {
      const drawn = {
        capacity_mAh: claim.capacity_mAh + us.uCapacity_mAh * normalFrom(chance),
        nominalV: claim.nominalV + us.uNominalV * normalFrom(chance),
        diameter_mm: claim.diameter_mm + us.uDiameter_mm * normalFrom(chance),
        length_mm: claim.length_mm + us.uLength_mm * normalFrom(chance),
        mass_g: claim.mass_g + us.uMass_g * normalFrom(chance),
      }
      perVolume.push(claimedEnergyDensity(drawn).value)
      perMass.push(claimedEnergyPerMass(drawn).value)
    }
    const spread = (all: number[]) => {
      const mean = all.reduce((sum, each) => sum + each, 0) / all.length
      return Math.sqrt(all.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (all.length - 1))
    }
    expect(claimedEnergyDensity({ ...claim, ...us }).u / spread(perVolume)).toBeCloseTo(1, 1.7)
    expect(claimedEnergyPerMass({ ...claim, ...us }).u / spread(perMass)).toBeCloseTo(1, 1.7)
  })
})
