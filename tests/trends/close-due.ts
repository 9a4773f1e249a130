// The weekly job as the wiring will run it, for tests: closes every week that is due, one after another.
import type { OutcomeLog, ReleaseLog, Scope } from '../../src/trends/outcome-log.ts'
import { patternWeeks } from '../../src/trends/patterns/show-patterns.ts'
import { closeWeek, weeksNeeded } from '../../src/trends/release/close-week.ts'
import { freezeWeek } from '../../src/trends/release/freeze-week.ts'
import { type Week, weekPlus, weeksFrom } from '../../src/trends/week.ts'

/** Closes all weeks up to `upTo`; says which it froze. */
export async function closeDue(
  outcomes: OutcomeLog,
  releases: ReleaseLog,
  scope: Scope,
  upTo: Week,
  history?: number,
): Promise<Week[]> {
  const frozen: Week[] = []
  const first = await outcomes.firstWeek(scope)
  const start = await releases.latest(scope)
  const from = start === null ? first : weekPlus(start.week, 1)
  if (from === null) return frozen
  for (let week = from; weeksFrom(week, upTo) >= 0; week = weekPlus(week, 1)) {
    const state = (await releases.latest(scope))?.state ?? null
    const need = weeksNeeded(week)
    const closed = closeWeek({
      scope: scope.kind,
      week,
      state,
      first: state?.first ?? first ?? week,
      counts: await outcomes.weekCounts(scope, need.from, need.to),
      ...(history === undefined ? {} : { history }),
    })
    if (!closed.ok) throw new Error(closed.refusal.code)
    const rows = new Map()
    for (const family of closed.patternsOf) {
      const { from: oldest, to } = patternWeeks(week)
      rows.set(family, await outcomes.patternRows(scope, family, oldest, to))
    }
    const { bytes, state: after } = freezeWeek(closed, rows)
    if ((await releases.freeze(scope, week, bytes, after)) === 'frozen') frozen.push(week)
  }
  return frozen
}
