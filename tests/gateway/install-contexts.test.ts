// A check from its start to its verdict, driven over a gateway that shares nothing with the stand-in, however the bot was installed.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { member, type OpenedBot, openSmallBot, shown, textOf } from './open-bot.ts'
import { channelId, type Json, personId, serverId } from './small-gateway.ts'

let bot: OpenedBot
beforeAll(async () => {
  bot = await openSmallBot({ CELLWARY_PICTURES: 'on' })
})
afterAll(() => bot.close())

const user = { id: personId, username: 'ada', discriminator: '0', global_name: 'Ada', avatar: null }
const elsewhere = '900000000000000999'

/** How Discord describes where an interaction comes from. */
const contexts: Readonly<Record<string, Json>> = {
  'a server that has the bot': {
    context: 0,
    guild_id: serverId,
    member: member(),
    channel: { id: channelId, type: 0, guild_id: serverId },
    authorizing_integration_owners: { 0: serverId },
  },
  'a server that has its commands alone': {
    context: 0,
    guild_id: elsewhere,
    guild: { id: elsewhere, locale: 'en-US', features: [] },
    member: member(),
    channel: { id: channelId, type: 0, guild_id: elsewhere },
    authorizing_integration_owners: { 0: elsewhere },
  },
  'a foreign server, brought along by somebody': {
    context: 0,
    guild_id: elsewhere,
    guild: { id: elsewhere, locale: 'en-US', features: [] },
    member: member(),
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

const isVerdict = (answer: Json): boolean => shown(answer).some(one => one.custom_id?.endsWith('.close'))

describe.each(Object.entries(contexts))('in %s', (name, where) => {
  test('a check goes from its start to a verdict', async () => {
    let answer = await bot.command(where, 'check', [
      { name: 'start', type: 1, options: [{ name: 'depth', type: 3, value: 'quick' }] },
    ])
    for (let i = 0; i < 60 && !isVerdict(answer); i++) {
      const next = shown(answer).find(one => /\.(unsure|consent\.\w+\.no)$/.test(one.custom_id ?? ''))
      if (!next?.custom_id) break
      answer = await bot.press(where, next.custom_id)
    }
    expect(isVerdict(answer)).toBe(true)
    expect(textOf(answer)).toMatch(/Do not use/i)
  })

  test('setting up and the counts are for members of the bot’s own servers', async () => {
    const answer = textOf(await bot.command(where, 'setup'))
    if (name === 'a server that has the bot') expect(answer).toMatch(/Only people who may manage this server/)
    else if (where['guild_id']) expect(answer).toMatch(/not a member of this server.*client_id=900000000000000001/)
    else expect(answer).toMatch(/Only people who may manage this server/)
  })
})
