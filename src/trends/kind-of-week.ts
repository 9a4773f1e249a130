// What kind of week a release tells of: something new, something that goes on, chance, growth, something over, or nothing at all.
//
// Worked out of frozen releases alone, so that it says nothing they do not say.
import type { FamilyId } from '../engine/answers.ts'
import type { ReleasedWeek } from './findings/past.ts'
import { recentWeeks } from './patterns/show-patterns.ts'
import type { Release } from './release/release.ts'
import type { Rise } from './rises/judge-week.ts'
import { type Usual, usualOf } from './usual.ts'
import { type Week, weeksFrom } from './week.ts'

export const weekKinds = ['new', 'again', 'recent', 'alone', 'chance', 'over', 'growth', 'ordinary'] as const
export type WeekKind = (typeof weekKinds)[number]

/** A family in which something was found, and the last week in which it was. */
export type FoundBefore = { readonly family: FamilyId; readonly last: Week }

export type KindOfWeek = {
  readonly kind: WeekKind
  /** Found in this week, and not in the eight weeks before; found in them, too. */
  readonly fresh: readonly FamilyId[]
  readonly again: readonly FamilyId[]
  /** Not found in this week, but in the eight before; longer ago, but not long. */
  readonly recent: readonly FoundBefore[]
  readonly over: readonly FoundBefore[]
  /** What failed more than foreseen in this week alone, of families in which nothing is found. */
  readonly alone: readonly Rise[]
  /** Weeks before that had something of the kind, of so many. */
  readonly weeksWithAlone: number
  readonly weeksBefore: number
  /** Models and reasons that the release shows. */
  readonly things: number
  /** Undefined while there are too few weeks. */
  readonly usual: Usual | undefined
}

/** It is told for so many weeks that something is over. */
const toldOver = 4

/** Of the last of these weeks (oldest first, one after another); undefined where it has no release, or nothing is judged yet. */
export function kindOfWeek(weeks: readonly ReleasedWeek[]): KindOfWeek | undefined {
  const release = weeks.at(-1)?.release
  if (!release?.judged) return undefined
  const { week } = release
  const before = weeks.slice(0, -1).flatMap(one => one.release ?? [])
  const last = new Map(before.flatMap(one => foundIn(one).map(family => [family, one.week] as const)))
  const since = (family: FamilyId): number => weeksFrom(last.get(family) ?? '0001-W01', week)
  const found = foundIn(release)
  const gone = [...last].map(([family, at]) => ({ family, last: at })).filter(({ family }) => !found.includes(family))
  const recent = gone.filter(({ family }) => since(family) <= recentWeeks)
  const settled = new Set([...found, ...recent.map(one => one.family)])
  const told = {
    fresh: found.filter(family => since(family) > recentWeeks),
    again: found.filter(family => since(family) <= recentWeeks),
    recent,
    over: gone.filter(({ family }) => since(family) > recentWeeks && since(family) <= recentWeeks + toldOver),
    alone: release.spikes.filter(({ family }) => !settled.has(family)),
    weeksWithAlone: before.filter(one => one.spikes.length > 0).length,
    weeksBefore: before.filter(one => one.judged).length,
    things: release.families.reduce((sum, { rules }) => sum + 1 + rules.length, 0),
    usual: usualOf(weeks),
  }
  return { kind: headOf(told), ...told }
}

/** What comes first is what matters most to whoever reads it. */
function headOf({ fresh, again, recent, over, alone, usual }: Omit<KindOfWeek, 'kind'>): WeekKind {
  if (fresh.length > 0) return 'new'
  if (again.length > 0) return 'again'
  if (recent.length > 0) return 'recent'
  if (alone.length > 0) return 'alone'
  if (usual?.besideFailed === 'more') return 'chance'
  if (over.length > 0) return 'over'
  return usual?.grown ? 'growth' : 'ordinary'
}

/** Families with a rise that was noticed in this very week, or a pattern: what findings are made of. */
const foundIn = ({ week, rises, patterns }: Release): FamilyId[] =>
  [...new Set([...rises.filter(rise => rise.week === week), ...patterns].map(one => one.family))].sort()
