// The words of what everybody on a server sees: in the language its moderators chose, or the one the server tells Discord.
import { publicLanguage } from '../../server/settings.ts'
import { type Say, sayIn } from '../../words/say.ts'
import type { Services } from '../services.ts'

/** `server`: null outside servers; `guildLocale`: what the server tells Discord, where an interaction brought it. */
export async function sayInPublic(
  services: Services,
  server: string | null,
  guildLocale?: string | null,
): Promise<Say> {
  const settings = server === null ? undefined : await services.servers.load(server)
  return sayIn(settings ? publicLanguage(settings, guildLocale) : (guildLocale ?? undefined))
}
