// The two store contracts of the trends room kept in memory: the plainest thing that fulfils them, for tests to hold stores against.

import type { Facet, WeekCount } from '../../src/trends/counts.ts'
import { epochOf } from '../../src/trends/epoch.ts'
import { itemsOf, type Outcome, unknownFamily } from '../../src/trends/outcome.ts'
import type { OutcomeLog, ReleaseLog, Scope } from '../../src/trends/outcome-log.ts'
import type { ReleaseState } from '../../src/trends/release/state.ts'
import { type Week, weekPlus } from '../../src/trends/week.ts'

export function openMemoryOutcomes(): OutcomeLog & { readonly all: () => readonly Outcome[] } {
  const rows = new Map<string, Outcome>()
  let next = 1
  const inScope = (scope: Scope) => (o: Outcome) =>
    scope.kind === 'pool' ? o.pooled !== null : o.server === scope.server
  const read = (scope: Scope, from: Week, to: Week) =>
    [...rows.values()].filter(o => inScope(scope)(o) && o.week >= from && o.week <= to)

  return {
    all: () => [...rows.values()],
    // Nothing waits here: a check is closed by other stores.
    admit: async () => 0,
    dropWaiting: async () => 0,
    dropSealedBefore: async () => 0,
    // Nor does anything change its code here: it is kept as it is.
    codesOf: async () => [],
    async record(outcome) {
      const same = (o: Outcome) => epochOf(o.week) === epochOf(outcome.week) && o.family === outcome.family
      const mates = [...rows.values()].filter(same)
      if (mates.some(o => o.server === outcome.server && o.reporter === outcome.reporter)) return 'already-contributed'
      const pooledBefore = outcome.pooled !== null && mates.some(o => o.pooled === outcome.pooled)
      rows.set(String(next++), pooledBefore ? { ...outcome, pooled: null } : outcome)
      return 'recorded'
    },
    async firstWeek(scope) {
      return (
        [...rows.values()]
          .filter(inScope(scope))
          .map(o => o.week)
          .sort()[0] ?? null
      )
    },
    async weekCounts(scope, from, to) {
      return countOutcomes(read(scope, from, to))
    },
    async poolContributions(from, to) {
      return [
        ...Map.groupBy(read({ kind: 'pool' }, from, to), o => `${o.week} ${o.family ?? unknownFamily} ${o.server}`),
      ].map(([key, { length: reporters }]) => {
        const [week = '', family = '', server = ''] = key.split(' ')
        return { week, family, server, reporters }
      })
    },
    async failedChecks(scope, family, from, to) {
      return read(scope, from, to)
        .filter(o => (o.family ?? unknownFamily) === family && o.fired.length > 0)
        .map(o => ({ week: o.week, items: itemsOf(o) }))
    },
    async judgedOtherwise(pack, version, limit, after) {
      return [...rows]
        .sort(([a, x], [b, y]) => (x.week === y.week ? Number(a) - Number(b) : x.week < y.week ? -1 : 1))
        .filter(
          ([, o], i, all) =>
            i > all.findIndex(([id]) => id === after) && o.packs.some(p => p.id === pack && p.version !== version),
        )
        .slice(0, limit)
        .map(([id, outcome]) => ({ id, outcome }))
    },
    async rejudge(id, { verdict, fired, packs }) {
      const old = rows.get(id)
      if (old !== undefined) rows.set(id, { ...old, verdict, fired, packs })
    },
    async of(pseudonyms) {
      return [...rows.values()].filter(borneBy(pseudonyms))
    },
    async forget(pseudonyms) {
      const gone = [...rows].filter(([, o]) => borneBy(pseudonyms)(o))
      for (const [id] of gone) rows.delete(id)
      return gone.length
    },
    async purgeBefore(week, server) {
      const gone = [...rows].filter(([, o]) => o.week < week && (server === undefined || o.server === server))
      for (const [id] of gone) rows.delete(id)
      return gone.length
    },
  }
}

const borneBy = (pseudonyms: readonly string[]) => (o: Outcome) =>
  [o.reporter, o.pooled].some(p => p !== null && pseudonyms.includes(p))

/** The counts a store answers with, for outcomes at hand. */
export function countOutcomes(outcomes: readonly Outcome[]): WeekCount[] {
  const counts = new Map<string, { week: Week; family: string; facet: Facet; value: string; reporters: number }>()
  for (const o of outcomes) {
    const family = o.family ?? unknownFamily
    const cells: [Facet, string][] = [
      ['all', ''],
      ['verdict', o.verdict],
      ['bought', o.bought],
      ...o.fired.map((rule): [Facet, string] => ['rule', rule]),
    ]
    for (const [facet, value] of cells) {
      const key = `${o.week} ${family} ${facet} ${value}`
      const count = counts.get(key)
      if (count === undefined) counts.set(key, { week: o.week, family, facet, value, reporters: 1 })
      else count.reporters++
    }
  }
  return [...counts.values()]
}

export function openMemoryReleases(): ReleaseLog {
  const kept = new Map<string, Map<Week, { bytes: string; state: ReleaseState }>>()
  const of = (scope: Scope) => {
    const key = scope.kind === 'pool' ? 'pool' : `server ${scope.server}`
    const weeks = kept.get(key) ?? new Map<Week, { bytes: string; state: ReleaseState }>()
    kept.set(key, weeks)
    return weeks
  }
  const last = (scope: Scope): Week | undefined => [...of(scope).keys()].sort().at(-1)

  return {
    async latest(scope) {
      const week = last(scope)
      return week === undefined ? null : { week, state: of(scope).get(week)!.state }
    },
    async freeze(scope, week, bytes, state) {
      const before = last(scope)
      if (before !== undefined && weekPlus(before, 1) !== week) return 'already-frozen'
      // Through JSON, as a real store keeps it: nothing but plain data survives.
      of(scope).set(week, { bytes, state: JSON.parse(JSON.stringify(state)) as ReleaseState })
      return 'frozen'
    },
    async bytes(scope, week) {
      return of(scope).get(week)?.bytes ?? null
    },
    unread: async () => [],
    markRead: async () => undefined,
    async weeks(scope) {
      return [...of(scope).keys()].sort()
    },
  }
}
