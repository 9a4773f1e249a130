// A tiny real discord.js bot, handlers by name, that the tests and the page's look run against the stand-in.
import {
  type APIApplicationCommand,
  Client,
  type ClientOptions,
  Events,
  GatewayIntentBits,
  type Interaction,
  Routes,
} from 'discord.js'
import type { StandIn } from '../../src/practice/stand-in.ts'

export type Handler = (interaction: Interaction) => Promise<unknown>

export interface TinyBot {
  readonly client: Client<true>
  /** Every interaction id the bot received, in order. */
  readonly heard: string[]
  /** Errors its handlers threw. */
  readonly errors: unknown[]
  /** Resolves when no handler is at work. */
  settled(): Promise<void>
  stop(): Promise<void>
}

/** Logs a bot in, writes its commands, and hands every interaction to `handler`. */
export async function startTinyBot(
  standIn: StandIn,
  commands: readonly Partial<APIApplicationCommand>[],
  handler: Handler,
  options: Partial<ClientOptions> = {},
): Promise<TinyBot> {
  const heard: string[] = []
  const errors: unknown[] = []
  const working = new Set<Promise<unknown>>()
  const { rest, ...others } = options
  const client = new Client({
    intents: [GatewayIntentBits.Guilds],
    // Several sessions in one process may identify at once here; Discord allows 16 at most.
    ws: { buildIdentifyThrottler: async () => ({ waitForIdentify: async () => {} }) } as NonNullable<
      ClientOptions['ws']
    >,
    ...others,
    rest: { api: standIn.apiUrl, ...rest },
  })
  client.on(Events.InteractionCreate, interaction => {
    heard.push(interaction.id)
    const work = handler(interaction)
      .catch(error => errors.push(error))
      .finally(() => working.delete(work))
    working.add(work)
  })
  const ready = new Promise(resolve => client.once(Events.ClientReady, resolve))
  await client.login(standIn.botToken)
  await ready
  await client.rest.put(Routes.applicationCommands(client.application?.id ?? ''), { body: commands })
  return {
    client: client as Client<true>,
    heard,
    errors,
    async settled() {
      while (working.size > 0) await Promise.all(working)
    },
    stop: () => client.destroy(),
  }
}
