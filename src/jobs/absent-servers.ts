// Lets go of servers that removed the bot while it was not connected: Discord does not say so again.
//
// A server is given a week before it is deleted, so that a bot started once with somebody else's token deletes nothing.
import { leaveServer } from '../discord/privacy/leave-server.ts'
import type { BackgroundServices } from '../discord/trends/tell-findings.ts'
import type { Traces } from '../server/traces.ts'

/** How long a server has to be without the bot, in ms. */
export const absentFor = 7 * 24 * 3600_000

/** Since when a server has been without the bot, ms since 1970, as Keyv keeps it. */
export type Absences = {
  get(server: string): Promise<unknown>
  set(server: string, since: number): Promise<unknown>
  delete(server: string): Promise<unknown>
}

/** What a process sees of a server: `elsewhere` is one that another process is connected for. */
export type Whereabouts = (server: string) => 'here' | 'absent' | 'elsewhere'

export async function letGoOfAbsent(
  services: Pick<BackgroundServices, 'servers' | 'now' | 'log'> & { readonly traces: Traces },
  absences: Absences,
  whereabouts: Whereabouts,
): Promise<void> {
  for (const { server } of await services.servers.all()) {
    const seen = whereabouts(server)
    if (seen === 'elsewhere') continue
    const since = await absences.get(server)
    if (seen === 'here') {
      if (since !== undefined) await absences.delete(server)
    } else if (typeof since !== 'number') {
      await absences.set(server, services.now())
      services.log.warn({ server }, 'a server is without the bot; what is kept of it is deleted in a week')
    } else if (services.now() - since >= absentFor) {
      await leaveServer(services, server)
      await absences.delete(server)
    }
  }
}
