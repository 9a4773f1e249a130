// Posts that people open in a forum, as the bot hears of them; and threads it is only brought into.
import { type AnyThreadChannel, Events } from 'discord.js'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startTinyBot, type TinyBot } from './tiny-bot.ts'

let standIn: StandIn
let bot: TinyBot
const heard: [AnyThreadChannel, boolean][] = []
beforeEach(async () => {
  heard.length = 0
  standIn = await openStandIn({ scenario: hobbyServer })
  bot = await startTinyBot(standIn, [], async () => {})
  bot.client.on(Events.ThreadCreate, (thread, newly) => heard.push([thread, newly]))
})
afterEach(async () => {
  await bot.stop()
  await standIn.close()
})
const next = () => new Promise<unknown>(resolve => bot.client.once(Events.ThreadCreate, resolve))

test('a new post comes with its forum, its tags and its person, and its first message carries its id', async () => {
  const told = next()
  const id = standIn.as('Wren').post(ids.posts, { title: 'Is it real?', text: 'A cell from a stall', tags: ['open'] })
  await told
  const [[thread, newly] = []] = heard
  expect(thread).toMatchObject({ id, name: 'Is it real?', parentId: ids.posts, ownerId: ids.wren })
  const forum = bot.client.channels.cache.get(ids.posts)
  const tags = forum && 'availableTags' in forum ? forum.availableTags : []
  expect(thread?.appliedTags).toEqual([tags.find(one => one.name === 'open')?.id])
  expect(newly).toBe(true)
  expect(standIn.messages(id).map(one => [one.id, one.content])).toEqual([[id, 'A cell from a stall']])
})

test('a thread the bot is brought into is told as well, but not as new', async () => {
  const id = standIn.as('Wren').post(ids.posts, { title: 'Old', text: 'old', tags: [] })
  const again = await startTinyBot(standIn, [], async () => {})
  const late: boolean[] = []
  again.client.channels.cache.delete(id)
  const told = new Promise<void>(resolve =>
    again.client.once(Events.ThreadCreate, (_, newly) => {
      late.push(newly)
      resolve()
    }),
  )
  await bot.client.rest.put(`/channels/${id}/thread-members/@me`)
  await told
  expect(late).toEqual([false])
  await again.stop()
})

test('what a client would not let a person post is refused in plain words', () => {
  const wren = standIn.as('Wren')
  expect(() => wren.post(ids.bench, { title: 't', text: 'x' })).toThrow('is not a forum')
  expect(() => wren.post(ids.posts, { title: ' ', text: 'x' })).toThrow('needs a title')
  expect(() => wren.post(ids.posts, { title: 't', text: '' })).toThrow('needs some text')
  expect(() => wren.post(ids.posts, { title: 't', text: 'x', tags: ['nope'] })).toThrow('has no tag')
  expect(() => wren.say('plain', { channel: ids.posts })).toThrow('may not write')
})

test('a post the bot may not see is not told to it', async () => {
  standIn.changeRights(ids.posts, { forbid: [{ who: 'bot', what: ['view'] }] })
  standIn.as('Wren').post(ids.posts, { title: 'hidden', text: 'x' })
  standIn.changeRights(ids.posts, {})
  const told = next()
  standIn.as('Wren').post(ids.posts, { title: 'seen', text: 'x' })
  await told
  expect(heard.map(([thread]) => thread.name)).toEqual(['seen'])
})
