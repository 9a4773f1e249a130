// The bot without a connection: interactions come over HTTP, signed by Discord, and go the same way as those of a connection.
import { type APIInteraction, type Client, Events, type Interaction, Routes } from 'discord.js'
import type { Bot, Connection } from '../gateway/bot.ts'
import { DiscordLost, lossOf } from '../gateway/discord-loss.ts'
import { kindOf, noFigures, watchAnswers } from '../gateway/figures.ts'
import { openClient } from '../gateway/open-client.ts'
import { registerCommands } from '../gateway/register-commands.ts'
import { openRunning } from '../gateway/running.ts'
import { watchConnection } from '../gateway/watch-connection.ts'
import { openToAll } from '../posts/open-to-all.ts'
import { type Posts, postsOver } from '../posts/post.ts'
import type { Services } from '../services.ts'
import { openBringServer } from './bring-server.ts'
import { serveInteractions } from './serve-interactions.ts'
import { openSignatures } from './signature.ts'

/** What discord.js does with an interaction of a connection; its types keep it to itself. */
type Taking = { readonly actions: { readonly InteractionCreate: { handle(interaction: unknown): void } } }

export type Door = { readonly host: string; readonly port: number }
export type HttpBot = Bot & { readonly port: number }

/** Resolves once the port is open. Rejects as `openBot` does, and where the port is taken. */
export async function openHttpBot(
  openServices: (posts: Posts) => Promise<Services>,
  { token, api, log, figures = noFigures }: Omit<Connection, 'sharding'>,
  door: Door,
): Promise<HttpBot> {
  const { during, idle } = openRunning()
  const client = openClient(token, api) as Client<true>
  const lost = watchConnection(client, log, Date.now)
  watchAnswers(client, figures, Date.now)
  const toDiscord = (error: unknown) => Promise.reject(new DiscordLost(lossOf(error), { cause: error }))
  // What is open to all may change at any time, and no connection tells of it.
  const posts = postsOver(client.rest, openToAll({ channels: { cache: new Map() }, rest: client.rest } as never))
  try {
    const [application, user, services, { route }, manifest, { inEveryLanguage }] = await Promise.all([
      client.rest.get(Routes.currentApplication()).catch(toDiscord) as Promise<{ id: string; verify_key: string }>,
      client.users.fetch('@me').catch(toDiscord),
      openServices(posts),
      import('../router.ts'),
      import('../commands.ts'),
      import('../interaction/in-every-language.ts'),
    ])
    // A connection is told at its start who it is.
    Object.assign(client, { user })
    const bringServer = openBringServer(client)
    /** What was wrong before an interaction came to be one: it is answered all the same. */
    const troubles = new Map<string, unknown>()
    client.on(Events.InteractionCreate, (interaction: Interaction) => {
      const trouble = troubles.get(interaction.id)
      troubles.delete(interaction.id)
      during(route(services, interaction, trouble).then(how => figures.ended(kindOf(interaction), how)))
    })
    async function take(interaction: APIInteraction): Promise<void> {
      const { id, guild_id, channel } = interaction
      if (guild_id !== undefined)
        await bringServer(guild_id, channel).catch(error => {
          troubles.set(id, error)
        })
        // Nothing is sold here, and what a person has bought elsewhere is nothing to know.
      ;(client as unknown as Taking).actions.InteractionCreate.handle({ ...interaction, entitlements: [] })
    }
    const server = await serveInteractions(door, {
      isSigned: openSignatures(application.verify_key),
      take: interaction =>
        during(take(interaction as APIInteraction).catch(error => log.error({ err: error }, 'an interaction is none'))),
    })
    log.info({ host: door.host, port: server.port }, 'interactions are taken over HTTP')
    const bodies = [...manifest.commands, ...manifest.messageCommands].map(command => inEveryLanguage(command))
    return {
      application: application.id,
      port: server.port,
      lost,
      register: () => registerCommands(client.rest, application.id, bodies),
      whereabouts: () => 'elsewhere',
      shards: () => new Map(),
      async close() {
        await server.close()
        // What was taken in becomes an interaction first.
        await idle()
        await idle()
        await client.destroy()
      },
    }
  } catch (error) {
    await client.destroy().catch(() => undefined)
    throw error
  }
}
