// Leaving out what hardly anybody answered costs the search for patterns nothing that it would have shown.
import { expect, test } from 'vitest'
import { demoOutcomes } from '../../src/trends/demo.ts'
import { minimumReporters } from '../../src/trends/fives.ts'
import { itemsOf, type Outcome } from '../../src/trends/outcome.ts'
import { findPatterns } from '../../src/trends/patterns/show-patterns.ts'
import { weeksUpTo } from '../../src/trends/week.ts'
import { demoCast } from './demo-cast.ts'

const last = '2026-W30'

/** Each week without the answers that fewer than five outcomes had given by its end. */
function coarse(outcomes: readonly Outcome[]): Outcome[] {
  const given = new Map<string, number>()
  return [...Map.groupBy(outcomes, one => one.week)]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([, week]) => {
      for (const { options } of week)
        for (const pair of Object.entries(options)) given.set(pair.join('='), (given.get(pair.join('=')) ?? 0) + 1)
      const common = (pair: [string, string]) => (given.get(pair.join('=')) ?? 0) >= minimumReporters
      return week.map(one => ({ ...one, options: Object.fromEntries(Object.entries(one.options).filter(common)) }))
    })
}

const patternsOf = (outcomes: readonly Outcome[], week: string) => {
  const some = outcomes.filter(one => one.family === 'brant-40' && one.week <= week)
  const checks = new Map([...Map.groupBy(some, one => one.week)].map(([at, of]) => [at, of.length]))
  const failed = some.filter(one => one.fired.length > 0).map(one => ({ week: one.week, items: itemsOf(one) }))
  return findPatterns('brant-40', checks, failed, week)
}

test.each([1, 2, 3, 4, 5, 6])(
  'seed %i: the planted pattern is shown in the same week and with the same numbers',
  seed => {
    const whole = demoOutcomes(seed, demoCast, last)
    const kept = coarse(whole)
    const gone = whole.filter((one, i) => JSON.stringify(one.options) !== JSON.stringify(kept[i]?.options)).length
    expect(gone).toBeGreaterThan(0)
    const weeks = weeksUpTo(last, 10)
    const shown = weeks.map(week => patternsOf(whole, week))
    expect(shown.flat().length).toBeGreaterThan(0)
    expect(weeks.map(week => patternsOf(kept, week))).toEqual(shown)
  },
)
