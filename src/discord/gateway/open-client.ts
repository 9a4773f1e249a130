// The client of discord.js as the bot needs it: one intent, nobody pinged unasked, and nothing kept in memory that nobody reads.
import {
  type CacheFactory,
  type CacheWithLimitsOptions,
  Client,
  GatewayIntentBits,
  LimitedCollection,
  Options,
} from 'discord.js'
import { isLongWait } from './long-waits.ts'
import { inTurn, type Sharding } from './sharding.ts'

/** A server that Discord announces and never sends makes the bot deaf for so long at most, in ms. */
const waitForServers = 2_000

/** Of members and users the bot reads itself alone; whoever interacts comes with the interaction. */
const itself = { maxSize: 0, keepOverLimit: (one: { id: string; client: Client }) => one.id === one.client.user?.id }

/** What is kept in memory: servers, channels, roles and permissions, which rights are read from. */
const kept: CacheWithLimitsOptions = {
  ApplicationCommandManager: 0,
  AutoModerationRuleManager: 0,
  BaseGuildEmojiManager: 0,
  GuildBanManager: 0,
  GuildEmojiManager: 0,
  GuildInviteManager: 0,
  GuildMemberManager: itself,
  GuildMessageManager: 0,
  GuildScheduledEventManager: 0,
  GuildStickerManager: 0,
  DMMessageManager: 0,
  MessageManager: 0,
  PresenceManager: 0,
  ReactionManager: 0,
  ReactionUserManager: 0,
  StageInstanceManager: 0,
  ThreadMemberManager: 0,
  UserManager: itself,
  VoiceStateManager: 0,
}

const keepsNothing = new Set(Object.keys(kept).filter(name => kept[name as keyof typeof kept] === 0))

/** Caches as `kept` has them. One that keeps nothing is the same for all: every channel of every server has several of those. */
function makeCaches(): CacheFactory {
  const limited = Options.cacheWithLimits(kept)
  const nothing = new LimitedCollection<never, never>({ maxSize: 0 })
  return (...[type, holds, manager]) =>
    keepsNothing.has(manager.name) || keepsNothing.has(type.name) ? nothing : limited(type, holds, manager)
}

/** `api`: the REST base, Discord's own by default; `sharding`: where other processes make other connections. */
export const openClient = (token: string, api?: string, sharding?: Sharding): Client => {
  const client = new Client({
    intents: [GatewayIntentBits.Guilds],
    allowedMentions: { parse: [] },
    // As many connections as Discord advises, or a part of a fixed number of them; one serves up to 2,500 servers.
    ...(sharding
      ? { shards: sharding.ids, shardCount: sharding.count, ws: { buildIdentifyThrottler: inTurn(sharding) } }
      : { shards: 'auto' as const }),
    waitGuildTimeout: waitForServers,
    makeCache: makeCaches(),
    rest: { invalidRequestWarningInterval: 100, rejectOnRateLimit: isLongWait, ...(api && { api }) },
  })
  client.rest.setToken(token)
  return client
}
