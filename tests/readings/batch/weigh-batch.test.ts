// A batch by its masses: published lots are one lot, mixed ones are not, and nothing of it is called counterfeit.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { chiSquare, rangeCdf, rangeQuantile, twoClusters } from '../../../src/readings/batch/homogeneity.ts'
import { lotSigma } from '../../../src/readings/batch/lot-spread.ts'
import { weighBatch } from '../../../src/readings/batch/weigh-batch.ts'
import { mixed, oneLot } from './lot-masses.ts'

const weigh = (values: readonly number[], resolution = 0.1) => weighBatch({ quantity: 'mass', values, resolution })!

describe('the example of three masses', () => {
  // 43.1, 44.9 and 46.8 g against a lot's 0.25 g, and against twice that; worked out by hand: Σ(x − x̄)² = 6.8467 g².
  test('χ² is 109.5 on 2 degrees of freedom', () => {
    const { statistic, degreesOfFreedom, p } = chiSquare([43.1, 44.9, 46.8], 0.25)
    expect(statistic).toBeCloseTo(109.5, 0)
    expect(degreesOfFreedom).toBe(2)
    expect(p / 1.63e-24).toBeCloseTo(1, 2)
  })

  test('with 0.5 g chance alone makes it once in a million; with a fourth mass of 45.0 g, five times', () => {
    expect(chiSquare([43.1, 44.9, 46.8], 0.5).p).toBeCloseTo(1.1e-6, 7)
    expect(chiSquare([43.1, 44.9, 45.0, 46.8], 0.5).p).toBeCloseTo(4.9e-6, 7)
  })

  test('three or four are not one lot, and the tests for single outliers would not see it', () => {
    expect(weigh([43.1, 44.9, 46.8])).toMatchObject({ found: 'not-one-lot', tells: 'strong', count: 3 })
    expect(weigh([43.1, 44.9, 45.0, 46.8])).toMatchObject({ found: 'not-one-lot', tells: 'strong' })
    // Grubbs: the largest deviation over the sample's own standard deviation; its 5 % limits are 1.154 and 1.481.
    const grubbs = (values: readonly number[]) => {
      const mean = values.reduce((sum, x) => sum + x, 0) / values.length
      const s = Math.sqrt(values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (values.length - 1))
      return Math.max(...values.map(x => Math.abs(x - mean))) / s
    }
    expect(grubbs([43.1, 44.9, 46.8])).toBeCloseTo(1.009, 3)
    expect(grubbs([43.1, 44.9, 45.0, 46.8])).toBeCloseTo(1.224, 3)
  })
})

describe('the range of a normal sample', () => {
  // Limits in g at 46 g on a 0.1 g scale with a lot's 0.5 %, for 99 and 99.9 % of lots (simulated there to the hundredth).
  test.each([
    [2, 0.84, 1.07],
    [3, 0.95, 1.16],
    [4, 1.01, 1.22],
    [5, 1.06, 1.26],
    [6, 1.09, 1.29],
    [8, 1.15, 1.34],
    [10, 1.19, 1.37],
  ])('%d cells: %d and %d g', (n, usual, most) => {
    const sigma = Math.hypot(0.005 * 46, 0.1 / Math.sqrt(12))
    expect(Math.abs(rangeQuantile(0.99, n) * sigma - usual)).toBeLessThan(0.016)
    expect(Math.abs(rangeQuantile(0.999, n) * sigma - most)).toBeLessThan(0.016)
  })

  test('of two is the normal law itself: within 1.96 · √2 in 95 %', () => {
    expect(rangeCdf(1.959964 * Math.SQRT2, 2)).toBeCloseTo(0.95, 6)
  })

  test('grows with the probability and with the number of cells', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 60 }), fc.double({ min: 0.5, max: 0.999, noNaN: true }), (n, p) => {
        expect(rangeCdf(rangeQuantile(p, n), n)).toBeCloseTo(p, 5)
        expect(rangeQuantile(p, n + 1)).toBeGreaterThan(rangeQuantile(p, n))
      }),
      { numRuns: 30 },
    )
  })
})

describe('published series', () => {
  test('there are 133 cells in 14 one-lot series, and two mixed ones', () => {
    expect(Object.values(oneLot).flat()).toHaveLength(133)
    expect(Object.keys(oneLot)).toHaveLength(14)
    expect(Object.values(mixed).map(({ length }) => length)).toEqual([22, 29])
  })

  test.each(Object.entries(oneLot))('%s is not called mixed', (_name, values) => {
    for (const resolution of [0.01, 0.1, 1]) {
      const shown = values.map(value => Math.round(value / resolution) * resolution)
      expect(weigh(shown, resolution)).toMatchObject({ tells: 'nothing', clusters: null })
    }
    expect(weigh(values, 0.01).found).toBe('one-lot-possible')
  })

  test.each(Object.entries(mixed))('%s is two kinds, and never “not one lot”: the design is one', (_name, values) => {
    const finding = weigh(values, 0.01)
    expect(finding).toMatchObject({ found: 'two-kinds', tells: 'moderate' })
    expect(finding.clusters!.low.length + finding.clusters!.high.length).toBe(values.length)
    expect(finding.chiSquare.p).toBeLessThan(1e-9)
  })

  test('no part of a one-lot series is called mixed either', () => {
    const series = fc.constantFrom(...Object.values(oneLot)).chain(all => fc.subarray([...all], { minLength: 2 }))
    fc.assert(
      fc.property(series, values => {
        expect(weigh(values)).toMatchObject({ tells: 'nothing' })
      }),
      { numRuns: 1000 },
    )
  })

  test('two series of different models together are found', () => {
    expect(weigh([...oneLot['lot13']!.slice(0, 5), ...oneLot['lot02']!.slice(0, 5)])).toMatchObject({
      found: 'not-one-lot',
      tells: 'strong',
    })
  })
})

describe('the lines of a range', () => {
  const spread = (n: number, share: number) =>
    weigh(
      Array.from({ length: n }, (_, at) => 46 * (1 + (share * at) / (n - 1) - share / 2)),
      0.001,
    ).found

  test.each([
    [3, 0.019, 'one-lot-possible'],
    [4, 0.024, 'one-lot-possible'],
    [4, 0.0275, 'two-runs'],
    [5, 0.0245, 'one-lot-possible'],
    [5, 0.0285, 'two-runs'],
    [3, 0.0295, 'two-runs'],
    [3, 0.031, 'two-kinds'],
    [3, 0.051, 'not-one-lot'],
    [8, 0.024, 'one-lot-possible'],
    [8, 0.029, 'two-runs'],
    [8, 0.045, 'two-kinds'],
    [8, 0.055, 'not-one-lot'],
  ])('%d cells over %d of the mean: %s', (n, share, found) => {
    expect(spread(n, share)).toBe(found)
  })

  test('a display of whole grams cannot judge a range below three of them', () => {
    expect(weigh([45, 46, 47], 1)).toMatchObject({ found: 'scale-too-coarse', tells: 'nothing' })
    expect(weigh([45.0, 46.0, 47.0], 0.1)).toMatchObject({ found: 'two-kinds' })
    expect(weigh([43, 45, 47], 1)).toMatchObject({ found: 'not-one-lot' })
  })

  test('what an instrument adds anew with each cell widens what one lot may show', () => {
    const values = [44, 45, 46]
    expect(weigh(values).found).toBe('two-kinds')
    expect(weighBatch({ quantity: 'mass', values, resolution: 0.1, accuracy: 2 })!.found).toBe('one-lot-possible')
  })

  test('lots drawn by chance are called mixed in less than one of a thousand', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 24 }),
        fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
        (n, chance) => {
          // The mean of twelve even draws, spread to one standard deviation: near enough to normal, with shorter tails.
          const draw = () => Array.from({ length: 12 }, () => chance.next().value).reduce((sum, x) => sum + x, -6)
          const values = Array.from({ length: n }, () => 46 * (1 + 0.0049 * draw()))
          expect(['one-lot-possible', 'two-runs']).toContain(weigh(values).found)
        },
      ),
      { numRuns: 500 },
    )
  })
})

test('two clusters need six values, a gap over 3 σ, and two values on either side', () => {
  expect(twoClusters([1, 1.1, 5, 5.1, 5.2], 0.1)).toBeNull()
  expect(twoClusters([1, 5, 5.1, 5.2, 5.05, 5.15], 0.1)).toBeNull()
  expect(twoClusters([5, 1, 5.1, 1.1, 5.2, 5.05], 0.1)).toEqual({
    low: [1, 3],
    high: [0, 2, 4, 5],
    gap: expect.closeTo(3.9),
  })
  expect(twoClusters([1, 1.1, 1.35, 1.4, 1.5, 1.45], 0.1)).toBeNull()
})

test('capacities have lines of their own spread', () => {
  const capacity = (values: readonly number[]) => weighBatch({ quantity: 'capacity', values, resolution: 1 })!
  // Nine new 21700s at 1 It on a hobby charger: 0.21 % (open student data, 2022).
  expect(capacity([3975, 3980, 3990, 3985, 3978, 3992, 3983, 3976, 3988])).toMatchObject({ found: 'one-lot-possible' })
  expect(capacity([2500, 2510, 1900, 2490])).toMatchObject({ found: 'not-one-lot' })
  expect(capacity([2500, 2510]).sigma / 2505).toBeCloseTo(lotSigma.capacity, 4)
})

test('fewer than two figures, or what is none, give no finding', () => {
  for (const values of [[], [45], [45, Number.NaN], [45, 0], [45, -45], [45, Number.POSITIVE_INFINITY]])
    expect(weighBatch({ quantity: 'mass', values, resolution: 0.1 })).toBeNull()
})
