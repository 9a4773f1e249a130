// The bot in this process, connected to the small gateway, and interactions as Discord sends them.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readConfig } from '../../src/bin/config.ts'
import { type OpenedServices, openServices } from '../../src/bin/open-services.ts'
import { type Bot, openBot } from '../../src/discord/gateway/bot.ts'
import { openLog } from '../../src/discord/gateway/logger.ts'
import type { Services } from '../../src/discord/services.ts'
import {
  applicationId,
  botToken,
  channelId,
  type Json,
  openSmallGateway,
  personId,
  type SmallGateway,
  serverId,
} from './small-gateway.ts'

/** What people do, as Discord sends it; each resolves with the first answer. */
export type Hands = {
  command(where: Json, name: string, options?: readonly Json[]): Promise<Json>
  press(where: Json, customId: string, more?: Json): Promise<Json>
  /** A form sent in; `fields`: what was typed into each, or who was chosen in it, by its id. */
  send(where: Json, customId: string, fields: Readonly<Record<string, string | readonly string[]>>): Promise<Json>
  suggest(where: Json, name: string, typed: string): Promise<Json>
}

export type OpenedBot = Hands & {
  readonly discord: SmallGateway
  readonly services: Services
  readonly whereabouts: Bot['whereabouts']
  /** The folder of its data, which is gone once it is closed; unless it was handed in. */
  readonly data: string
  close(): Promise<void>
}

/** `folder`: data that is there already, and stays, as does a `gateway` that others are connected to. `write` is handed what the bot logs. */
export async function openSmallBot(
  env: Readonly<Record<string, string>> = {},
  folder?: string,
  gateway?: SmallGateway,
  write?: (line: string) => void,
): Promise<OpenedBot> {
  const discord = gateway ?? (await openSmallGateway())
  const data = folder ?? (await mkdtemp(join(tmpdir(), 'cellwary-small-')))
  const log = write ? openLog('error', { write }) : openLog('silent')
  const usual = { DISCORD_TOKEN: botToken, CELLWARY_FAIR_USE: 'off', CELLWARY_PICTURES: 'off' }
  const read = readConfig({ ...usual, ...env, CELLWARY_DATA: data })
  if (!read.ok) throw new Error(read.sentences.join())
  let opened: OpenedServices | undefined
  const bot = await openBot(
    async posts => {
      opened = await openServices(read.config, log, posts)
      return opened.services
    },
    {
      token: botToken,
      api: discord.api,
      log,
      ...(read.config.shards && {
        sharding: { ...read.config.shards, turn: (...asked) => (opened as OpenedServices).identifyTurn(...asked) },
      }),
    },
  )
  const { services, close } = opened as unknown as OpenedServices
  return {
    discord,
    services,
    whereabouts: bot.whereabouts,
    data,
    ...handsOn(discord),
    async close() {
      await bot.close()
      await close()
      if (gateway === undefined) await discord.close()
      if (folder === undefined) await rm(data, { recursive: true, force: true })
    },
  }
}

export function handsOn(discord: SmallGateway): Hands {
  const common = (where: Json): Json => ({
    ...where,
    channel_id: channelId,
    locale: 'en-US',
    app_permissions: '0',
    entitlements: [],
    attachment_size_limit: 10_485_760,
  })
  const data_ = (name: string, options: readonly Json[]) => ({ id: '900000000000000400', name, type: 1, options })
  const message = {
    id: '900000000000000500',
    channel_id: channelId,
    flags: 64,
    author: { id: applicationId, username: 'small', discriminator: '0', bot: true },
    content: '',
    timestamp: '2026-11-29T00:00:00Z',
    ...Object.fromEntries(['components', 'attachments', 'embeds', 'mentions', 'mention_roles'].map(key => [key, []])),
  }
  return {
    command: (where, name, options = []) => discord.interact({ ...common(where), type: 2, data: data_(name, options) }),
    press: (where, custom_id, more = {}) =>
      discord.interact({ ...common(where), type: 3, message, data: { custom_id, component_type: 2, ...more } }),
    send: (where, custom_id, fields) =>
      discord.interact({
        ...common(where),
        type: 5,
        message,
        data: {
          custom_id,
          components: Object.entries(fields).map(([id, value], i) => ({
            type: 18,
            id: i,
            component:
              typeof value === 'string'
                ? { type: 4, id: i + 100, custom_id: id, value }
                : { type: 7, id: i + 100, custom_id: id, values: value },
          })),
        },
      }),
    suggest: (where, name, typed) =>
      discord.interact({
        ...common(where),
        type: 4,
        data: data_(name, [{ name: 'question', type: 3, value: typed, focused: true }]),
      }),
  }
}

/** Somebody in the server that has the bot; `permissions`: what Discord says they may do in the channel. */
export const member = (id: string = personId, permissions = '2048'): Json => ({
  user: { id, username: `p${id.slice(-4)}`, discriminator: '0', global_name: null, avatar: null },
  roles: [],
  joined_at: '2026-01-01T00:00:00Z',
  permissions,
  deaf: false,
  mute: false,
  flags: 0,
})

export const inServer = (who: Json = member(), server: string = serverId): Json => ({
  context: 0,
  guild_id: server,
  member: who,
  channel: { id: channelId, type: 0, guild_id: server },
  authorizing_integration_owners: { 0: server },
})

export type Part = Json & {
  readonly custom_id?: string
  readonly label?: string
  readonly content?: string
  readonly components?: Part[]
}
const partsOf = (part: Part): Part[] => [part, ...(part.components ?? []).flatMap(partsOf)]
export const shown = (answer: Json): Part[] =>
  (((answer['data'] as Json)?.['components'] ?? []) as Part[]).flatMap(partsOf)
export const textOf = (answer: Json): string =>
  shown(answer)
    .map(one => one.content ?? '')
    .join('\n')
/** The id of the first component that ends so. */
export const idOf = (answer: Json, ending: string): string => {
  const found = shown(answer).find(one => one.custom_id?.endsWith(ending))?.custom_id
  if (found === undefined) throw new Error(`nothing here ends with ${ending}: ${textOf(answer)}`)
  return found
}
/** What the first screen would ask, so that it is a question at once. */
export const straight: readonly Json[] = [
  { name: 'family', type: 3, value: '-' },
  { name: 'depth', type: 3, value: 'full' },
]
export const startCheck: readonly Json[] = [{ name: 'start', type: 1, options: straight }]
