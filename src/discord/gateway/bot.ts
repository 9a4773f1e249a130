// The bot's connection to Discord: logs in, registers the commands, routes what comes in, and shuts down in order.
import { Client, Events, GatewayIntentBits, ShardClientUtil } from 'discord.js'
import { offerCheck } from '../offers/offer-check.ts'
import { type Posts, postsOver } from '../posts/post.ts'
import { leaveServer } from '../privacy/leave-server.ts'
import type { Services } from '../services.ts'
import { everyoneReads } from '../setup/places.ts'
import { isLongWait } from './long-waits.ts'

export type Bot = {
  /** Resolves once the commands are registered. */
  readonly registered: Promise<void>
  /** Whether the bot is on a server; `elsewhere` where this process is not connected for it. One that is out of reach is `here`. */
  whereabouts(server: string): 'here' | 'absent' | 'elsewhere'
  /** Stops taking interactions, lets running ones end, disconnects. */
  close(): Promise<void>
}

/**
 * Logs in, opens the services meanwhile, and resolves when Discord says ready and the services are open. `api` is the REST base
 * (Discord's own by default): the one seam by which the practice room takes Discord's place. Rejects if the token is refused or
 * the services cannot be opened.
 */
export async function openBot(
  openServices: (posts: Posts) => Promise<Services>,
  options: { readonly token: string; readonly api?: string },
): Promise<Bot> {
  const running = new Set<Promise<void>>()
  const client = new Client({
    intents: [GatewayIntentBits.Guilds],
    allowedMentions: { parse: [] },
    rest: {
      invalidRequestWarningInterval: 100,
      rejectOnRateLimit: isLongWait,
      ...(options.api && { api: options.api }),
    },
  })
  const ready = new Promise<void>(resolve => {
    client.once(Events.ClientReady, () => resolve())
  })
  const login = client.login(options.token)
  // The handlers are loaded while Discord answers; what comes in meanwhile waits for them and for the services.
  const loading = Promise.all([
    openServices(postsOver(client.rest, channel => everyoneReads(client.channels.cache.get(channel)))),
    import('../router.ts'),
    import('../commands.ts'),
    import('../interaction/in-every-language.ts'),
  ])
  client.on(Events.Error, error => void loading.then(([services]) => services.log.error({ err: error }, 'client')))
  const during = (task: Promise<void>) => {
    const work = task.finally(() => running.delete(work))
    running.add(work)
  }
  client.on(Events.InteractionCreate, interaction =>
    during(loading.then(([services, { route }]) => route(services, interaction))),
  )
  // Discord says `unavailable` of a server in an outage; discord.js makes another event of that, on which nothing is deleted.
  client.on(Events.GuildDelete, ({ id }) => during(loading.then(([services]) => leaveServer(services, id))))
  client.on(Events.ThreadCreate, (thread, newly) =>
    during(
      loading.then(([services]) =>
        services.queue.inOrder(`offer ${thread.id}`, () => offerCheck(services, thread, newly)),
      ),
    ),
  )
  const [, [services, , manifest, { inEveryLanguage }]] = await Promise.all([login, loading, ready])
  client.on(Events.ShardResume, shard => services.log.info({ shard }, 'resumed'))
  client.rest.on('invalidRequestWarning', data => services.log.warn(data, 'many refused requests'))
  const all = [...manifest.commands, ...manifest.messageCommands]
  const registered = client.application?.commands.set(all.map(command => inEveryLanguage(command)))
  return {
    registered: Promise.resolve(registered).then(() => undefined),
    whereabouts(server) {
      if (client.guilds.cache.has(server)) return 'here'
      const shard = ShardClientUtil.shardIdForGuildId(server, client.options.shardCount ?? 1)
      return client.isReady() && client.ws.shards.has(shard) ? 'absent' : 'elsewhere'
    },
    async close() {
      client.removeAllListeners(Events.InteractionCreate)
      client.removeAllListeners(Events.GuildDelete)
      client.removeAllListeners(Events.ThreadCreate)
      await Promise.allSettled([...running])
      await client.destroy()
    },
  }
}
