// Reminds the moderators of servers that want it of who has waited for long: once for each wait, however many processes there are.
//
// What is about to be said is written down first, so that a process that is cut off leaves it unsaid rather than said twice.
import { type Check, lifetime } from '../check/check.ts'
import { idleSince, type Waiting, waitingTooLong } from '../check/waiting.ts'
import { showReminder } from '../discord/check/waiting/show-reminder.ts'
import { familiesOfChecks } from '../discord/families/families-of-checks.ts'
import { linkTo } from '../discord/posts/link-to.ts'
import { sayInPublic } from '../discord/posts/say-in-public.ts'
import type { Services } from '../discord/services.ts'
import type { ServerSettings } from '../server/settings.ts'
import type { Leases } from '../trends/lease.ts'
import { sayWhat } from '../words/describe.ts'

export type ReminderJob = { readonly services: Services; readonly leases: Leases; readonly holder: string }

/** A process that dies at it holds the others up for this long, in ms. */
const leaseMs = 5 * 60_000
const mostNamed = 5
const hour = 3600_000

/** Says of how many waits it was said; 0 where another process is at it. */
export async function remind({ services, leases, holder }: ReminderJob): Promise<number> {
  const hold = () => leases.take('reminders', holder, services.now(), services.now() + leaseMs)
  if (!(await hold())) return 0
  try {
    let said = 0
    for (const settings of await services.servers.all()) {
      if (settings.reminders === null || settings.reviewChannel === null) continue
      if (!(await hold())) return said
      said += await remindServer(services, settings).catch(error => {
        services.log.warn({ err: error, server: settings.server }, 'a server could not be reminded of who waits')
        return 0
      })
    }
    return said
  } finally {
    await leases.giveBack('reminders', holder)
  }
}

async function remindServer(services: Services, settings: ServerSettings): Promise<number> {
  const { server, reviewChannel: channel, reminders } = settings
  if (channel === null || reminders === null || (await services.posts.isOpenToAll(channel))) return 0
  const now = services.now()
  const long = waitingTooLong(await services.checks.handedIn(server, now), reminders.hours * hour, now)
  const due: Waiting[] = []
  for (const one of long) if (!(await wasSaid(services, one))) due.push(one)
  if (due.length === 0) return 0
  const mark = async (message: string) => {
    for (const { check } of due)
      await services.notices.put({ check: check.id, kind: 'reminder', channel, message, until: now + lifetime })
  }
  await mark('')
  const posted = await post(services, settings, channel, due)
  if (posted !== undefined) {
    await mark(posted)
    return due.length
  }
  // Said to nobody: the next look tries again.
  for (const { check } of due) await services.notices.drop({ ...unsaid, check: check.id, channel })
  return 0
}

const unsaid = { kind: 'reminder', message: '', until: 0 } as const

/** Whether it was said of this very wait, and not of an earlier one. */
async function wasSaid({ notices }: Services, waiting: Waiting): Promise<boolean> {
  const said = (await notices.of(waiting.check.id)).find(one => one.kind === 'reminder')
  return said !== undefined && said.until - lifetime >= idleSince(waiting)
}

/** The message; undefined where the channel takes none. */
async function post(
  services: Services,
  { server, reminders }: ServerSettings,
  channel: string,
  due: readonly Waiting[],
): Promise<string | undefined> {
  const say = await sayInPublic(services, server)
  const role = reminders?.role ?? null
  const known = role === null || services.posts.hasRole(server, role)
  const named = due.slice(0, mostNamed)
  const family = await familiesOfChecks(
    services,
    named.map(one => one.check),
  )
  const entries = await Promise.all(
    named.map(async waiting => ({
      waiting,
      what: sayWhat(say, family(waiting.check)),
      link: await linkOf(services, server, waiting.check),
    })),
  )
  const hours = reminders?.hours ?? 0
  const shown = showReminder(say, { count: due.length, hours, role: known ? role : 'gone', entries })
  const ping = role !== null && known ? { role } : undefined
  const posting = await services.posts.post(channel, shown, `rm${services.newId()}`, ping).catch(() => undefined)
  if (posting?.is === 'posted') return posting.place.message
  services.log.warn({ server, posting: posting?.is }, 'nobody could be reminded of who waits')
  return undefined
}

async function linkOf({ notices }: Services, server: string, check: Check): Promise<string | undefined> {
  const shown = (await notices.of(check.id)).find(one => one.kind === 'help-request' || one.kind === 'panel')
  return shown && linkTo(server, shown)
}
