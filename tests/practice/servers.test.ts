// Several servers: ready, late, never, with commands alone; people among themselves; people who leave and come back.
import { ApplicationIntegrationType as Install, type Interaction, InteractionContextType as Place } from 'discord.js'
import { afterEach, expect, test } from 'vitest'
import type { FurtherServer, Scenario } from '../../src/practice/scenario.ts'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startTinyBot, type TinyBot } from './tiny-bot.ts'

const other = { id: '900000000000000500', channel: '900000000000000501', role: '900000000000000502' }
const late = { id: '900000000000000600', channel: '900000000000000601' }
const bare = { id: '900000000000000700', channel: '900000000000000701' }
const among = '900000000000000801'
const server = (at: { id: string; channel: string }, more: Partial<FurtherServer> = {}): FurtherServer => ({
  id: at.id,
  name: `Server ${at.id.slice(-3)}`,
  locale: 'de',
  roles: [],
  channels: [{ id: at.channel, name: 'chatter', kind: 'text' }],
  members: { [ids.wren]: [], [ids.tomas]: [] },
  install: 'bot',
  ...more,
})
const everywhere = { contexts: [0, 1, 2], integration_types: [0, 1] }
const commands = [
  { type: 1, name: 'hello', description: 'x', ...everywhere },
  { type: 1, name: 'home', description: 'x', contexts: [0], integration_types: [0] },
]

let standIn: StandIn
let bot: TinyBot
let heard: Interaction | undefined
async function open(more: Partial<Scenario>): Promise<void> {
  standIn = await openStandIn({ scenario: { ...hobbyServer, ...more } })
  const answer = async (interaction: Interaction) => {
    heard = interaction
    if (interaction.isRepliable()) await interaction.reply('hello')
  }
  // A server that never comes would hold the client's start up for fifteen seconds.
  bot = await startTinyBot(standIn, commands as never, answer, { waitGuildTimeout: 20 })
}
afterEach(async () => {
  await bot.stop()
  await standIn.close()
})
const guilds = () => [...bot.client.guilds.cache.values()].map(one => [one.id, one.available])
const hearing = (event: 'guildCreate' | 'guildAvailable' | 'guildUnavailable' | 'guildDelete') =>
  new Promise<string>(resolve => bot.client.once(event, guild => resolve(guild.id)))

test('each server comes with its own channels, roles and members', async () => {
  const role = { id: other.role, name: 'keepers', permissions: (1n << 5n).toString() }
  await open({ servers: [server(other, { roles: [role], members: { [ids.tomas]: [other.role] } })] })
  expect(guilds()).toEqual([
    [ids.server, true],
    [other.id, true],
  ])
  const guild = bot.client.guilds.cache.get(other.id)
  expect(guild?.channels.cache.map(one => one.id)).toEqual([other.channel])
  expect(guild?.roles.cache.map(one => one.name).sort()).toEqual(['@everyone', 'keepers'])
  expect((await guild?.members.fetch(ids.tomas))?.permissions.has('ManageGuild')).toBe(true)
  await expect(guild?.members.fetch(ids.wren)).rejects.toMatchObject({ code: 10007 })
  await standIn.as('Tomas').run('hello', {}, { channel: other.channel })
  expect([heard?.guildId, heard?.guildLocale, heard?.authorizingIntegrationOwners.guildId]).toEqual([
    other.id,
    'de',
    other.id,
  ])
  expect(heard?.memberPermissions?.has('ManageGuild')).toBe(true)
  expect(standIn.as('Wren').sees(other.channel)).toEqual([])
})

test('a late server is named as unavailable and comes when it is told to; one that never comes stays so', async () => {
  await open({ servers: [server(other, { late: true }), server(late, { late: true })] })
  expect(guilds()).toEqual([
    [ids.server, true],
    [other.id, false],
    [late.id, false],
  ])
  const came = hearing('guildAvailable')
  standIn.arrive(other.id)
  expect(await came).toBe(other.id)
  expect(guilds()).toEqual([
    [ids.server, true],
    [other.id, true],
    [late.id, false],
  ])
})

test('one server goes out of reach and comes back while the others stay', async () => {
  await open({ servers: [server(other)] })
  const gone = hearing('guildUnavailable')
  standIn.faults.outage(true, other.id)
  expect(await gone).toBe(other.id)
  expect(guilds()).toEqual([
    [ids.server, true],
    [other.id, false],
  ])
  const back = hearing('guildAvailable')
  standIn.faults.outage(false, other.id)
  expect(await back).toBe(other.id)
})

test('installed with its commands alone: commands work, the bot is no member and cannot post', async () => {
  await open({ servers: [server(bare, { install: 'commands' })] })
  expect(guilds()).toEqual([[ids.server, true]])
  const reply = await standIn.as('Wren').run('home', {}, { channel: bare.channel })
  expect(reply.kind).toBe('message')
  expect([heard?.inGuild(), heard?.inCachedGuild(), heard?.authorizingIntegrationOwners.guildId]).toEqual([
    true,
    false,
    bare.id,
  ])
  await expect(bot.client.rest.get(`/guilds/${bare.id}`)).rejects.toMatchObject({ code: 10004 })
  const post = bot.client.rest.post(`/channels/${bare.channel}/messages`, { body: { content: 'x' } })
  await expect(post).rejects.toMatchObject({ code: 50001 })
})

test('among people: context 2, only for those who have the bot for themselves, seen by all who are in it', async () => {
  const application = { ...hobbyServer.application, installedBy: [ids.wren] }
  await open({ application, conversations: [{ id: among, name: 'two of us', people: [ids.wren, ids.ilse] }] })
  const [wren, ilse, tomas] = ['Wren', 'Ilse', 'Tomas'].map(name => standIn.as(name))
  expect(wren?.commands({ channel: among }).map(one => one.path)).toEqual(['hello'])
  expect(ilse?.commands({ channel: among })).toEqual([])
  await wren?.run('hello', {}, { channel: among })
  expect([heard?.context, heard?.guildId, heard?.member]).toEqual([Place.PrivateChannel, null, null])
  const owners = heard?.authorizingIntegrationOwners
  expect([owners?.[Install.UserInstall], owners?.[Install.GuildInstall]]).toEqual([ids.wren, undefined])
  expect(ilse?.sees(among)).toHaveLength(1)
  expect(tomas?.sees(among)).toEqual([])
  await expect(bot.client.rest.get(`/channels/${among}/messages`)).rejects.toMatchObject({ code: 50001 })
})

test('who leaves sees nothing and is no member; who comes back has no roles', async () => {
  await open({})
  const guild = bot.client.guilds.cache.get(ids.server)
  standIn.say('Ilse', ids.bench, 'before')
  standIn.leave('Ilse')
  expect(standIn.as('Ilse').sees(ids.bench)).toEqual([])
  await expect(standIn.as('Ilse').run('hello', {}, { channel: ids.bench })).rejects.toThrow('not offered')
  await expect(guild?.members.fetch({ user: ids.ilse, force: true })).rejects.toMatchObject({ code: 10007 })
  expect(standIn.messages(ids.bench)).toHaveLength(1)
  standIn.join('Ilse')
  const back = await guild?.members.fetch({ user: ids.ilse, force: true })
  expect(back?.roles.cache.map(one => one.id)).toEqual([ids.server])
})
