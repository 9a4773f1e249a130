// Rising patterns against figures by SciPy, and Tarone's correction against the sample of LAMP's authors where it is at hand.
import { existsSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type Among,
  type MiningOptions,
  minePatterns,
  type Row,
  searchPatterns,
} from '../../../src/trends/patterns/rising-patterns.ts'
import { taroneFactor } from '../../../src/trends/patterns/tarone.ts'
import { letterChecks } from './letter-checks.ts'

// Made for this: 24 checks, the first 8 recent, each letter an item. Closed patterns, generators, p (SciPy 1.10.1 hypergeom.sf),
// growth and Tarone's k computed apart from this code.
const patterns = [
  ['AW', 'AW', 6, 0, 0.00020802995631370922, 'new'],
  ['W', 'W', 6, 1, 0.0013175230566534913, 12],
  ['ARW', 'AR RW', 5, 0, 0.0013175230566534915, 'new'],
  ['R', 'R', 5, 1, 0.006864988558352402, 10],
  ['A', 'A', 6, 7, 0.1557410149414457, 1.7142857142857142],
  ['ACRW', 'CR CW', 1, 0, 0.3333333333333333, 'new'],
  ['C', 'C', 2, 4, 0.6808820470147701, 1],
  ['AC', 'AC', 1, 2, 0.7233201581027668, 1],
  ['BC', 'BC', 1, 2, 0.7233201581027668, 1],
  ['B', 'B', 2, 9, 0.9725849149728542, 0.4444444444444444],
  ['BW', 'BW', 0, 1, 1, 0],
  ['BR', 'BR', 0, 1, 1, 0],
] as const
const letters = (items: readonly string[]) => [...items].sort().join('')
const twentyFour: Row[] = letterChecks.map((items, i) => ({ items: [...items], recent: i < 8 }))

test('the twelve closed patterns of twenty-four checks', () => {
  const mined = minePatterns(twentyFour, { leastSupport: 1 })
  const found = new Map(mined.patterns.map(p => [letters(p.closure), p]))
  expect(found.size).toBe(patterns.length)
  for (const [closure, generators, recent, earlier, p, growth] of patterns) {
    const pattern = found.get(closure)!
    expect([closure, pattern.generators.map(letters).sort().join(' ')]).toEqual([closure, generators])
    expect([pattern.recent, pattern.earlier]).toEqual([recent, earlier])
    expect(Math.abs(pattern.p / p - 1)).toBeLessThan(1e-12)
    if (typeof growth === 'number') expect(pattern.growth).toBeCloseTo(growth, 12)
    else expect(pattern.growth).toBe(growth)
  }
})

test.each([0.05, 0.1])("at %f Tarone's k is 7 and four patterns are significant", level => {
  const mined = minePatterns(twentyFour, { leastSupport: 1, level })
  expect([mined.factor, mined.testable]).toEqual([7, 7])
  expect(
    mined.patterns
      .filter(p => p.significant)
      .map(p => letters(p.closure))
      .sort(),
  ).toEqual(['ARW', 'AW', 'R', 'W'])
})

// Terada et al. 2013's sample ships with their program and stays outside this repository.
const lamp = new URL('../../../../shared/reference/lamp_tarone.json', import.meta.url)
const lampTest = existsSync(lamp) ? test : test.skip
if (!existsSync(lamp)) console.warn("skipped: LAMP's sample, since ../shared/reference/lamp_tarone.json is not there")
lampTest("LAMP's authors' sample: k = 5, one significant combination at 0.05", () => {
  type Sample = {
    items: string[]
    rows: { items: number[]; positive: number }[]
    f_min_attainable: Record<string, number>
  }
  const sample = JSON.parse(readFileSync(lamp, 'utf8')) as Sample
  const rows = sample.rows.map(row => ({
    items: sample.items.filter((_, i) => row.items[i] === 1),
    recent: row.positive === 1,
  }))
  const mined = minePatterns(rows, { leastSupport: 1 })
  expect(mined.factor).toBe(5)
  const significant = mined.patterns.filter(p => p.significant)
  expect(significant.map(p => p.closure)).toEqual([['TF1', 'TF2', 'TF3']])
  expect(significant[0]!.p).toBeCloseTo(0.00699300699301, 12)
  const half = minePatterns(rows, { leastSupport: 1, level: 0.5 })
  expect(half.factor).toBe(5)
  expect(half.patterns.filter(p => p.significant).map(p => p.closure.join())).toEqual(['TF1,TF2,TF3', 'TF2', 'TF3'])
})

test('k is the least number that pays for all that could reach level/k', () => {
  const chances = fc.array(fc.double({ min: 1e-6, max: 1, noNaN: true }), { maxLength: 60 })
  fc.assert(
    fc.property(chances, least => {
      const k = taroneFactor(least, 0.05)
      const could = (factor: number) => least.filter(f => f <= 0.05 / factor).length
      expect(could(k)).toBeLessThanOrEqual(k)
      for (let smaller = 1; smaller < k; smaller++) expect(could(smaller)).toBeGreaterThan(smaller)
    }),
  )
})

test('the order of the rows changes nothing', () => {
  const row = fc.record({ items: fc.uniqueArray(fc.constantFrom('a', 'b', 'c', 'd', 'e')), recent: fc.boolean() })
  const shuffled = fc
    .array(row, { minLength: 1, maxLength: 60 })
    .chain(list => fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })))
  fc.assert(
    fc.property(shuffled, ([list, other]) => {
      expect(minePatterns(other, { leastSupport: 1 })).toEqual(minePatterns(list, { leastSupport: 1 }))
    }),
  )
})

const rowsOf = fc.array(
  fc.record({
    items: fc.uniqueArray(fc.constantFrom('r1', 'r2', 'a', 'b', 'c'), { maxLength: 4 }),
    recent: fc.boolean(),
  }),
  { minLength: 4, maxLength: 40 },
)
const isRoot = (item: string) => item.startsWith('r')
const search = (rows: readonly Row[], among: Among<string>, options: MiningOptions = { leastSupport: 1 }) => {
  const { patterns, ...counts } = searchPatterns(rows, options, among)
  return { ...counts, patterns: [...patterns] }
}

test('rows that are counted beside those listed are as rows of nothing that is looked for', () => {
  const nothing = (count: number, recent: boolean): Row[] =>
    Array.from({ length: count }, () => ({ items: [], recent }))
  fc.assert(
    fc.property(rowsOf, fc.nat({ max: 9 }), fc.nat({ max: 9 }), (rows, recent, earlier) => {
      const all = [...rows, ...nothing(recent, true), ...nothing(earlier, false)]
      expect(search(rows, { recent, earlier })).toEqual(search(all, {}))
    }),
  )
})

test('where only sets with a root are searched, each has one, and it counts what it counts among all', () => {
  fc.assert(
    fc.property(rowsOf, rows => {
      const all = new Map(search(rows, {}).patterns.map(one => [one.closure.toSorted().join(), one]))
      const found = search(rows, { root: isRoot }).patterns
      for (const one of found) {
        expect(one.generators.every(items => items.some(isRoot))).toBe(true)
        expect(all.get(one.closure.toSorted().join())).toMatchObject({
          recent: one.recent,
          earlier: one.earlier,
          p: one.p,
        })
      }
      // None is left out that holds a root and is of three at most.
      const closures = found.map(one => one.closure.toSorted().join())
      for (const one of all.values())
        if (one.generators.some(items => items.some(isRoot))) expect(closures).toContain(one.closure.toSorted().join())
    }),
  )
})

test('where only what has risen is asked for, it is what is significant and more common than before, surest first', () => {
  fc.assert(
    fc.property(rowsOf, rows => {
      const options = { leastSupport: 1, level: 0.5 }
      const all = search(rows, {}, options).patterns
      const risen = search(rows, { risenOnly: true }, options).patterns
      expect(risen).toEqual(all.filter(one => one.significant && (one.growth === 'new' || one.growth > 1)))
      expect(all.map(one => one.midP)).toEqual(all.map(one => one.midP).toSorted((a, b) => a - b))
    }),
  )
})

test('by itself it looks for sets of three that five have, at a level of 5 %', () => {
  const rows = twentyFour.flatMap(row => [row, row])
  expect(minePatterns(rows)).toEqual(minePatterns(rows, { largest: 3, leastSupport: 5, level: 0.05 }))
  expect(minePatterns(rows).patterns.every(one => one.recent + one.earlier >= 5)).toBe(true)
  expect(minePatterns(rows, { largest: 1 }).patterns.every(one => one.generators.every(g => g.length === 1))).toBe(true)
})
