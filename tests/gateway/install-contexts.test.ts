// A check from its start to its verdict, driven over a gateway that shares nothing with the stand-in, however the bot was installed.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { readConfig } from '../../src/bin/config.ts'
import { type OpenedServices, openServices } from '../../src/bin/open-services.ts'
import { type Bot, openBot } from '../../src/discord/gateway/bot.ts'
import { openLog } from '../../src/discord/gateway/logger.ts'
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

let discord: SmallGateway
let bot: Bot
let opened: OpenedServices | undefined
let data: string

beforeAll(async () => {
  discord = await openSmallGateway()
  data = await mkdtemp(join(tmpdir(), 'cellwary-contexts-'))
  const log = openLog('silent')
  const read = readConfig({ CELLWARY_DATA: data, CELLWARY_FAIR_USE: 'off' })
  if (!read.ok) throw new Error(read.sentences.join())
  bot = await openBot(
    async posts => {
      opened = await openServices(read.config, log, posts)
      return opened.services
    },
    { token: botToken, api: discord.api, log },
  )
})
afterAll(async () => {
  await bot.close()
  await opened?.close()
  await discord.close()
  await rm(data, { recursive: true, force: true })
})

const user = { id: personId, username: 'ada', discriminator: '0', global_name: 'Ada', avatar: null }
const member = {
  user,
  roles: [],
  joined_at: '2026-01-01T00:00:00Z',
  permissions: '0',
  deaf: false,
  mute: false,
  flags: 0,
}
const elsewhere = '900000000000000999'

/** How Discord describes where an interaction comes from. */
const contexts: Readonly<Record<string, Json>> = {
  'a server that has the bot': {
    context: 0,
    guild_id: serverId,
    member,
    channel: { id: channelId, type: 0, guild_id: serverId },
    authorizing_integration_owners: { 0: serverId },
  },
  'a server that has its commands alone': {
    context: 0,
    guild_id: elsewhere,
    guild: { id: elsewhere, locale: 'en-US', features: [] },
    member,
    channel: { id: channelId, type: 0, guild_id: elsewhere },
    authorizing_integration_owners: { 0: elsewhere },
  },
  'a foreign server, brought along by somebody': {
    context: 0,
    guild_id: elsewhere,
    guild: { id: elsewhere, locale: 'en-US', features: [] },
    member,
    channel: { id: channelId, type: 0, guild_id: elsewhere },
    authorizing_integration_owners: { 1: personId },
  },
  'a conversation with the bot': {
    context: 1,
    user,
    channel: { id: channelId, type: 1 },
    authorizing_integration_owners: { 0: '0' },
  },
  'a conversation of two people': {
    context: 2,
    user,
    channel: { id: channelId, type: 3 },
    authorizing_integration_owners: { 1: personId },
  },
}

type Part = Json & {
  readonly custom_id?: string
  readonly label?: string
  readonly content?: string
  readonly components?: Part[]
}
const partsOf = (part: Part): Part[] => [part, ...(part.components ?? []).flatMap(partsOf)]
const shown = (answer: Json): Part[] => ((answer['data'] as Json)['components'] as Part[]).flatMap(partsOf)
const textOf = (answer: Json): string =>
  shown(answer)
    .map(one => one.content ?? '')
    .join('\n')

const isVerdict = (answer: Json): boolean => shown(answer).some(one => one.custom_id?.endsWith('.close'))

const common = (where: Json): Json => ({
  ...where,
  channel_id: channelId,
  locale: 'en-US',
  app_permissions: '0',
  entitlements: [],
  attachment_size_limit: 10_485_760,
})
const command = (where: Json, name: string, options: Json[] = []): Promise<Json> =>
  discord.interact({ ...common(where), type: 2, data: { id: '900000000000000400', name, type: 1, options } })
const press = (where: Json, customId: string): Promise<Json> =>
  discord.interact({
    ...common(where),
    type: 3,
    message: {
      id: '900000000000000500',
      channel_id: channelId,
      flags: 64,
      author: { ...user, id: applicationId },
      components: [],
      attachments: [],
      embeds: [],
      mentions: [],
      mention_roles: [],
      content: '',
      timestamp: '2026-11-29T00:00:00Z',
    },
    data: { custom_id: customId, component_type: 2 },
  })

describe.each(Object.entries(contexts))('in %s', (name, where) => {
  test('a check goes from its start to a verdict', async () => {
    let answer = await command(where, 'check', [
      { name: 'start', type: 1, options: [{ name: 'depth', type: 3, value: 'quick' }] },
    ])
    for (let i = 0; i < 60 && !isVerdict(answer); i++) {
      const next = shown(answer).find(one => /\.(unsure|consent\.\w+\.no)$/.test(one.custom_id ?? ''))
      if (!next?.custom_id) break
      answer = await press(where, next.custom_id)
    }
    expect(isVerdict(answer)).toBe(true)
    expect(textOf(answer)).toMatch(/Do not use/i)
  })

  test('setting up and the counts are for members of the bot’s own servers', async () => {
    const answer = textOf(await command(where, 'setup'))
    if (name === 'a server that has the bot') expect(answer).toMatch(/Only people who may manage this server/)
    else if (where['guild_id']) expect(answer).toMatch(/not a member of this server.*client_id=900000000000000001/)
    else expect(answer).toMatch(/Only people who may manage this server/)
  })
})
