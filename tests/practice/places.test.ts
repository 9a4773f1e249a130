// Channels, threads, forum posts, direct conversations and pings: who may do what where.
import { ChannelType, type TextChannel, ThreadAutoArchiveDuration } from 'discord.js'
import { afterEach, beforeEach, expect, test } from 'vitest'
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

const channel = (id: string) => bot.client.channels.cache.get(id) as TextChannel

test('a channel the bot may not see answers 50001, one it may not write in 50013', async () => {
  await expect(
    bot.client.rest.post(`/channels/${ids.closed}/messages`, { body: { content: 'x' } }),
  ).rejects.toMatchObject({ code: 50001 })
  await expect(channel(ids.quiet).send('x')).rejects.toMatchObject({ code: 50013 })
  await expect(channel(ids.quiet).threads.create({ name: 't', type: ChannelType.PublicThread })).rejects.toMatchObject({
    code: 50013,
  })
})

test('a person does not see a channel that is shut to them', () => {
  standIn.say('Tomas', ids.closed, 'just us')
  expect(
    standIn
      .as('Tomas')
      .sees()
      .map(one => one.content),
  ).toEqual(['just us'])
  expect(standIn.as('Wren').sees()).toEqual([])
  expect(() => standIn.say('Wren', ids.closed, 'me too')).toThrow('may not write')
})

test('a direct message arrives, or meets 50007 where the person takes none', async () => {
  const wren = await bot.client.users.fetch(ids.wren)
  await wren.send('hello there')
  expect(
    standIn
      .as('Wren')
      .sees(standIn.directId('Wren'))
      .map(one => one.content),
  ).toEqual(['hello there'])
  const tomas = await bot.client.users.fetch(ids.tomas)
  await expect(tomas.send('hello')).rejects.toMatchObject({ code: 50007 })
})

test('a thread is opened from a message once, closed, and refuses edits while archived', async () => {
  const message = await channel(ids.bench).send('a topic')
  const thread = await message.startThread({ name: 'talk', autoArchiveDuration: ThreadAutoArchiveDuration.OneDay })
  expect(thread.id).toBe(message.id)
  await expect(message.startThread({ name: 'again' })).rejects.toMatchObject({ code: 160004 })
  const inside = await thread.send('inside')
  await thread.setLocked(true)
  await thread.setArchived(true)
  await expect(inside.edit('changed')).rejects.toMatchObject({ code: 50083 })
  await expect(thread.send('more')).rejects.toMatchObject({ code: 50083 })
  await thread.setArchived(false)
  await thread.setLocked(false)
  await thread.send('open again')
  expect(standIn.messages(thread.id).map(one => one.content)).toEqual(['inside', 'open again'])
})

test('a forum takes posts and no plain messages', async () => {
  const forum = await bot.client.channels.fetch(ids.posts)
  if (forum?.type !== ChannelType.GuildForum) throw new Error('not a forum')
  const tag = forum.availableTags[0]?.id ?? ''
  const post = await forum.threads.create({
    name: 'Is it real?',
    message: { content: 'first words' },
    appliedTags: [tag],
  })
  expect(standIn.messages(post.id).map(one => one.content)).toEqual(['first words'])
  expect(post.appliedTags).toEqual([tag])
  await expect(
    bot.client.rest.post(`/channels/${ids.posts}/messages`, { body: { content: 'x' } }),
  ).rejects.toMatchObject({ code: 50008 })
})

test('whom a message pings follows allowed_mentions', async () => {
  const content = `<@${ids.wren}> <@&${ids.helper}> @everyone \`<@${ids.ilse}>\``
  await channel(ids.bench).send(content)
  await channel(ids.bench).send({ content, allowedMentions: { parse: [] } })
  await channel(ids.bench).send({ content, allowedMentions: { users: [ids.ilse] } })
  expect(standIn.messages(ids.bench).map(one => one.pinged.people)).toEqual([[ids.wren], [], []])
  expect(standIn.messages(ids.bench).some(one => one.pinged.everyone)).toBe(false)
})

test('the bot edits and deletes its own messages and not those of people', async () => {
  const own = await channel(ids.bench).send('one')
  await own.edit('two')
  expect(standIn.messages(ids.bench).map(one => one.content)).toEqual(['two'])
  const said = standIn.say('Wren', ids.bench, 'mine')
  const path = `/channels/${ids.bench}/messages/${said.id}` as const
  await expect(bot.client.rest.patch(path, { body: { content: 'x' } })).rejects.toMatchObject({ code: 50005 })
  await expect(bot.client.rest.delete(path)).rejects.toMatchObject({ code: 50013 })
  await own.delete()
  await expect(own.edit('x')).rejects.toMatchObject({ code: 10008 })
})

test('the usual look-ups are answered', async () => {
  const guild = await bot.client.guilds.fetch({ guild: ids.server, force: true })
  expect((await guild.members.fetch({ user: ids.ilse, force: true })).roles.cache.has(ids.helper)).toBe(true)
  expect((await guild.roles.fetch()).size).toBe(3)
  expect((await guild.channels.fetch()).has(ids.bench)).toBe(true)
  expect((await bot.client.application.fetch()).id).toBe(ids.application)
  expect((await channel(ids.bench).messages.fetch()).size).toBe(0)
  await expect(bot.client.users.fetch('900000000000000099')).rejects.toMatchObject({ code: 10013 })
  await expect(bot.client.rest.get('/nowhere')).rejects.toMatchObject({ status: 404 })
})
