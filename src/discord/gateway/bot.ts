// The bot's connection to Discord: opens what it needs, logs in, routes what comes in, and shuts down in order.
import { Events, Routes, ShardClientUtil, Status } from 'discord.js'
import type { Logger } from 'pino'
import { offerCheck } from '../offers/offer-check.ts'
import { openToAll } from '../posts/open-to-all.ts'
import { type Posts, postsOver } from '../posts/post.ts'
import { leaveServer } from '../privacy/leave-server.ts'
import type { Services } from '../services.ts'
import { DiscordLost, lossOf } from './discord-loss.ts'
import { type Figures, kindOf, noFigures, watchAnswers } from './figures.ts'
import { openClient } from './open-client.ts'
import { registerCommands } from './register-commands.ts'
import { openRunning } from './running.ts'
import type { Sharding } from './sharding.ts'
import { watchConnection } from './watch-connection.ts'

export type Bot = {
  /** The application's id. */
  readonly application: string
  /** Registers the commands where they differ from those that Discord has. Rejects with what Discord answers. */
  register(): Promise<'written' | 'same'>
  /** Resolves when Discord will not have the bot any longer; it has to be closed then. */
  readonly lost: Promise<DiscordLost>
  /** Whether the bot is on a server; `elsewhere` where this process is not connected for it. One that is out of reach is `here`. */
  whereabouts(server: string): 'here' | 'absent' | 'elsewhere'
  /** The connections by their number: whether each is up. */
  shards(): ReadonlyMap<number, boolean>
  /** Stops taking interactions, lets running ones end, disconnects. */
  close(): Promise<void>
}

export type Connection = {
  readonly token: string
  /** The REST base (Discord's own by default): the one seam by which the practice room takes Discord's place. */
  readonly api?: string
  readonly log: Logger
  readonly figures?: Figures
  /** Where other processes make other connections of the same bot. */
  readonly sharding?: Sharding
}

/**
 * Opens the services and everything that handles interactions, then logs in, so that the first click is answered by a bot that is
 * warm; resolves when Discord says ready. Rejects with `DiscordLost` where Discord does not have the bot, and with whatever keeps
 * the services from opening.
 */
export async function openBot(
  openServices: (posts: Posts) => Promise<Services>,
  { token, api, log, figures = noFigures, sharding }: Connection,
): Promise<Bot> {
  const { during, idle } = openRunning()
  const client = openClient(token, api, sharding)
  const lost = watchConnection(client, log, Date.now)
  watchAnswers(client, figures, Date.now)
  const toDiscord = (error: unknown) => new DiscordLost(lossOf(error), { cause: error })
  try {
    const [, services, { route }, manifest, { inEveryLanguage }] = await Promise.all([
      // A token that is refused is told at once.
      client.rest.get(Routes.gatewayBot()).catch(error => Promise.reject(toDiscord(error))),
      openServices(
        postsOver(
          client.rest,
          openToAll(client),
          (server, role) => client.guilds.cache.get(server)?.roles.cache.has(role) ?? true,
        ),
      ),
      import('../router.ts'),
      import('../commands.ts'),
      import('../interaction/in-every-language.ts'),
    ])
    client.on(Events.InteractionCreate, interaction =>
      during(route(services, interaction).then(how => figures.ended(kindOf(interaction), how))),
    )
    // Discord says `unavailable` of a server in an outage; discord.js makes another event of that, on which nothing is deleted.
    client.on(Events.GuildDelete, ({ id }) => during(leaveServer(services, id)))
    client.on(Events.ThreadCreate, (thread, newly) =>
      during(services.queue.inOrder(`offer ${thread.id}`, () => offerCheck(services, thread, newly))),
    )
    const ready = new Promise<void>(resolve => {
      client.once(Events.ClientReady, () => resolve())
    })
    // A connection that Discord has closed while all that was opened is only noticed by the next request.
    const reach = () => client.rest.get(Routes.gatewayBot())
    const login = reach()
      .catch(reach)
      .then(() => client.login(token))
      .catch(error => Promise.reject(toDiscord(error)))
    const connected = Promise.race([Promise.all([login, ready]), lost.then(loss => Promise.reject(loss))])
    // While Discord is waited for.
    const bodies = [...manifest.commands, ...manifest.messageCommands].map(command => inEveryLanguage(command))
    await connected
    const application = client.application?.id ?? ''
    return {
      application,
      lost,
      register: () => registerCommands(client.rest, application, bodies),
      whereabouts(server) {
        if (client.guilds.cache.has(server)) return 'here'
        const shard = ShardClientUtil.shardIdForGuildId(server, client.options.shardCount ?? 1)
        return client.isReady() && client.ws.shards.has(shard) ? 'absent' : 'elsewhere'
      },
      shards: () => new Map(client.ws.shards.map(({ id, status }) => [id, status === Status.Ready])),
      async close() {
        client.removeAllListeners(Events.InteractionCreate)
        client.removeAllListeners(Events.GuildDelete)
        client.removeAllListeners(Events.ThreadCreate)
        client.removeAllListeners(Events.ShardReconnecting)
        await idle()
        await client.destroy()
      },
    }
  } catch (error) {
    await client.destroy().catch(() => undefined)
    throw error
  }
}
