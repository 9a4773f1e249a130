// The bot's connection to Discord: logs in, registers the commands, routes what comes in, and shuts down in order.
import { Client, Events, GatewayIntentBits } from 'discord.js'
import { commands } from './commands/manifest.ts'
import type { Desk } from './desk.ts'
import { route } from './router.ts'
import { sayIn } from './words/say.ts'

export type Bot = {
  /** Resolves once the commands are registered. */
  readonly registered: Promise<void>
  /** Stops taking interactions, lets running ones end, disconnects. */
  close(): Promise<void>
}

/**
 * Logs in and resolves when Discord says ready. `api` is the REST base (Discord's own by default): the one seam by which the
 * practice room takes Discord's place. Rejects if the token is refused.
 */
export async function openBot(desk: Desk, options: { readonly token: string; readonly api?: string }): Promise<Bot> {
  const running = new Set<Promise<void>>()
  const client = new Client({
    intents: [GatewayIntentBits.Guilds],
    allowedMentions: { parse: [] },
    rest: { invalidRequestWarningInterval: 100, ...(options.api && { api: options.api }) },
  })
  client.on(Events.InteractionCreate, interaction => {
    const work = route(desk, interaction).finally(() => running.delete(work))
    running.add(work)
  })
  client.on(Events.Error, error => desk.log.error({ err: error }, 'client'))
  client.on(Events.ShardResume, shard => desk.log.info({ shard }, 'resumed'))
  client.rest.on('invalidRequestWarning', data => desk.log.warn(data, 'many refused requests'))
  const ready = new Promise<void>(resolve => {
    client.once(Events.ClientReady, () => resolve())
  })
  await client.login(options.token)
  await ready
  const say = sayIn('en')
  const registered = desk.lanes.inBackground(async () => {
    await client.application?.commands.set(commands.map(command => command.describe(say)))
  })
  return {
    registered,
    async close() {
      client.removeAllListeners(Events.InteractionCreate)
      await Promise.allSettled([...running])
      await client.destroy()
    },
  }
}
