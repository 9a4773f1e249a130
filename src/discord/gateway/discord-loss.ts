// Why Discord does not have the bot, or will not have it any longer: what the operator must mend, and what may pass by itself.
import { DiscordAPIError, GatewayCloseCodes } from 'discord.js'

/**
 * `token`: it is refused; `intents`: not allowed for the application; `shards`: the numbers do not fit; `version`: this version of
 * the bot is too old for the gateway; `sessions`: none are left until `at`; `unreachable`: no answer, or only a failing one; `strange`:
 * an answer that is none of Discord's.
 */
export type Loss =
  | { readonly is: 'token' | 'intents' | 'shards' | 'version' | 'strange' }
  | { readonly is: 'sessions'; readonly at: string }
  | { readonly is: 'unreachable'; readonly why: string }

/** Thrown by a start that cannot be, and told of a bot whose connection is over for good. */
export class DiscordLost extends Error {
  readonly loss: Loss

  constructor(loss: Loss, options?: ErrorOptions) {
    super(`Discord is lost: ${loss.is}`, options)
    this.loss = loss
  }
}

/** The closes that discord.js does not come back from (Discord's documentation, "Gateway Close Event Codes"). */
const closes: Readonly<Record<number, Loss>> = {
  [GatewayCloseCodes.AuthenticationFailed]: { is: 'token' },
  [GatewayCloseCodes.InvalidShard]: { is: 'shards' },
  [GatewayCloseCodes.ShardingRequired]: { is: 'shards' },
  [GatewayCloseCodes.InvalidAPIVersion]: { is: 'version' },
  [GatewayCloseCodes.InvalidIntents]: { is: 'intents' },
  [GatewayCloseCodes.DisallowedIntents]: { is: 'intents' },
}

/** What a close of the gateway means that is never tried again. */
export const lossOfClose = (code: number): Loss => closes[code] ?? { is: 'unreachable', why: `close ${code}` }

/** What a login that failed means. */
export function lossOf(error: unknown): Loss {
  if (error instanceof DiscordLost) return error.loss
  const code = error instanceof Error && 'code' in error ? error.code : undefined
  if (code === 'TokenInvalid' || (error instanceof DiscordAPIError && error.status === 401)) return { is: 'token' }
  const says = error instanceof Error ? error.message : String(error)
  // @discordjs/ws has no class for it.
  const at = /^Not enough sessions remaining.*resets at (\S+)$/.exec(says)?.[1]
  if (at !== undefined) return { is: 'sessions', at }
  // What was looked for in an answer was not there.
  if (error instanceof TypeError && code === undefined) return { is: 'strange' }
  return {
    is: 'unreachable',
    why: typeof code === 'string' || (typeof code === 'number' && code !== 0) ? String(code) : says,
  }
}

/** In a sentence for whoever hosts the bot. */
export function sayLoss(loss: Loss): string {
  switch (loss.is) {
    case 'token':
      return 'Discord refused the token. See that the whole of it stands in DISCORD_TOKEN or its file; if it does, make a new one (Discord’s developer portal, Bot, Reset Token), or leave both out to open the practice room.'
    case 'intents':
      return 'Discord does not allow the bot what it asks for (gateway intents). It asks for “Guilds” alone, which is not privileged: look whether the application is what you think it is, and whether it is suspended.'
    case 'shards':
      return 'Discord refused how the connections are numbered. Every process of one bot needs the same number of shards: check CELLWARY_SHARDS, or leave it out.'
    case 'version':
      return 'Discord no longer speaks with this version of the bot. Install a newer one.'
    case 'sessions':
      return `Discord lets the bot start no more sessions until ${loss.at}: it was started too often within a day. It tries again then; find out what stops it so often.`
    case 'strange':
      return 'What answers in Discord’s place does not speak as Discord does. Leave CELLWARY_DISCORD_API out if it is set, and look whether something stands between this machine and Discord.'
    case 'unreachable':
      return `Discord cannot be reached (${loss.why}). Check the network of this machine, whether Discord is down, and CELLWARY_DISCORD_API if it is set; then start again.`
  }
}
