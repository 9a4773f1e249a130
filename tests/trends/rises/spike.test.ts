// This week's spike against R's surveillance, whose weeks all weigh the same.
import { expect, test } from 'vitest'
import { chanceOfSoMany, foresee, spikeBound } from '../../../src/trends/rises/spike.ts'
import { bounds, observed, zerosThenSmall } from './spike-figures.ts'

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0)

test.each(bounds)('$series, $w weeks, alpha $alpha', ({ series, w, alpha, from, upperbound, alarms }) => {
  const counts = series === 'observed' ? observed : zerosThenSmall
  const found = upperbound.map((bound, i) => {
    const t = from - 1 + i
    const foreseen = foresee(sum(counts.slice(t - w, t)), w * 40, 40)!
    expect(spikeBound(foreseen, alpha)).toBe(bound)
    // The bound is the first count whose excess is at most alpha likely: the tail and the quantile are two libraries' functions.
    expect(chanceOfSoMany(bound + 1, foreseen)).toBeLessThanOrEqual(alpha)
    expect(chanceOfSoMany(bound, foreseen)).toBeGreaterThan(alpha)
    return counts[t]! > bound ? t + 1 : 0
  })
  expect(found.filter(week => week > 0)).toEqual(alarms)
})

test('the tail is what its terms add up to', () => {
  const size = 10.5
  const probability = 12 / 13
  let left = 1
  for (let x = 0, term = probability ** size; x < 12; term *= ((x + size) / (x + 1)) * (1 - probability), x++) {
    expect(chanceOfSoMany(x, { size, probability })).toBeCloseTo(left, 12)
    left -= term
  }
})

test('nothing is foreseen without checks', () => {
  expect(foresee(0, 0, 10)).toBeUndefined()
  expect(foresee(3, 40, 0)).toBeUndefined()
})
