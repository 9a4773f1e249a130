// Closes the weeks of one scope that are due: counted once, frozen once, one after another, whoever else tries.
import { setImmediate as turn } from 'node:timers/promises'
import type { FamilyId } from '../engine/answers.ts'
import { inTurns } from '../services/in-turns.ts'
import { type Due, graceMs, weeksDue } from '../trends/closing.ts'
import type { OutcomeLog, PatternRow, ReleaseLog, Scope } from '../trends/outcome-log.ts'
import { patternWeeks } from '../trends/patterns/show-patterns.ts'
import { type CloseResult, closeInSlices, weeksNeeded } from '../trends/release/close-week.ts'
import { freezeInSlices } from '../trends/release/freeze-week.ts'
import { anyServers, enoughServers } from '../trends/release/pool.ts'
import { type Week, weekOf, weekPlus } from '../trends/week.ts'

export type Logs = { readonly outcomes: OutcomeLog; readonly releases: ReleaseLog }

type Refusal =
  | Extract<Due | CloseResult, { ok: false }>['refusal']
  /** What the next release goes on from cannot be read: `week` is the last closed one. */
  | { readonly code: 'damaged-state'; readonly week: Week }
export type Closing =
  | { readonly ok: true; readonly frozen: readonly Week[] }
  | { readonly ok: false; readonly frozen: readonly Week[]; readonly refusal: Refusal }

/**
 * Closes every week of `scope` that is due at `now` (ms since 1970), oldest first. A process that is cut off between two weeks, or
 * before one is frozen, has changed nothing that the next one would not do in the same way. `anyGap`: somebody has looked at the
 * clock. `history`: see `closeWeek`.
 */
export async function closeWeeks(
  logs: Logs,
  scope: Scope,
  now: number,
  { anyGap = false, history }: { readonly anyGap?: boolean; readonly history?: number } = {},
): Promise<Closing> {
  await logs.outcomes.admit(weekPlus(weekOf(now - graceMs), -1))
  const latest = await logs.releases.latest(scope)
  if (latest?.state === null) return { ok: false, frozen: [], refusal: { code: 'damaged-state', week: latest.week } }
  const first = latest === null ? await logs.outcomes.firstWeek(scope) : null
  const due = weeksDue(now, latest?.week ?? null, first, anyGap ? Number.POSITIVE_INFINITY : undefined)
  if (!due.ok) return { ...due, frozen: [] }
  const frozen: Week[] = []
  for (const week of due.weeks) {
    const refusal = await closeOne(logs, scope, week, due.weeks[0] ?? week, frozen, history)
    if (refusal) return { ok: false, frozen, refusal }
    // Clicks that came in meanwhile go first.
    await turn()
  }
  return { ok: true, frozen }
}

async function closeOne(
  { outcomes, releases }: Logs,
  scope: Scope,
  week: Week,
  first: Week,
  frozen: Week[],
  history: number | undefined,
): Promise<Refusal | undefined> {
  const state = (await releases.latest(scope))?.state ?? null
  const { from, to } = weeksNeeded(week)
  const counts = await outcomes.weekCounts(scope, from, to)
  const enough = scope.kind === 'pool' ? enoughServers(await outcomes.poolContributions(from, to)) : anyServers
  const closed = await inTurns(
    closeInSlices({
      scope: scope.kind,
      week,
      state,
      first,
      counts,
      enough,
      ...(history !== undefined && { history }),
    }),
  )
  if (!closed.ok) return closed.refusal
  const failed = new Map<FamilyId, readonly PatternRow[]>()
  const since = patternWeeks(week)
  for (const family of closed.patternsOf.keys())
    failed.set(family, await outcomes.failedChecks(scope, family, since.from, since.to))
  const { bytes, state: after } = await inTurns(freezeInSlices(closed, failed))
  if ((await releases.freeze(scope, week, bytes, after)) === 'frozen') frozen.push(week)
  return undefined
}
