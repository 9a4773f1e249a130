// Rises of a week: growth of the server is none, a new fault is one, and nothing is said too early or of too few.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { WeekCount } from '../../../src/trends/counts.ts'
import { sortCounts } from '../../../src/trends/counts.ts'
import { type JudgedWeek, judgeWeek } from '../../../src/trends/rises/judge-week.ts'
import { dispersionOf, scatterOf } from '../../../src/trends/rises/scatter.ts'
import type { SeriesState } from '../../../src/trends/rises/series.ts'
import { type Week, weekPlus } from '../../../src/trends/week.ts'

const first = '2025-W40'

/** Counts of a family whose checks fail by one rule, and of all other checks. */
function countsOf(checks: readonly number[], failed: readonly number[], family = 'harrow-30'): WeekCount[] {
  return checks.flatMap((n, t) => {
    const week = weekPlus(first, t)
    const x = failed[t] ?? 0
    return [
      { week, family, facet: 'all', value: '', reporters: n },
      { week, family, facet: 'verdict', value: 'ruled-out', reporters: x },
      { week, family, facet: 'verdict', value: 'open', reporters: n - x },
      { week, family, facet: 'rule', value: 'four-legs', reporters: x },
    ].filter(c => c.reporters > 0) as WeekCount[]
  })
}

function judgeAll(rows: readonly WeekCount[], weeks: number): JudgedWeek[] {
  const counts = sortCounts(rows)
  let series: Readonly<Record<string, SeriesState>> = {}
  return Array.from({ length: weeks }, (_, t) => {
    const upTo: Week = weekPlus(first, t)
    const judged = judgeWeek(sortCounts(rows.filter(r => r.week <= upTo)), upTo, first, series)
    expect(judgeWeek(counts, upTo, first, series)).toEqual(judged)
    series = judged.series
    return judged
  })
}

test('a server that grows or shrinks, the same share failing: never a rise, whatever the growth', () => {
  const growth = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 14, maxLength: 70 })
  fc.assert(
    fc.property(growth, fc.integer({ min: 2, max: 10 }), (sizes, oneIn) => {
      const judged = judgeAll(
        countsOf(
          sizes.map(n => n * oneIn),
          sizes,
        ),
        sizes.length,
      )
      expect(judged.flatMap(j => j.rises)).toEqual([])
      // By construction: where the share stays what it was, each week's step goes down.
      expect(judged.every(j => Object.keys(j.series).length === 0)).toBe(true)
    }),
    { numRuns: 60 },
  )
})

test('a share that triples is a rise within four weeks, of the family and of the rule', () => {
  const checks = new Array<number>(40).fill(20)
  const failed = checks.map((_, t) => (t < 30 ? (t % 2 === 0 ? 1 : 3) : 6))
  const judged = judgeAll(countsOf(checks, failed), 40)
  expect(judged.slice(0, 30).flatMap(j => j.rises)).toEqual([])
  const rises = judged.slice(30, 34).flatMap(j => j.rises)
  expect(new Set(rises.map(r => r.rule))).toEqual(new Set([null, 'four-legs']))
  expect(rises.every(r => r.family === 'harrow-30' && r.standsOut)).toBe(true)
})

test('after a rise the watch starts again from nothing', () => {
  const checks = new Array<number>(40).fill(20)
  const judged = judgeAll(
    countsOf(
      checks,
      checks.map((_, t) => (t === 30 ? 12 : 1)),
    ),
    40,
  )
  expect(judged.map(j => j.rises.length)).toEqual(checks.map((_, t) => (t === 30 ? 2 : 0)))
  expect(judged[30]!.series).toEqual({})
})

test('nothing is judged before thirteen weeks of history', () => {
  const checks = new Array<number>(16).fill(20)
  const judged = judgeAll(countsOf(checks, checks), 16)
  expect(judged.map(j => j.judged)).toEqual(checks.map((_, t) => t >= 13))
  expect(judged.slice(0, 13).flatMap(j => [...j.rises, ...j.spikes])).toEqual([])
})

test('a rise waits for five people who are surely different', () => {
  // The statistic passes its threshold on contributions of two epochs, at most four in either: they could be four people.
  const weeks = 27
  const checks = new Array<number>(weeks).fill(200)
  const failed = checks.map((_, t) => (t === 25 || t === 26 ? 4 : 0))
  expect([weekPlus(first, 25), weekPlus(first, 26)]).toEqual(['2026-W13', '2026-W14'])
  const judged = judgeAll(countsOf(checks, failed), weeks)
  expect(judged[26]!.rises).toEqual([])
  expect(Object.values(judged[26]!.series).every(s => s.statistic >= 4)).toBe(true)
  const another = judgeAll(countsOf([...checks, 200], [...failed, 1]), weeks + 1)
  expect(another[27]!.rises.map(r => r.rule)).toEqual([null, 'four-legs'])
})

test('a spike needs five in that very week', () => {
  const checks = new Array<number>(40).fill(20)
  const rows = (last: number) =>
    countsOf(
      checks,
      checks.map((_, t) => (t === 39 ? last : 0)),
    )
  expect(judgeAll(rows(4), 40)[39]!.spikes).toEqual([])
  expect(judgeAll(rows(5), 40)[39]!.spikes.map(s => s.rule)).toEqual([null, 'four-legs'])
})

test('the order of the counts changes nothing', () => {
  const checks = new Array<number>(30).fill(20)
  const rows = countsOf(
    checks,
    checks.map((_, t) => (t < 26 ? 1 : 8)),
  )
  const judged = judgeAll(rows, 30)
  expect(judged.flatMap(j => j.rises).length).toBeGreaterThan(0)
  fc.assert(
    fc.property(fc.shuffledSubarray(rows, { minLength: rows.length }), other => {
      expect(judgeAll(other, 30)).toEqual(judged)
    }),
    { numRuns: 10 },
  )
})

// Deaths by horse kick in 200 corps-years (Bortkiewicz 1898, table as in Fisher 1925): the classic series that is Poisson.
const kicks = [109, 65, 22, 3, 1].flatMap((years, deaths) => new Array<number>(years).fill(deaths))
const baselineFrom = (failed: readonly number[]) => ({
  failed: failed.reduce((a, b) => a + b),
  checks: failed.length,
  weeks: failed.map(x => ({ failed: x, checks: 1 })),
})

test('scatter: horse kicks are Poisson, the same deaths in clusters are not', () => {
  const kicked = dispersionOf(baselineFrom(kicks))
  expect(kicked.freedom).toBe(199)
  expect(kicked.statistic).toBeCloseTo(199.3, 1)
  expect(kicked.p).toBeGreaterThan(0.4)
  expect(scatterOf(baselineFrom(kicks))).toEqual({ form: 'poisson' })
  const gaps = [...kicks.map(x => ({ failed: x, checks: 1 })), ...new Array(50).fill({ failed: 0, checks: 0 })]
  expect(dispersionOf({ ...baselineFrom(kicks), weeks: gaps })).toEqual(kicked)
  const clustered = [...kicks.slice(0, 174).fill(0), ...new Array<number>(26).fill(4)]
  expect(scatterOf(baselineFrom(clustered))).toEqual({ form: 'negative-binomial', spread: 0.3 })
})
