// Rises of a week: growth of the server is none, a new fault is one, and nothing is said too early or of too few.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { WeekCount } from '../../../src/trends/counts.ts'
import { sortCounts } from '../../../src/trends/counts.ts'
import { epochOf } from '../../../src/trends/epoch.ts'
import { baselineOf, expectedOf } from '../../../src/trends/rises/baseline.ts'
import { cusumStep } from '../../../src/trends/rises/cusum.ts'
import { type JudgedWeek, judgeWeek } from '../../../src/trends/rises/judge-week.ts'
import { dispersionOf, scatterOf } from '../../../src/trends/rises/scatter.ts'
import { type SeriesState, seriesKey, watchedSeries } from '../../../src/trends/rises/series.ts'
import { spikeBound } from '../../../src/trends/rises/spike.ts'
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

test('the watch of a series is its CUSUM week by week, on what was usual then, since it left zero', () => {
  const numbers = fc.array(fc.tuple(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 6, max: 40 })), {
    ...{ minLength: 20, maxLength: 75 },
  })
  fc.assert(
    fc.property(numbers, list => {
      const failed = list.map(([x]) => x)
      const checks = list.map(([, n]) => n)
      const judged = judgeAll(countsOf(checks, failed), list.length)
      let statistic = 0
      let since = 0
      for (const [t, one] of judged.entries()) {
        if (t < 13) {
          expect(one).toEqual({ judged: false, rises: [], spikes: [], series: {} })
          continue
        }
        const baseline = baselineOf(failed, checks, t)
        if (statistic === 0) since = t
        statistic = cusumStep(statistic, failed[t]!, expectedOf(baseline, checks[t]!) ?? 0, 2, scatterOf(baseline))
        const inEpoch = new Map<string, number>()
        for (let i = since; i <= t; i++)
          inEpoch.set(epochOf(weekPlus(first, i)), (inEpoch.get(epochOf(weekPlus(first, i))) ?? 0) + failed[i]!)
        const alarm = statistic >= 4 && Math.max(...inEpoch.values()) >= 5
        expect(one.rises.map(rise => rise.rule)).toEqual(alarm ? [null, 'four-legs'] : [])
        expect(one.rises.every(rise => rise.week === weekPlus(first, t))).toBe(true)
        if (alarm) statistic = 0
        const state = statistic === 0 ? {} : { statistic, since: weekPlus(first, since) }
        expect(one.series['harrow-30/'] ?? {}).toEqual(state)
        expect(one.series['harrow-30/four-legs'] ?? {}).toEqual(state)
        const foreseen = baselineOf(failed, checks, t, 3, 26)
        const bound = spikeBound({
          size: foreseen.failed + 0.5,
          probability: foreseen.checks / (foreseen.checks + checks[t]!),
        })
        expect(one.spikes.map(spike => spike.rule)).toEqual(
          failed[t]! >= 5 && failed[t]! > bound ? [null, 'four-legs'] : [],
        )
      }
    }),
    { numRuns: 40 },
  )
})

test('a year of history is enough for what is judged by a year, and how much there must be can be said', () => {
  const checks = new Array<number>(80).fill(20)
  const counts = sortCounts(
    countsOf(
      checks,
      checks.map((_, t) => (t < 20 ? 9 : t === 79 ? 12 : 1)),
    ),
  )
  const week = weekPlus(first, 79)
  const judged = judgeWeek(counts, week, first, {})
  expect(judged.rises).toHaveLength(2)
  // What lies before the baseline is not looked at: judged from a later beginning it is the same.
  expect(judgeWeek(counts, week, weekPlus(first, 24), {})).toEqual(judged)
  expect(judgeWeek(counts, week, weekPlus(first, 70), {}).judged).toBe(false)
  expect(judgeWeek(counts, week, weekPlus(first, 70), {}, 9).judged).toBe(true)
  expect(judgeWeek(counts, week, weekPlus(first, 70), {}, 10).judged).toBe(false)
})

test('a rise that one family would show for sure is one of many where many are watched; families and rules are counted apart', () => {
  const checks = new Array<number>(40).fill(20)
  const one = countsOf(
    checks,
    checks.map((_, t) => (t < 36 ? t % 2 : t === 39 ? 5 : 1)),
  )
  const before = { statistic: 3, since: weekPlus(first, 38) }
  const standing = (rows: readonly WeekCount[]) => {
    const watch = { 'harrow-30/': before, 'harrow-30/four-legs': before }
    const judged = judgeWeek(sortCounts(rows), weekPlus(first, 39), first, watch)
    const of = (found: JudgedWeek['rises']) =>
      Object.fromEntries(
        found.filter(rise => rise.family === 'harrow-30').map(rise => [rise.rule ?? 'all', rise.standsOut]),
      )
    return [of(judged.rises), of(judged.spikes)]
  }
  const alone = { all: true, 'four-legs': true }
  expect(standing(one)).toEqual([alone, alone])
  const quiet = Array.from({ length: 200 }, (_, i) =>
    countsOf(
      checks,
      checks.map((_, t) => (t + i) % 2),
      `quiet-${i}`,
    ),
  ).flat()
  const lost = { all: false, 'four-legs': false }
  expect(standing([...one, ...quiet])).toEqual([lost, lost])
  // Other families with no rule of their own leave the rule as sure as it was.
  const whole = quiet.filter(row => row.facet !== 'rule')
  expect(standing([...one, ...whole])).toEqual([
    { all: false, 'four-legs': true },
    { all: false, 'four-legs': true },
  ])
})

test('series are watched in a fixed order, each that ever failed: a family whole, then by its failed checks', () => {
  const rows: WeekCount[] = [
    ...countsOf([20, 20], [3, 2], 'rook'),
    ...countsOf([20, 20], [0, 1], 'heron'),
    ...countsOf([20, 20], [0, 0], 'gull'),
    { week: first, family: 'rook', facet: 'rule', value: 'code', reporters: 2 },
    { week: first, family: 'rook', facet: 'verdict', value: 'danger', reporters: 4 },
    { week: first, family: 'rook', facet: 'bought', value: 'market', reporters: 4 },
  ]
  const watched = watchedSeries(sortCounts(rows))
  expect(watched.map(seriesKey)).toEqual(['heron/', 'heron/four-legs', 'rook/', 'rook/code', 'rook/four-legs'])
  expect(watched[2]?.failed).toEqual(
    new Map([
      [first, 7],
      [weekPlus(first, 1), 2],
    ]),
  )
  expect(watched[3]).toMatchObject({ family: 'rook', rule: 'code' })
})
