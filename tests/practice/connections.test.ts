// Reconnects, replays, duplicate delivery and two connections at once, with the real discord.js gateway client.
import type { EventEmitter } from 'node:events'
import { Events, type Interaction } from 'discord.js'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hobbyServer } from './hobby-server.ts'
import { startTinyBot, type TinyBot } from './tiny-bot.ts'

const commands = [{ name: 'hello', description: 'Says hello' }]

async function handler(interaction: Interaction): Promise<unknown> {
  return interaction.isChatInputCommand() ? await interaction.reply('hello') : undefined
}

let standIn: StandIn
let bot: TinyBot
beforeEach(async () => {
  standIn = await openStandIn({ scenario: hobbyServer })
  bot = await startTinyBot(standIn, commands, handler)
})
afterEach(async () => {
  await bot.stop()
  await standIn.close()
})

const once = (event: Events.ShardResume | Events.ShardReady | Events.ShardReconnecting) =>
  new Promise<void>(done => {
    const client: EventEmitter = bot.client
    client.once(event, () => done())
  })

const hello = () => standIn.as('Wren').run('hello')

test('asked to reconnect (op 7), the bot resumes and goes on', async () => {
  const resumed = once(Events.ShardResume)
  standIn.faults.askReconnect()
  await resumed
  expect(await hello()).toMatchObject({ kind: 'message' })
})

test('a socket closed with 4000 is resumed, and what happened meanwhile is replayed', async () => {
  const resumed = once(Events.ShardResume)
  const leaving = once(Events.ShardReconnecting)
  standIn.faults.dropSocket(4000)
  await leaving
  const reply = hello()
  await resumed
  expect(await reply).toMatchObject({ kind: 'message', message: { content: 'hello' } })
  expect(bot.heard).toHaveLength(1)
})

test('a session declared invalid but resumable (op 9 true) is resumed on the same line', async () => {
  const resumed = once(Events.ShardResume)
  standIn.faults.invalidateSession(true)
  await resumed
  expect(bot.client.ws.shards.first()?.status).toBe(0)
  expect(await hello()).toMatchObject({ kind: 'message' })
})

test('a session declared dead (op 9 false) leads to a fresh one', async () => {
  const fresh = once(Events.ShardReady)
  standIn.faults.invalidateSession(false)
  await fresh
  expect(await hello()).toMatchObject({ kind: 'message' })
})

test('a cut line (1006) is resumed', async () => {
  const resumed = once(Events.ShardResume)
  standIn.faults.dropSocket(1006)
  await resumed
  expect(await hello()).toMatchObject({ kind: 'message' })
})

test('an interaction delivered twice is answered once; the second answer meets 40060', async () => {
  standIn.faults.deliverTwice(true)
  expect(await hello()).toMatchObject({ kind: 'message' })
  await expect.poll(() => bot.errors).toMatchObject([{ code: 40060 }])
  expect(new Set(bot.heard).size).toBe(1)
  expect(bot.heard).toHaveLength(2)
  expect(standIn.complaints.map(one => one.code)).toEqual([40060])
})

test('two connections of the bot both hear every interaction', async () => {
  const second = await startTinyBot(standIn, commands, async () => {})
  expect(standIn.connections()).toBe(2)
  await hello()
  await expect.poll(() => second.heard).toEqual(bot.heard)
  await second.stop()
  await expect.poll(() => standIn.connections()).toBe(1)
})

test('with no bot connected a click stays unanswered', async () => {
  await bot.stop()
  await expect.poll(() => standIn.connections()).toBe(0)
  expect(await hello()).toEqual({ kind: 'silent', why: 'no bot is connected', refusals: [] })
})

test('a wrong token is turned away', async () => {
  const wrong = { ...standIn, botToken: 'not.the.token' }
  await expect(startTinyBot(wrong, commands, handler)).rejects.toThrow(/token/i)
})

test('messages and their buttons outlive the bot', async () => {
  const before = await hello()
  await bot.stop()
  bot = await startTinyBot(standIn, commands, handler)
  expect(before.kind === 'message' && standIn.message(before.message.id)?.content).toBe('hello')
  expect(bot.client.listenerCount(Events.InteractionCreate)).toBe(1)
})
