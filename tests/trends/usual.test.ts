// What is usual: bands in fives out of shown numbers, a year that ends before the four weeks that are looked at, and nothing where too little is there.
import { expect, test } from 'vitest'
import { usualOf } from '../../src/trends/usual.ts'
import { many, weekly } from './weekly.ts'

test('four weeks stand beside the stretches of the year before, which end before they begin', () => {
  const swaying = Array.from({ length: 40 }, (_, i) => ({ checks: i % 2 ? 30 : 20, failed: i % 4 === 0 ? 10 : 5 }))
  const last = many(4, { checks: 100, failed: 25 })
  const usual = usualOf(weekly([...swaying, ...last]))
  expect(usual).toMatchObject({
    checks: 400,
    failed: 100,
    usualChecks: { low: 100, high: 100 },
    // A quarter of them failed in every stretch, so as many of 400.
    usualFailed: { low: 100, high: 100 },
    share: 25,
    usualShare: 25,
    besideChecks: 'more',
    besideFailed: 'usual',
    grown: true,
    stretches: 37,
    asMany: 37,
  })
})

test('eight of ten stretches are usual: what lies outside is told as more or fewer, and how rare it was', () => {
  const past = Array.from({ length: 56 }, (_, i) => ({ checks: 20, failed: [0, 5, 5, 5, 5, 5, 5, 5, 5, 10][i % 10]! }))
  const at = (failed: number) => usualOf(weekly([...past, ...many(4, { checks: 20, failed })]))
  expect(at(5)).toMatchObject({ besideFailed: 'usual', usualFailed: { low: 15, high: 25 } })
  expect(at(10)).toMatchObject({ besideFailed: 'more', asMany: 0 })
  expect(at(0)).toMatchObject({ besideFailed: 'fewer', asMany: 49 })
})

test('a little more than usual is no growth', () => {
  const at = (checks: number) => usualOf(weekly([...many(30), ...many(4, { checks })]))
  expect(at(20)).toMatchObject({ besideChecks: 'usual', grown: false })
  expect(at(23)).toMatchObject({ besideChecks: 'more', grown: false })
  expect(at(25)).toMatchObject({ besideChecks: 'more', grown: true })
})

test('what is longer ago than a year and four weeks changes nothing', () => {
  const recent = [...many(52), ...many(4, { checks: 25 })]
  expect(usualOf(weekly([...many(30, { checks: 200, failed: 100 }), ...recent]))).toEqual(usualOf(weekly(recent)))
})

test('too few weeks, or none that showed anything, say nothing; a week without a release showed nothing', () => {
  expect(usualOf(weekly(many(16)))).toBeUndefined()
  expect(usualOf(weekly(many(17)))).toBeDefined()
  expect(usualOf(weekly([...many(20), ...many(4, { checks: 0, failed: 0 })]))).toBeUndefined()
  expect(usualOf(weekly([...many(20, { checks: 0, failed: 0 }), ...many(4)]))).toBeUndefined()
  expect(usualOf(weekly([...many(20), null, ...many(3)]))?.checks).toBe(60)
})

test('grown is from a fifth more than the most that is usual', () => {
  expect(usualOf(weekly([...many(30), ...many(4, { checks: 24 })]))?.grown).toBe(true)
})

test('of ten stretches the fewest and the most are not usual, of eleven neither; the next ones are', () => {
  const checks = (stretches: number) => {
    // Every stretch begins a week later, and has five checks more than the one before.
    const weeks = Array.from({ length: stretches + 3 }, (_, i) => ({
      checks: i % 4 === 3 ? 5 * (i - 2) + 20 : 0,
      failed: 0,
    }))
    return usualOf(weekly([...weeks, ...many(4)]))
  }
  const shares = checks(20)
  expect(shares?.stretches).toBe(20)
  const counts = Array.from({ length: 20 }, (_, i) => 5 * (i - (i % 4)) + 25).sort((a, b) => a - b)
  expect(shares?.usualChecks).toEqual({ low: counts[1], high: counts[17] })
})
