// The past of a finding as a moderator may see it: what the frozen releases have shown of it week by week, and what would be too much.
//
// Everything here is worked out from releases alone, so that it says nothing they do not say.
import type { FamilyId, RuleId } from '../../engine/answers.ts'
import { isFailing } from '../../ground/verdicts.ts'
import type { Release } from '../release/release.ts'
import { baselineGap, baselineWeeks } from '../rises/baseline.ts'
import type { Rise } from '../rises/judge-week.ts'
import { foresee, spikeBound } from '../rises/spike.ts'
import type { Week } from '../week.ts'
import type { Finding, Found } from './finding.ts'
import { firstWeek, rulesOf } from './parts.ts'

/** A week and its release; undefined where there is none that can be read. */
export type ReleasedWeek = { readonly week: Week; readonly release: Release | undefined }

/** What is looked at: a failed check of a family, or (null) all of its failed checks. */
export type Thing = { readonly family: FamilyId; readonly rule: RuleId | null }

export type PastWeek = {
  readonly week: Week
  /** Failures newly shown in the four weeks up to this one; undefined without a release. */
  readonly failed: number | undefined
  /** The most that the weeks before let one foresee; undefined while they are too few. */
  readonly bound: number | undefined
  readonly noticed: boolean
}

/** The failed check that most of a finding's parts name; null where none does. */
export function thingOf({ family, parts }: Pick<Finding, 'family' | 'parts'>): Thing {
  const counts = new Map<RuleId, number>()
  for (const rule of parts.flatMap(rulesOf)) counts.set(rule, (counts.get(rule) ?? 0) + 1)
  const [first] = [...counts].sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1))
  return { family, rule: first?.[0] ?? null }
}

/** The first week in which something of it was found. */
export const foundFirst = ({ week, parts }: Pick<Finding, 'week' | 'parts'>): Week => firstWeek(parts, week)

/**
 * The last `most` of `weeks` (oldest first, with as many before them as there are). A rise is made of four weeks, so four are added up:
 * counts that go up in fives say little of one. Marked are the weeks that are named beside it, the first and the last, and each between
 * them in which something of it was noticed to rise: what rises later belongs to another finding.
 */
export function pastOf(
  weeks: readonly ReleasedWeek[],
  thing: Thing,
  { family, parts, week, seen }: Pick<Finding, 'family' | 'parts' | 'week' | 'seen'>,
  most: number,
): PastWeek[] {
  const failed = weeks.map(({ release }) => (release ? newlyFailed(release, thing) : 0))
  const checks = weeks.map(({ release }) => release?.more ?? 0)
  const first = foundFirst({ week, parts })
  const named = new Set(parts.flatMap(rulesOf))
  const rules = named.size === 0 || parts.some(isWhole) ? new Set([null, ...named]) : named
  const between = weeks.filter(one => one.week > first && one.week < seen)
  const noticed = new Set([
    first,
    seen,
    ...between.flatMap(({ release }) => (release && rose(release, family, rules)) ?? []),
  ])
  return weeks
    .map(({ week, release }, t) => ({
      week,
      failed: release && sum(failed, t - baselineGap + 1, t),
      bound: boundAt(failed, checks, t),
      noticed: noticed.has(week),
    }))
    .slice(-most)
}

const isWhole = (part: Found): boolean => part.is === 'rise' && part.rise.rule === null

/** The week of a release, if something of a family rose in it: one of these failed checks, or (null) the family as a whole. */
function rose({ week, rises }: Release, family: FamilyId, rules: ReadonlySet<RuleId | null>): Week | undefined {
  const of = (rise: Rise) => rise.week === week && rise.family === family && rules.has(rise.rule)
  return rises.some(of) ? week : undefined
}

/**
 * What a release adds to what was shown of a thing; part of it may be of earlier weeks. What is shown of it for the first time ever is
 * left out: it is of all the weeks before.
 */
function newlyFailed({ families }: Release, { family, rule }: Thing): number {
  const shown = families.find(one => one.family === family)
  if (!shown) return 0
  const cells =
    rule === null ? shown.verdicts.filter(one => isFailing(one.verdict)) : shown.rules.filter(one => one.rule === rule)
  return cells.reduce((all, { checks, more }) => all + (more === checks ? 0 : more), 0)
}

/** By the same window and the same foresight as the exact counts are judged with, from what is shown. */
function boundAt(failed: readonly number[], checks: readonly number[], t: number): number | undefined {
  const last = t - baselineGap
  if (last < leastWeeks - 1) return undefined
  const first = Math.max(0, last - baselineWeeks + 1)
  const foreseen = foresee(sum(failed, first, last), sum(checks, first, last), sum(checks, last + 1, t))
  return foreseen && spikeBound(foreseen)
}

/** Fewer weeks before say nothing; as long as history has to be before anything is judged. */
const leastWeeks = 13

function sum(numbers: readonly number[], from: number, to: number): number {
  let all = 0
  for (let i = Math.max(0, from); i <= to; i++) all += numbers[i] ?? 0
  return all
}
