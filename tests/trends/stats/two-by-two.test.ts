// One-sided tests of two-by-two tables against R and SciPy, and a law of the hypergeometric distribution.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fisherGreater, leastAttainable, midPGreater, type TwoByTwo } from '../../../src/trends/stats/two-by-two.ts'

// R 4.2.2: fisher.test(alternative = "greater"), and its p less half of dhyper (epitools 0.5-10.1 ormidp.test agrees). Rows of the
// table: with and without the pattern; columns: recent and earlier. SciPy 1.10.1 fisher_exact agrees to 4e-16.
const byR = [
  [8, 2, 1, 5, 0.0244755244755245, 0.0126748251748252],
  [3, 1, 1, 3, 0.242857142857143, 0.128571428571429],
  [10, 2, 3, 15, 0.000465180943362906, 0.00024033096233838],
  [0, 6, 5, 5, 1, 0.971153846153846],
  [7, 12, 1, 18, 0.0211222953158437, 0.011333914559721],
  [2, 3, 6, 4, 0.8997668997669, 0.736596736596736],
  [1, 9, 11, 3, 0.999966348095302, 0.999293310001346],
  [0, 10, 0, 12, 1, 0.5],
  [56, 14, 48, 32, 0.00632471112989836, 0.00422472133972632],
] as const

const tableOf = (a: number, b: number, c: number, d: number): TwoByTwo => ({
  recent: a,
  earlier: b,
  recentAll: a + c,
  earlierAll: b + d,
})
const relative = (value: number, by: number): number => Math.abs(value - by) / by

test.each(byR)('[[%i, %i], [%i, %i]] as fisher.test has it', (a, b, c, d, fisher, midP) => {
  expect(relative(fisherGreater(tableOf(a, b, c, d)), fisher)).toBeLessThan(1e-12)
  expect(relative(midPGreater(tableOf(a, b, c, d)), midP)).toBeLessThan(1e-12)
})

// Least attainable p of each total in 24 rows of which 8 are recent: SciPy 1.10.1 hypergeom.
test.each([
  [1, 0.3333333333333333],
  [3, 0.02766798418972332],
  [5, 0.0013175230566534915],
  [6, 0.00020802995631370917],
  [7, 0.00002311443959041213],
  [11, 0.0000013596729170830664],
  [13, 0.0000013596729170830664],
])('a total of %i can reach %f at the least', (support, least) => {
  expect(relative(leastAttainable(support, 8, 24), least)).toBeLessThan(1e-12)
})

test('no table reaches less than the least attainable, and the fullest table of a small total reaches it', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 }), fc.nat(), fc.nat(), (n, m, x, r) => {
      const support = 1 + (x % (n + m))
      const minimumReporters = Math.max(0, support - m)
      const recent = minimumReporters + (r % (Math.min(support, n) - minimumReporters + 1))
      const table = { recent, recentAll: n, earlier: support - recent, earlierAll: m }
      const least = leastAttainable(support, n, n + m)
      expect(fisherGreater(table)).toBeGreaterThanOrEqual(least * (1 - 1e-9))
      expect(midPGreater(table)).toBeLessThan(fisherGreater(table))
      if (support <= n) {
        expect(relative(fisherGreater({ ...table, recent: support, earlier: 0 }), least)).toBeLessThan(1e-9)
      }
    }),
  )
})

test('in large tables too the tail is the exact one, counted in whole numbers', () => {
  const choose = (n: number, k: number): bigint => {
    let c = 1n
    for (let i = 1; i <= Math.min(k, n - k); i++) c = (c * BigInt(n - i + 1)) / BigInt(i)
    return c
  }
  /** A quotient of whole numbers as a double. */
  const quotient = (a: bigint, b: bigint): number => Number((a * 10n ** 60n) / b) / 1e60
  for (const [recent, recentAll, earlier, earlierAll] of [
    [40, 200, 60, 1800],
    [25, 200, 120, 1800],
    [3, 150, 200, 2500],
    [150, 150, 10, 2850],
    [0, 300, 90, 900],
  ] as const) {
    const support = recent + earlier
    let exact = 0n
    for (let k = recent; k <= Math.min(support, recentAll); k++)
      exact += choose(recentAll, k) * choose(earlierAll, support - k)
    const p = quotient(exact, choose(recentAll + earlierAll, support))
    const found = fisherGreater({ recent, recentAll, earlier, earlierAll })
    if (p > 1e-40) expect(relative(found, p)).toBeLessThan(1e-10)
    else expect(found).toBeLessThan(1e-40)
  }
})
