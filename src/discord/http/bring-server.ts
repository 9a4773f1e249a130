// What a process without a connection knows of servers: asked of Discord when somebody there asks for something, and soon forgotten.
import { type APIChannel, type APIGuild, type APIGuildMember, type Client, DiscordAPIError, Routes } from 'discord.js'
import { LRUCache } from 'lru-cache'

/** So long what was told of a server is taken for true, in ms; and of so many servers it is kept. */
const freshFor = 60_000
const mostServers = 2_000

/** The ways of discord.js by which a connection fills its memory; its types keep them to itself. */
type Memory = {
  readonly guilds: { _add(server: object): unknown }
  readonly channels: { _add(channel: object, server: unknown): unknown }
}

/** Channels that are threads (Discord's documentation, "Channel Types"); servers do not list them. */
const threads = [10, 11, 12]

export type BringServer = (server: string, channel: { readonly type?: number } | undefined) => Promise<void>

/**
 * Resolves once what Discord says of a server stands in the client's memory, as a connection would have put it there: that the bot is a
 * member, roles, channels, and what it may do. Rejects where Discord does not answer.
 */
export function openBringServer(client: Client<true>): BringServer {
  const { guilds, channels } = client as unknown as Memory

  function forget(server: string): void {
    for (const id of client.guilds.cache.get(server)?.channels.cache.keys() ?? []) client.channels.cache.delete(id)
    client.guilds.cache.delete(server)
  }

  const ask = (route: `/${string}`) => client.rest.get(route)
  /** Undefined where the bot is no member: Discord says so by 403 or 404. */
  async function asked(server: string): Promise<object | undefined> {
    try {
      const [guild, all, me] = (await Promise.all([
        ask(Routes.guild(server)),
        ask(Routes.guildChannels(server)),
        ask(Routes.guildMember(server, client.user.id)),
      ])) as [APIGuild, APIChannel[], APIGuildMember]
      return { ...guild, channels: all, members: [me], threads: [] }
    } catch (error) {
      if (error instanceof DiscordAPIError && (error.status === 403 || error.status === 404)) return undefined
      throw error
    }
  }

  const known = new LRUCache<string, { readonly member: boolean }>({
    max: mostServers,
    ttl: freshFor,
    dispose: (_, server, why) => {
      if (why === 'evict') forget(server)
    },
    async fetchMethod(server) {
      const found = await asked(server)
      // In one step, so that nobody meets a server that is not there.
      forget(server)
      if (found) guilds._add(found)
      return { member: found !== undefined }
    },
  })

  return async (server, channel) => {
    await known.fetch(server)
    const guild = client.guilds.cache.get(server)
    if (guild && channel && threads.includes(channel.type ?? -1)) channels._add(channel, guild)
  }
}
