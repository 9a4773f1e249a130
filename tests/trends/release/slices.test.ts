// A release of very many outcomes is made in slices: between two of them others are served, and it comes out the same.
import { expect, test } from 'vitest'
import { closeWeeks } from '../../../src/jobs/close-weeks.ts'
import type { WeekCount } from '../../../src/trends/counts.ts'
import type { Item } from '../../../src/trends/outcome.ts'
import type { PatternRow, ReleaseLog } from '../../../src/trends/outcome-log.ts'
import { patternWeeks } from '../../../src/trends/patterns/show-patterns.ts'
import { type ClosedWeek, closeInSlices, closeWeek, type WeekToClose } from '../../../src/trends/release/close-week.ts'
import { freezeInSlices, freezeWeek } from '../../../src/trends/release/freeze-week.ts'
import { mostAtATime, type Slices } from '../../../src/trends/slices.ts'
import { weekPlus, weekStart, weeksUpTo } from '../../../src/trends/week.ts'
import { openMemoryOutcomes } from '../memory-log.ts'

const week = '2026-W40'
const first = weekPlus(week, -59)
const weeks = weeksUpTo(week, 60)

/** The work of each slice, and what came of all of them. */
function sliced<T>(slices: Slices<T>): { readonly work: readonly number[]; readonly made: T } {
  const work: number[] = []
  for (;;) {
    const next = slices.next()
    if (next.done) return { work, made: next.value }
    work.push(next.value)
  }
}

/** Forty families with forty failed checks each, every week. */
const counts: WeekCount[] = weeks.flatMap((at, w) =>
  Array.from({ length: 40 }, (_, f): WeekCount[] => {
    const [family, all] = [`family-${f}`, 60 + ((f * 7 + w) % 11)]
    const cells = Array.from({ length: 40 }, (_, r): WeekCount => {
      const risen = w > 55 && f < 3 && r === 0
      return { week: at, family, facet: 'rule', value: `rule-${r}`, reporters: risen ? 50 : 1 + ((r + w) % 5) }
    })
    return [{ week: at, family, facet: 'all', value: '', reporters: all }, ...cells]
  }).flat(),
)
const closing: WeekToClose = { scope: 'server', week, state: null, first, counts }

/** Thirty thousand checks that failed something, with a dozen items each; what is read of them is counted. */
let read = 0
const failed: PatternRow[] = Array.from({ length: 30_000 }, (_, n) => {
  const items = Array.from({ length: 12 }, (_, i): Item => {
    const kind = ((n * 31 + i * 17) % 97) % 4
    return i < 4 ? `rule:rule-${i * 4 + kind}` : `answer:question-${i}=option-${kind}`
  })
  return {
    week: weeks[n % 60] as string,
    get items() {
      read++
      return items
    },
  }
})

test('closing a week', () => {
  const { work, made } = sliced(closeInSlices(closing))
  expect(made).toEqual(closeWeek(closing))
  expect(made.ok && made.patternsOf.size).toBeGreaterThan(0)
  expect(Math.max(...work)).toBeLessThanOrEqual(2 * mostAtATime)
  // Sorting a hundred thousand counts, and judging sixteen hundred series, is several slices each.
  expect(work.length).toBeGreaterThan(10)
})

test('freezing it, with the patterns in each family', () => {
  const closed = closeWeek(closing) as ClosedWeek & { ok: true }
  const rows = new Map([...closed.patternsOf.keys()].map(family => [family, failed]))
  read = 0
  const slices = freezeInSlices(closed, rows)
  let [most, before, pauses] = [0, 0, 0]
  for (;;) {
    const next = slices.next()
    most = Math.max(most, read - before)
    before = read
    if (next.done) {
      expect(next.value).toEqual(freezeWeek(closed, rows))
      break
    }
    expect(next.value).toBeLessThanOrEqual(2 * mostAtATime)
    pauses++
  }
  // No more than once over all rows for each pattern that is shown, and one more for each item.
  expect(most).toBeLessThanOrEqual(13 * failed.length)
  expect(pauses).toBeGreaterThan(10 * closed.patternsOf.size)
})

test('the job lets others go between the slices', async () => {
  let turns = 0
  let going = true
  const count = () => {
    turns++
    if (going) setImmediate(count)
  }
  const frozen: string[] = []
  const releases: ReleaseLog = {
    latest: async () => ({ week: weekPlus(week, -1), state: { first, families: {}, series: {}, rises: [] } }),
    freeze: async (_, at) => {
      frozen.push(at)
      return 'frozen'
    },
    bytes: async () => null,
    unread: async () => [],
    markRead: async () => undefined,
    weeks: async () => [],
  }
  const outcomes = { ...openMemoryOutcomes(), weekCounts: async () => counts, failedChecks: async () => failed }
  setImmediate(count)
  await closeWeeks({ outcomes, releases }, { kind: 'server', server: 'here' }, weekStart(weekPlus(week, 1)) + 4e6)
  going = false
  expect(frozen).toEqual([week])
  const closed = closeWeek({ ...closing, state: null }) as ClosedWeek & { ok: true }
  const { work } = sliced(freezeInSlices(closed, new Map([...closed.patternsOf.keys()].map(one => [one, failed]))))
  expect(turns).toBeGreaterThanOrEqual(work.length)
  expect(patternWeeks(week).to).toBe(week)
})
