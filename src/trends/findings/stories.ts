// From a release to findings: what rises and goes together in the same checks is one story, which later weeks add to.
//
// It reads frozen releases and nothing else, so that no finding says more than they do.
import type { FamilyId, RuleId } from '../../engine/answers.ts'
import { recentWeeks } from '../patterns/show-patterns.ts'
import type { Release } from '../release/release.ts'
import { type Week, weeksFrom } from '../week.ts'
import type { Finding, Found, NewFinding } from './finding.ts'
import { firstWeek, rulesOf } from './parts.ts'

export type Told = {
  readonly begun: readonly NewFinding[]
  /** Findings that are there already and have changed, each a revision on. */
  readonly grown: readonly Finding[]
}

/** What a release tells of beside the findings of its server. Told twice, the second time nothing is new. */
export function tellStories(release: Release, findings: readonly Finding[]): Told {
  const begun: NewFinding[] = []
  const grown: Finding[] = []
  for (const [family, parts] of partsByFamily(release)) {
    const live = findings
      .filter(one => one.family === family && isLive(one, release.week))
      .sort((a, b) => (a.week < b.week ? -1 : a.week > b.week ? 1 : a.id < b.id ? -1 : 1))
    const waiting = live.find(one => one.state === 'open' || one.state === 'watching')
    const joined = new Map<Finding, Found[]>()
    const left: Found[] = []
    for (const group of groupsOf(parts)) {
      const home = live.find(one => shares(one.parts, group)) ?? waiting
      if (home) joined.set(home, [...(joined.get(home) ?? []), ...group])
      else left.push(...group)
    }
    for (const [finding, group] of joined) {
      const next = grow(finding, group, release.week)
      if (next) grown.push(next)
    }
    if (left.some(part => isOf(part, release.week))) {
      const [key, week] = [keyOf(family, sorted(left), release.week), firstWeek(left, release.week)]
      begun.push({ key, family, week, seen: release.week, parts: sorted(left) })
    }
  }
  const quiet = findings.filter(one => hasGoneQuiet(one, release.week) && !grown.some(({ id }) => id === one.id))
  return { begun, grown: [...grown, ...quiet.map(shownAnew)] }
}

/** The first week in which nothing of it is recent any more: its post is to say so. */
const hasGoneQuiet = ({ seen, told, stale, state }: Finding, week: Week): boolean =>
  told && !stale && (state === 'open' || state === 'watching') && weeksFrom(seen, week) === recentWeeks + 1

const shownAnew = (finding: Finding): Finding => ({ ...finding, stale: true, revision: finding.revision + 1 })

/** A story goes on for as long as a rise is called recent; while it is watched, until its week. */
const isLive = ({ seen, week, until, state }: Finding, now: Week): boolean =>
  week <= now && (weeksFrom(seen, now) <= recentWeeks || (state === 'watching' && until !== null && until >= now))

/** Families that have something new this week, or a pattern, with everything that is recent of them: rises first. */
function partsByFamily(release: Release): Map<FamilyId, Found[]> {
  const families = new Map<FamilyId, Found[]>()
  const put = (family: FamilyId, part: Found) => families.set(family, [...(families.get(family) ?? []), part])
  for (const rise of release.rises) put(rise.family, { is: 'rise', rise })
  for (const pattern of release.patterns) put(pattern.family, { is: 'pattern', pattern })
  for (const [family, parts] of families) if (!parts.some(part => isOf(part, release.week))) families.delete(family)
  return families
}

const isOf = (part: Found, week: Week): boolean => part.is === 'pattern' || part.rise.week === week

/** Parts that name a failed check in common, together; what names none belongs to the first of them. */
function groupsOf(parts: readonly Found[]): Found[][] {
  const groups: { rules: Set<RuleId>; parts: Found[] }[] = []
  const whole: Found[] = []
  for (const part of parts) {
    const rules = rulesOf(part)
    if (rules.length === 0) {
      whole.push(part)
      continue
    }
    const touched = groups.filter(group => rules.some(rule => group.rules.has(rule)))
    const merged = {
      rules: new Set([...touched.flatMap(group => [...group.rules]), ...rules]),
      parts: [...touched.flatMap(group => group.parts), part],
    }
    const at = touched[0] ? groups.indexOf(touched[0]) : groups.length
    for (const group of touched) groups.splice(groups.indexOf(group), 1)
    groups.splice(at, 0, merged)
  }
  const [first, ...others] = groups
  if (!first) return whole.length > 0 ? [whole] : []
  return [[...whole, ...first.parts], ...others.map(group => group.parts)]
}

/** Whether two sets of parts are of the same checks: they name a failed check in common, or one of them names none. */
function shares(known: readonly Found[], found: readonly Found[]): boolean {
  const rules = new Set(known.flatMap(rulesOf))
  const others = found.flatMap(rulesOf)
  return rules.size === 0 || others.length === 0 || others.some(rule => rules.has(rule))
}

/** The finding with what a later week tells of it; undefined where that is nothing new. */
function grow(finding: Finding, found: readonly Found[], week: Week): Finding | undefined {
  if (week < finding.seen) return undefined
  const parts = merged(finding.parts, found)
  const more = parts.some(part => !finding.parts.some(one => partKey(one) === partKey(part)))
  const same = JSON.stringify(sorted(parts)) === JSON.stringify(sorted(finding.parts))
  if (same && finding.seen === week) return undefined
  // What was dismissed was dismissed for what was known of it then, so moderators are told again.
  const reopened = more && finding.state === 'dismissed' ? { state: 'open' as const, told: false } : {}
  return {
    ...finding,
    ...reopened,
    parts: sorted(parts),
    seen: week,
    stale: finding.told,
    revision: finding.revision + 1,
  }
}

/** What was found now takes the place of what was known of the same thing: a pattern, of those that share a failed check with it. */
function merged(known: readonly Found[], found: readonly Found[]): Found[] {
  const replaced = (one: Found) =>
    found.some(
      other =>
        partKey(other) === partKey(one) ||
        (one.is === 'pattern' && other.is === 'pattern' && rulesOf(one).some(rule => rulesOf(other).includes(rule))),
    )
  return [...known.filter(one => !replaced(one)), ...found]
}

const sorted = (parts: readonly Found[]): Found[] =>
  [...parts].sort(
    (a, b) => Number(a.is === 'pattern') - Number(b.is === 'pattern') || (partKey(a) < partKey(b) ? -1 : 1),
  )

/** The same for the same rise or pattern in every week. */
export const partKey = (part: Found): string =>
  part.is === 'rise' ? `rise ${part.rise.rule ?? ''}` : `pattern ${part.pattern.items.join(' ')}`

const keyOf = (family: FamilyId, parts: readonly Found[], week: Week): string =>
  `story ${family} ${week} ${partKey(parts[0] as Found)}`
