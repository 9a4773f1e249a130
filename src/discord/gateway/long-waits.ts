// Which of Discord's rate limits are waited out in silence, and which end in trouble that the person is told of at once.
import type { RateLimitData } from 'discord.js'

/** An answer to a click has three seconds, and so has what is asked of a server for it; a message to a channel is worth a little more. In ms. */
const patience = { '/interactions': 2_000, '/guilds': 2_000, '/webhooks': 10_000, '/channels': 10_000 } as const

/** For `rejectOnRateLimit`: true where the wait is longer than anybody would bear. Commands are registered whenever Discord lets us. */
export function isLongWait({ route, timeToReset }: Pick<RateLimitData, 'route' | 'timeToReset'>): boolean {
  for (const [start, most] of Object.entries(patience)) if (route.startsWith(start)) return timeToReset > most
  return false
}
