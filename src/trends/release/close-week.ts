// Closing a week: the state before it and the counts of the weeks give the state after it and what may be said.
import type { FamilyId } from '../../engine/answers.ts'
import type { WeekCount } from '../counts.ts'
import { badCount, type Counts, cellOf, sortInSlices, wholeFamily } from '../counts.ts'
import type { ByWeek } from '../fives.ts'
import { patternWeeks, recentWeeks } from '../patterns/show-patterns.ts'
import { judgeInSlices, type Rise, weeksJudged } from '../rises/judge-week.ts'
import { seriesKey } from '../rises/series.ts'
import { atOnce, type Slices } from '../slices.ts'
import { isWeek, type Week, weekPlus } from '../week.ts'
import { openFamily } from './open-family.ts'
import { anyServers, type EnoughServers } from './pool.ts'
import type { Release } from './release.ts'
import { showCells } from './show-cells.ts'
import type { FamilyState, ReleaseState } from './state.ts'

export type WeekToClose = {
  readonly scope: Release['scope']
  readonly week: Week
  /** The state the week before was frozen with; null before the first release. */
  readonly state: ReleaseState | null
  /** The week of the oldest outcome when the first release was made. */
  readonly first: Week
  /** Counts of the weeks `weeksNeeded(week)`; others are left out of account. */
  readonly counts: readonly WeekCount[]
  /** In the pool, whether a family may be told of; a server's own release needs nothing of the kind. */
  readonly enough?: EnoughServers
  /** Weeks of history before rises are told of; only tests change it. */
  readonly history?: number
}

/** A week closed but for its patterns: fetch the rows of the families asked for, then `freezeWeek`. */
export type ClosedWeek = {
  readonly release: Omit<Release, 'patterns'>
  readonly state: ReleaseState
  /**
   * Families with a recent rise, in which patterns are looked for, at most `mostSearched`; of each, how many checks every week of
   * `patternWeeks` had.
   */
  readonly patternsOf: ReadonlyMap<FamilyId, ByWeek>
}

export type CloseResult =
  | ({ readonly ok: true } & ClosedWeek)
  | { readonly ok: false; readonly refusal: { readonly code: 'damaged-count'; readonly row: WeekCount } }

/** This week's rises, and those of the weeks before that are recent and were not noticed again. */
function stillRecent(noticed: readonly Rise[], before: readonly Rise[], week: Week): Rise[] {
  const oldest = weekPlus(week, -recentWeeks + 1)
  const again = new Set(noticed.map(seriesKey))
  return [...noticed, ...before.filter(rise => rise.week >= oldest && !again.has(seriesKey(rise)))]
}

/** More families than anyone reads patterns of; where hundreds of series are watched, some rise by chance every week. */
const mostSearched = 5

/** The families whose rises are surest: what stands out first, then what was noticed last. */
function searched(rises: readonly Rise[]): FamilyId[] {
  const surest = [...rises].sort(
    (a, b) =>
      Number(b.standsOut) - Number(a.standsOut) ||
      (a.week === b.week ? (a.family < b.family ? -1 : 1) : a.week < b.week ? 1 : -1),
  )
  return [...new Set(surest.map(rise => rise.family))].slice(0, mostSearched).sort()
}

const isWhole = (row: WeekCount): boolean => row.facet === 'all'
const checksOf = (families: readonly FamilyId[], counts: Counts): ReadonlyMap<FamilyId, ByWeek> =>
  new Map(families.map(family => [family, cellOf(counts.get(family), wholeFamily)]))

type Weeks = { readonly from: Week; readonly to: Week }

/** The weeks a release is counted from. A contribution that stayed unshown for longer is never shown. */
const weeksCounted = (week: Week): Weeks => ({ from: weekPlus(week, -weeksJudged + 1), to: week })
const weeksOf = (rows: readonly WeekCount[], { from, to }: Weeks) =>
  rows.filter(row => row.week >= from && row.week <= to)

/** The weeks whose counts are asked for: those that patterns are found in reach further back. */
export const weeksNeeded = (week: Week): Weeks => {
  const [from = week] = [weeksCounted(week).from, patternWeeks(week).from].sort()
  return { from, to: week }
}

/** A row that is looked at is as much work as so many words of bits. */
const eachRow = 5

/** Closes a week. The order of the counts changes nothing; counts of later weeks change nothing. */
export const closeWeek = (closing: WeekToClose): CloseResult => atOnce(closeInSlices(closing))

export function* closeInSlices({
  scope,
  week,
  state,
  first,
  counts: all,
  history,
  enough = anyServers,
}: WeekToClose): Slices<CloseResult> {
  const bad = badCount(all, isWeek)
  if (bad !== undefined) return { ok: false, refusal: { code: 'damaged-count', row: bad } }
  // What too few servers have brought is neither shown nor judged; it counts later, once there are enough.
  const told = new Set([...new Set(all.map(row => row.family))].filter(family => enough(family, null, week)))
  const rows = all.filter(row => told.has(row.family))
  yield all.length * eachRow
  const counts = yield* sortInSlices(weeksOf(rows, weeksCounted(week)))
  const before = state?.families ?? {}
  const start = state?.first ?? first

  const families: Record<FamilyId, FamilyState> = { ...before }
  for (const [family, cells] of [...counts].sort(([a], [b]) => (a < b ? -1 : 1))) {
    if (!enough(family, before[family]?.opened ?? null, week)) continue
    const opened = openFamily(before[family], cells, week)
    if (opened !== undefined) families[family] = opened
    yield cells.size * eachRow * 10
  }
  const {
    judged,
    rises: noticed,
    spikes,
    series,
  } = yield* judgeInSlices(counts, week, start, state?.series ?? {}, history)
  const rises = stillRecent(noticed, state?.rises ?? [], week)
  return {
    ok: true,
    release: { format: 1, scope, week, ...showCells(families, before), judged, rises, spikes },
    state: { first: start, families, series, rises },
    patternsOf: checksOf(searched(rises), yield* sortInSlices(weeksOf(rows.filter(isWhole), patternWeeks(week)))),
  }
}
