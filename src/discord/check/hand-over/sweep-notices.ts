// Takes away what should not stand in channels any more: messages past their time, and help requests that nobody asks any more.
import type { Services } from '../../services.ts'
import { isSettled, takeAway } from './tell-others.ts'

/** At most so many messages at a sweep; the next one goes on. */
const most = 100

export async function sweepNotices(
  services: Pick<Services, 'posts' | 'notices' | 'checks' | 'now' | 'log'>,
): Promise<void> {
  for (const notice of await services.notices.expired(services.now(), most)) await takeAway(services, notice)
  for (const helpRequest of await services.notices.ofKind('help-request', most)) {
    const found = await services.checks.load(helpRequest.check)
    if (!found || isSettled(found.check)) await takeAway(services, helpRequest)
  }
}
