// The hourly sweep: counts what nobody touches any more, and lets go of what is past its time, as far as the clock may be trusted.
import { sweepNotices } from '../discord/check/hand-over/sweep-notices.ts'
import type { Services } from '../discord/services.ts'
import { helpersOver } from '../server/helper-log.ts'
import { claimsKept } from '../server/offer-claims.ts'
import { weekOf, weekPlus } from '../trends/week.ts'
import { type Clock, lookAtClock } from './clock-guard.ts'
import { settleFinished } from './settle-finished.ts'

/** Values that expire, and the drafts among them. */
export type Expiring = { purge(): Promise<number>; purgeDrafts(): Promise<number> }

export async function sweep(services: Services, kept: Expiring, clock: Clock): Promise<void> {
  const { checks, offers, helpers, log } = services
  const now = services.now()
  // What somebody typed goes by its own time, whatever has become of the clock: it is kept for hours.
  const drafts = await kept.purgeDrafts()
  const look = await lookAtClock(clock, now, log)
  if (!look.small) return
  const settled = await settleFinished(services)
  await offers.purge(now - claimsKept)
  await sweepNotices(services)
  if (look.all) await helpers.purgeBefore(weekPlus(weekOf(now), -helpersOver))
  const values = await kept.purge()
  log.debug({ settled, checks: look.all ? await checks.purge(now) : 0, values: values + drafts }, 'swept')
}
