// What a server's owner changes meanwhile reaches the bot: roles and channels that go, rights that become others; and what menus list.
import { ChannelType, ComponentType, Events, PermissionFlagsBits, SelectMenuDefaultValueType } from 'discord.js'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { menus } from '../../src/practice/seen.ts'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startTinyBot, type TinyBot } from './tiny-bot.ts'

let standIn: StandIn
let bot: TinyBot
beforeEach(async () => {
  standIn = await openStandIn({ scenario: hobbyServer })
  bot = await startTinyBot(standIn, [], async () => {})
})
afterEach(async () => {
  await bot.stop()
  await standIn.close()
})
const heard = (event: Events) => new Promise<unknown>(resolve => bot.client.once(event as string, resolve))
const post = (body: object) => bot.client.rest.post(`/channels/${ids.bench}/messages`, { body })

test('a role that goes is gone for the bot, for its members and for look-ups', async () => {
  const told = heard(Events.GuildRoleDelete)
  standIn.removeRole(ids.moderator)
  await told
  const guild = bot.client.guilds.cache.get(ids.server)
  expect(guild?.roles.cache.has(ids.moderator)).toBe(false)
  expect((await guild?.members.fetch({ user: ids.tomas, force: true }))?.roles.cache.has(ids.moderator)).toBe(false)
  await expect(bot.client.rest.get(`/guilds/${ids.server}/roles/${ids.moderator}`)).rejects.toMatchObject({
    code: 10011,
  })
})

test('a channel that goes takes its messages and threads with it', async () => {
  const thread = (await bot.client.rest.post(`/channels/${ids.bench}/threads`, {
    body: { name: 't', type: ChannelType.PublicThread },
  })) as { id: string }
  standIn.say('Wren', ids.bench, 'hello')
  const told = heard(Events.ChannelDelete)
  standIn.removeChannel(ids.bench)
  await told
  expect(standIn.messages(ids.bench)).toEqual([])
  for (const id of [ids.bench, thread.id])
    await expect(bot.client.rest.get(`/channels/${id}`)).rejects.toMatchObject({ code: 10003 })
})

test('other rights are told, and hold', async () => {
  const told = heard(Events.ChannelUpdate)
  standIn.changeRights(ids.bench, { forbid: [{ who: 'bot', what: ['send'] }] })
  await told
  const channel = bot.client.guilds.cache.get(ids.server)?.channels.cache.get(ids.bench)
  expect(channel?.permissionsFor(ids.application)?.has(PermissionFlagsBits.SendMessages)).toBe(false)
  await expect(post({ content: 'x' })).rejects.toMatchObject({ code: 50013 })
  await expect(bot.client.rest.post(`/channels/${ids.bench}/typing`)).rejects.toMatchObject({ code: 50013 })
})

test('a menu of channels lists the kinds it names, and shows what is chosen beforehand', async () => {
  const menu = {
    type: ComponentType.ChannelSelect,
    custom_id: 'm',
    channel_types: [ChannelType.GuildForum],
    default_values: [{ id: ids.posts, type: SelectMenuDefaultValueType.Channel }],
  }
  const row = (part: object) => ({
    flags: 1 << 15,
    components: [{ type: ComponentType.ActionRow, components: [part] }],
  })
  const { id } = (await post(row(menu))) as { id: string }
  expect(menus(standIn.message(id) ?? { components: [] })[0]?.chosen).toEqual([ids.posts])
  await expect(standIn.as('Wren').choose(id, 'm', [ids.bench])).rejects.toThrow('not among the channels')
  const two = { ...menu, default_values: [ids.posts, ids.bench].map(one => ({ id: one, type: 'channel' })) }
  await expect(post(row(two))).rejects.toMatchObject({ code: 50035 })
})
