// Watches the connection to Discord: says in the log when it breaks and comes back, and tells when it is over for good.
import { type Client, Events, RESTEvents } from 'discord.js'
import type { Logger } from 'pino'
import { DiscordLost, lossOfClose } from './discord-loss.ts'

/** Resolves when Discord will not have the bot any longer: nothing of it comes back by itself. */
export function watchConnection(client: Client, log: Logger, now: () => number): Promise<DiscordLost> {
  const lost = Promise.withResolvers<DiscordLost>()
  /** Since when each shard is away, in ms. */
  const away = new Map<number, number>()
  const back = (shard: number, how: 'resumed' | 'new session') => {
    const since = away.get(shard)
    away.delete(shard)
    if (since !== undefined) log.info({ shard, how, away_ms: now() - since }, 'connected again')
  }
  client.on(Events.ShardDisconnect, ({ code }, shard) => {
    log.warn({ shard, code }, 'disconnected for good')
    lost.resolve(new DiscordLost(lossOfClose(code)))
  })
  client.on(Events.ShardReconnecting, shard => {
    if (away.has(shard)) return
    away.set(shard, now())
    log.warn({ shard }, 'disconnected; connecting again')
  })
  client.on(Events.ShardResume, shard => back(shard, 'resumed'))
  client.on(Events.ShardReady, shard => back(shard, 'new session'))
  client.on(Events.ShardError, (err, shard) => log.warn({ err, shard }, 'the connection has a fault'))
  client.on(Events.Error, err => log.error({ err }, 'client'))
  client.rest.on('invalidRequestWarning', data => log.warn(data, 'many refused requests'))
  client.rest.on(RESTEvents.Response, ({ data }, { status }) => {
    // discord.js drops a token that was refused once, and posts nothing any more.
    if (status === 401 && data.auth) lost.resolve(new DiscordLost({ is: 'token' }))
  })
  return lost.promise
}
