// Which patterns of a family may be shown, and with which numbers.
import type { FamilyId } from '../../engine/answers.ts'
import { type ByWeek, minimumReporters, showable } from '../fives.ts'
import { type Item, isRuleItem } from '../outcome.ts'
import type { PatternRow } from '../outcome-log.ts'
import { atOnce, type Slices } from '../slices.ts'
import { type Week, weekPlus } from '../week.ts'
import { type RisingPattern, searchInSlices } from './rising-patterns.ts'

/** Recent: the last eight weeks, in which a rise is to be found. Earlier: up to a year before them. Fixed, so they tell nothing. */
export const recentWeeks = 8
const earlierWeeks = 52

/** "At least so many times as common" goes no further. */
const mostGrowth = 20

/** Weeks whose rows are needed to look for patterns in `week`. */
export const patternWeeks = (week: Week): { from: Week; to: Week } => ({
  from: weekPlus(week, -(recentWeeks + earlierWeeks) + 1),
  to: week,
})

/** A pattern as it may be shown. Every number is rounded down to fives: "at least". */
export type ShownPattern = {
  readonly family: FamilyId
  /** The shortest set of items that picks it out, with every failed check that all those checks have in common. */
  readonly items: readonly Item[]
  readonly recent: number
  readonly recentOf: number
  readonly earlier: number
  readonly earlierOf: number
  /** "At least so many times as common as before", worked out from the shown numbers alone; null if they do not say so much. */
  readonly growth: number | null
}

/**
 * Finds a family's patterns to show: significant, more common than before, with at least one failed check, at least five distinct
 * recent reporters, and never two nested ones, whose counts differ by the checks that have one and not the other. `checks`: all of the
 * family, week by week; `failed`: those in which a rule fired.
 */
export const findPatterns = (...asked: Parameters<typeof findInSlices>): ShownPattern[] =>
  atOnce(findInSlices(...asked))

export function* findInSlices(
  family: FamilyId,
  checks: ByWeek,
  failed: readonly PatternRow[],
  week: Week,
  most = 3,
): Slices<ShownPattern[]> {
  const recentFrom = weekPlus(week, -recentWeeks + 1)
  const { from, to } = patternWeeks(week)
  const isRecent = (at: Week) => at >= recentFrom && at <= to
  const isEarlier = (at: Week) => at >= from && at < recentFrom
  const recent = failed.filter(row => isRecent(row.week))
  const earlier = failed.filter(row => isEarlier(row.week))
  const all = { recent: only(checks, isRecent), earlier: only(checks, isEarlier) }
  yield failed.length
  const { patterns } = yield* searchInSlices(
    [
      ...recent.map(({ items }) => ({ items, recent: true })),
      ...earlier.map(({ items }) => ({ items, recent: false })),
    ],
    {},
    {
      root: isRuleItem,
      recent: beside(all.recent, recent),
      earlier: beside(all.earlier, earlier),
      risenOnly: true,
    },
  )

  const shown: (RisingPattern<Item> & { readonly numbers: Numbers })[] = []
  for (const pattern of patterns) {
    if (shown.length === most) break
    if (pattern.recent < minimumReporters || shown.some(other => nested(pattern, other))) continue
    const numbers = {
      recent: showable(perWeek(recent, pattern.closure), week),
      recentOf: showable(all.recent, week),
      earlier: showable(perWeek(earlier, pattern.closure), week),
      earlierOf: showable(all.earlier, week),
    }
    if (numbers.recent >= minimumReporters) shown.push({ ...pattern, numbers })
    yield 10 * failed.length
  }
  return shown.map(pattern => ({
    family,
    items: shownItems(pattern),
    ...pattern.numbers,
    growth: growthShown(pattern.numbers, pattern.growth),
  }))
}

type Numbers = Pick<ShownPattern, 'recent' | 'recentOf' | 'earlier' | 'earlierOf'>

const only = (checks: ByWeek, when: (week: Week) => boolean): ByWeek =>
  new Map([...checks].filter(([week]) => when(week)))
/** Checks without a failed one. Rows that were damaged, or deleted meanwhile, may be in one of the two and not in the other. */
const beside = (checks: ByWeek, failed: readonly PatternRow[]): number =>
  Math.max(0, [...checks.values()].reduce((a, b) => a + b, 0) - failed.length)

/** No more checks and no fewer than the generator's: the others that failed in all of them belong to what a moderator is told. */
function shownItems(pattern: RisingPattern<Item>): readonly Item[] {
  const items = bestGenerator(pattern)
  const others = pattern.closure.filter(item => isRuleItem(item) && !items.includes(item))
  return [...others, ...items].sort((a, b) => Number(isRuleItem(b)) - Number(isRuleItem(a)))
}

/** Of the shortest generators the one with most failed checks, then the first by name. */
function bestGenerator({ generators }: RisingPattern<Item>): readonly Item[] {
  const rules = (items: readonly Item[]) => items.filter(isRuleItem).length
  const shortest = generators.filter(g => g.length === generators[0]!.length)
  return shortest.sort((a, b) => rules(b) - rules(a) || (a.join() < b.join() ? -1 : 1))[0]!
}

/**
 * The least growth the shown numbers leave possible, each being up to four less than the truth; whole numbers from 2 to 20, since hundreds
 * would only tell how many checks there are. Not said where
 * the truth is less, as it can be when few people count again every epoch.
 */
function growthShown(n: Numbers, truth: number | 'new') {
  const most = minimumReporters - 1
  const least = Math.floor(n.recent / (n.recentOf + most) / ((n.earlier + most) / n.earlierOf))
  return least >= 2 && (truth === 'new' || truth >= least) ? Math.min(least, mostGrowth) : null
}

const nested = (a: RisingPattern<Item>, b: RisingPattern<Item>): boolean =>
  a.closure.every(item => b.closure.includes(item)) || b.closure.every(item => a.closure.includes(item))

/** Rows with all the items, week by week. */
function perWeek(rows: readonly PatternRow[], having: readonly Item[]): Map<Week, number> {
  const weeks = new Map<Week, number>()
  for (const { week, items } of rows) {
    if (having.every(item => items.includes(item))) weeks.set(week, (weeks.get(week) ?? 0) + 1)
  }
  return weeks
}
