// Closes every week up to a given one, as the weekly job does, for tests that say by week what they want.
import { closeWeeks } from '../../src/jobs/close-weeks.ts'
import { graceMs } from '../../src/trends/closing.ts'
import type { OutcomeLog, ReleaseLog, Scope } from '../../src/trends/outcome-log.ts'
import { nextWeek, type Week, weekStart } from '../../src/trends/week.ts'

/** Closes all weeks up to `upTo`; says which it froze. */
export async function closeDue(
  outcomes: OutcomeLog,
  releases: ReleaseLog,
  scope: Scope,
  upTo: Week,
  history?: number,
): Promise<readonly Week[]> {
  const closing = await closeWeeks({ outcomes, releases }, scope, weekStart(nextWeek(upTo)) + graceMs, {
    ...(history !== undefined && { history }),
  })
  if (!closing.ok) throw new Error(closing.refusal.code)
  return closing.frozen
}
