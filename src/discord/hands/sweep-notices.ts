// Takes away what should not stand in channels any more: messages past their time, and pleas that nobody asks any more.
import type { Desk } from '../desk.ts'
import { isSettled, takeAway } from './tell-others.ts'

/** At most so many messages at a sweep; the next one goes on. */
const most = 100

export async function sweepNotices(desk: Pick<Desk, 'posts' | 'notices' | 'checks' | 'now' | 'log'>): Promise<void> {
  for (const notice of await desk.notices.expired(desk.now(), most)) await takeAway(desk, notice)
  for (const plea of await desk.notices.ofKind('plea', most)) {
    const found = await desk.checks.load(plea.check)
    if (!found || isSettled(found.check)) await takeAway(desk, plea)
  }
}
