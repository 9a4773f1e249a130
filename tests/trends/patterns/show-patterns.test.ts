// Patterns as shown: the planted pair by its shortest set, in fives, never two nested sets.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Item, isRuleItem } from '../../../src/trends/outcome.ts'
import type { PatternRow } from '../../../src/trends/outcome-log.ts'
import { findPatterns as findIn, patternWeeks, recentWeeks } from '../../../src/trends/patterns/show-patterns.ts'
import { weekPlus } from '../../../src/trends/week.ts'
import { letterChecks } from './letter-checks.ts'

const now = '2026-W24'
/** With all the checks at hand: they are counted, and those that failed something are searched. */
function findPatterns(family: string, table: readonly PatternRow[], week: string, most?: number) {
  const checks = new Map<string, number>()
  for (const row of table) checks.set(row.week, (checks.get(row.week) ?? 0) + 1)
  return findIn(
    family,
    checks,
    table.filter(row => row.items.some(isRuleItem)),
    week,
    most,
  )
}
const rows = (count: number, weeksBack: number, items: readonly Item[]): PatternRow[] =>
  Array.from({ length: count }, () => ({ week: weekPlus(now, -weeksBack), items }))

test('box code together with four legs: nine of eleven recent checks, one of sixty-four before', () => {
  const table = [
    ...rows(9, 1, ['rule:box-code', 'rule:four-legs']),
    ...rows(1, 2, ['rule:box-code']),
    ...rows(1, 2, []),
    ...rows(1, 20, ['rule:box-code', 'rule:four-legs']),
    ...rows(8, 20, ['rule:box-code']),
    ...rows(8, 20, ['rule:four-legs']),
    ...rows(47, 20, []),
  ]
  // Eleven are "at least ten", nine "at least five", one is withheld; least growth so shown: 5/14 against 4/60. Four legs alone are
  // significant too, by the same nine recent checks: nothing new. The box code alone has one recent check more than the pair:
  // shown, it would tell of one person.
  expect(findPatterns('harrow-30', table, now)).toEqual([
    {
      family: 'harrow-30',
      items: ['rule:box-code', 'rule:four-legs'],
      recent: 5,
      recentOf: 10,
      earlier: 0,
      earlierOf: 60,
      growth: 5,
    },
  ])
})

test('three faults of which one never came alone are told of together, with the numbers of that one; where a cell was bought is not', () => {
  const all: Item[] = ['rule:vent', 'rule:legs', 'rule:box-code', 'bought:market']
  const table = [
    ...rows(9, 1, all),
    ...rows(20, 1, []),
    ...rows(4, 20, ['rule:legs', 'bought:market']),
    ...rows(4, 20, ['rule:box-code', 'bought:market']),
    ...rows(80, 20, []),
  ]
  const [first] = findPatterns('harrow-30', table, now)
  expect(first?.items).toEqual(['rule:box-code', 'rule:legs', 'rule:vent'])
  expect(first).toMatchObject({ recent: 5, earlier: 0 })
})

test('the self-made example: W with seven checks and A with W with six are not both shown', () => {
  const table = letterChecks.flatMap((row, i) =>
    rows(
      1,
      i < 8 ? 1 : 20,
      [...row].map((l): Item => `rule:${l.toLowerCase()}`),
    ),
  )
  const shown = findPatterns('harrow-30', table, now, 10).map(p => p.items.join())
  expect(shown).toContain('rule:a,rule:w')
  expect(shown).not.toContain('rule:w')
})

test('five contributions of two epochs are not five people', () => {
  const pair: Item[] = ['rule:box-code', 'rule:four-legs']
  // Eight recent weeks that reach over the end of March: three before it, four after.
  const over = '2026-W16'
  const at = (week: string, count: number, items: readonly Item[]) =>
    Array.from({ length: count }, () => ({ week, items }))
  const table = (after: number) => [
    ...at('2026-W12', 3, pair),
    ...at('2026-W15', after, pair),
    ...at('2025-W30', 60, []),
  ]
  expect(findPatterns('harrow-30', table(4), over)).toEqual([])
  expect(findPatterns('harrow-30', table(5), over)).toHaveLength(1)
})

test('failed checks are named before where a cell was bought', () => {
  const both: Item[] = ['bought:market', 'rule:legs']
  const [found] = findPatterns(
    'harrow-30',
    [
      ...rows(20, 1, both),
      ...rows(20, 1, ['bought:market']),
      ...rows(40, 20, ['rule:legs']),
      ...rows(40, 20, ['bought:market']),
    ],
    now,
  )
  expect(found?.items).toEqual(['rule:legs', 'bought:market'])
})

test('growth is not claimed where few people, counted again every epoch, made the earlier number look like none', () => {
  const four: Item[] = ['rule:four-legs']
  // Four contributions in each of four epochs: never five people for sure, so withheld; but sixteen all the same.
  const again = [16, 29, 42, 50].flatMap(back => rows(4, back, four))
  const table = [...rows(30, 1, four), ...rows(10, 1, []), ...rows(80, 20, []), ...again]
  const [pattern] = findPatterns('harrow-30', table, now)
  expect(pattern).toMatchObject({ recent: 30, recentOf: 40, earlier: 0, growth: null })
  const [fresh] = findPatterns('harrow-30', table.slice(0, -again.length), now)
  expect(fresh).toMatchObject({ recent: 30, recentOf: 40, earlier: 0, growth: 13 })
})

test('counts that are fewer than the rows beside them, as where some are damaged, stop nothing', () => {
  const failed = [...rows(9, 1, ['rule:four-legs']), ...rows(9, 20, ['rule:worn'])]
  const checks = new Map([[weekPlus(now, -1), 7]])
  for (const one of findIn('harrow-30', checks, failed, now)) expect(one.recentOf).toBe(5)
})

test('answers alone, and what became rarer, are no pattern', () => {
  const answers = [...rows(12, 1, ['answer:wrap=blue']), ...rows(60, 20, ['answer:wrap=green'])]
  expect(findPatterns('harrow-30', answers, now)).toEqual([])
  const rarer = [...rows(12, 1, []), ...rows(60, 20, ['rule:four-legs'])]
  expect(findPatterns('harrow-30', rarer, now)).toEqual([])
})

test('rows outside the weeks asked for change nothing', () => {
  const table = [...rows(9, 1, ['rule:four-legs']), ...rows(60, 20, [])]
  const { from } = patternWeeks(now)
  const stray = [{ week: weekPlus(from, -1), items: ['rule:four-legs'] as Item[] }, ...rows(5, -1, ['rule:four-legs'])]
  expect(findPatterns('harrow-30', [...stray, ...table], now)).toEqual(findPatterns('harrow-30', table, now))
  expect(weekPlus(from, 60)).toBe(weekPlus(now, 1))
})

test('a check is recent or of before, and never both: each from its first week to its last', () => {
  const four: Item[] = ['rule:four-legs']
  const { from, to } = patternWeeks(now)
  const at = (count: number, week: string, items: readonly Item[]) =>
    rows(count, 0, items).map(one => ({ ...one, week }))
  const [found] = findPatterns('harrow-30', [...rows(30, 1, four), ...rows(60, 20, [])], now)
  expect(found).toMatchObject({ recent: 30, recentOf: 30, earlier: 0, earlierOf: 60 })
  const recentFrom = weekPlus(now, -recentWeeks + 1)
  // The first and the last week of what is recent, and the first and the last of what was before.
  const edges = [...at(15, recentFrom, four), ...at(15, to, four), ...at(30, from, [])]
  const [edged] = findPatterns('harrow-30', [...edges, ...at(30, weekPlus(recentFrom, -1), [])], now)
  expect(edged).toMatchObject({ recent: 30, recentOf: 30, earlier: 0, earlierOf: 60 })
  const [failedBefore] = findPatterns(
    'harrow-30',
    [...edges, ...at(30, weekPlus(recentFrom, -1), []), ...at(5, from, four)],
    now,
  )
  expect(failedBefore).toMatchObject({ recent: 30, recentOf: 30, earlier: 5, earlierOf: 65 })
})

const someRows = fc.array(
  fc.record({
    back: fc.integer({ min: 0, max: 40 }),
    times: fc.integer({ min: 1, max: 9 }),
    items: fc.subarray<Item>(['rule:a', 'rule:b', 'rule:c', 'answer:legs=four', 'bought:market']),
  }),
  { minLength: 1, maxLength: 20 },
)

test('all numbers are fives, no shown set holds another, and the order of rows changes nothing', () => {
  let shown = 0
  fc.assert(
    fc.property(someRows, list => {
      const table = list.flatMap(({ back, times, items }) => rows(times, back, items))
      const patterns = findPatterns('harrow-30', table, now)
      shown += patterns.length
      expect(findPatterns('harrow-30', [...table].reverse(), now)).toEqual(patterns)
      const recent = table.filter(row => row.week > weekPlus(now, -recentWeeks))
      const truth = patterns.map(p => recent.filter(row => p.items.every(i => row.items.includes(i))).length)
      for (const [i, a] of patterns.entries()) {
        for (const n of [a.recent, a.recentOf, a.earlier, a.earlierOf]) expect(n % 5).toBe(0)
        expect(a.recent).toBeGreaterThanOrEqual(5)
        expect(truth[i]).toBeGreaterThanOrEqual(a.recent)
        for (const [j, b] of patterns.entries()) {
          expect(i !== j && a.items.every(item => b.items.includes(item))).toBe(false)
        }
      }
    }),
    { numRuns: 300 },
  )
  expect(shown).toBeGreaterThan(20)
})

test('checks in which nothing failed count as such, whether or not their rows are at hand', () => {
  fc.assert(
    fc.property(someRows, list => {
      const table = list.flatMap(({ back, times, items }) => rows(times, back, items))
      const checks = new Map<string, number>()
      for (const row of table) checks.set(row.week, (checks.get(row.week) ?? 0) + 1)
      const failed = table.filter(row => row.items.some(isRuleItem))
      // The same checks as rows of their own, with nothing that could be a pattern.
      const withRows = [
        ...failed,
        ...table.filter(row => !row.items.some(isRuleItem)).map(row => ({ ...row, items: [] })),
      ]
      expect(findIn('harrow-30', checks, withRows, now)).toEqual(findIn('harrow-30', checks, failed, now))
    }),
  )
})

test('where all that fails has always failed so, more checks without it make it no pattern', () => {
  const failed = [...rows(10, 1, ['rule:four-legs']), ...rows(6, 20, ['rule:four-legs'])]
  const shownOf = (recent: number, earlier: number) =>
    findIn(
      'harrow-30',
      new Map([
        [weekPlus(now, -1), recent],
        [weekPlus(now, -20), earlier],
      ]),
      failed,
      now,
    )
  expect(shownOf(12, 60)).toHaveLength(1)
  expect(shownOf(80, 60)).toEqual([])
  expect(shownOf(12, 6)).toEqual([])
})

test('as many are shown as are asked for, three if nothing is said, surest first', () => {
  const each = ['a', 'b', 'c', 'd', 'e'].flatMap((rule, i) => rows(20 - i, 1, [`rule:${rule}`]))
  const table = [...each, ...rows(100, 20, [])]
  const names = (most?: number) => findPatterns('harrow-30', table, now, most).map(one => one.items.join())
  expect(names()).toEqual(['rule:a', 'rule:b', 'rule:c'])
  expect(names(5)).toEqual(['rule:a', 'rule:b', 'rule:c', 'rule:d', 'rule:e'])
  expect(names(1)).toEqual(['rule:a'])
})

test.each([
  // recent of recentOf, earlier of earlierOf; the least they leave possible: (recent/(recentOf+4)) / ((earlier+4)/earlierOf).
  [10, 26, 20, 120, null],
  [15, 26, 20, 120, 2],
  [20, 26, 0, 120, 20],
  [20, 21, 10, 300, 17],
  [25, 25, 0, 1000, 20],
])('%i of %i now and %i of %i before: at least %s times as common', (recent, recentOf, earlier, earlierOf, growth) => {
  const table = [
    ...rows(recent, 1, ['rule:four-legs']),
    ...rows(recentOf - recent, 1, []),
    ...rows(earlier, 20, ['rule:four-legs']),
    ...rows(earlierOf - earlier, 20, []),
  ]
  expect(findPatterns('harrow-30', table, now)).toMatchObject([{ recent, earlier, growth }])
})

test('of sets as short that pick out the same checks, the one with most failed checks is told of', () => {
  const all: Item[] = ['bought:market', 'rule:a', 'rule:b']
  // No two of them came together without the third, but the two that are no failed check together; each came alone.
  const table = [
    ...rows(15, 1, all),
    ...rows(5, 1, ['rule:a']),
    ...rows(5, 1, ['rule:b', 'bought:market']),
    ...rows(40, 20, ['rule:a']),
    ...rows(40, 20, ['rule:b']),
    ...rows(80, 20, ['rule:b', 'bought:market']),
  ]
  expect(findPatterns('harrow-30', table, now)[0]?.items).toEqual(['rule:a', 'rule:b'])
})
