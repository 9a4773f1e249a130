// Bad weather on the REST side: 429, 502, slow and lost answers, and a repeated post with a nonce.
import type { Interaction, TextChannel } from 'discord.js'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hobbyServer, ids } from './hobby-server.ts'
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

const bench = () => bot.client.channels.cache.get(ids.bench) as TextChannel
const posts = () =>
  standIn.journal.filter(one => one.method === 'POST' && one.path === `/channels/${ids.bench}/messages`)

test('after a 429 the post comes again and stands once', async () => {
  standIn.faults.answerNext({ match: 'POST /channels', status: 429, retryAfter: 0.05 })
  await bench().send('patience')
  expect(posts().map(one => one.status)).toEqual([429, 200])
  expect(standIn.messages(ids.bench).map(one => one.content)).toEqual(['patience'])
  expect(standIn.complaints).toEqual([])
})

test('a bot that does not wait gets a RateLimitError with the time to wait', async () => {
  const impatient = await startTinyBot(standIn, commands, handler, { rest: { rejectOnRateLimit: ['/channels'] } })
  standIn.faults.answerNext({ match: /POST \/channels\/\d+\/messages/, status: 429, retryAfter: 600 })
  const channel = impatient.client.channels.cache.get(ids.bench) as TextChannel
  await expect(channel.send('now')).rejects.toMatchObject({
    name: expect.stringContaining('RateLimitError'),
    retryAfter: expect.any(Number),
  })
  await impatient.stop()
})

test('two 502 are followed by success', async () => {
  standIn.faults.answerNext({ match: 'callback', status: 502, times: 2 })
  expect(await standIn.as('Wren').run('hello')).toMatchObject({ kind: 'message' })
  expect(standIn.journal.filter(one => one.path.endsWith('/callback')).map(one => one.status)).toEqual([502, 502, 204])
})

test('an answer lost on the way makes the bot ask again; a nonce keeps the post single', async () => {
  standIn.faults.loseAnswer({ match: 'POST /channels' })
  await bench().send({ content: 'only once', nonce: 'n1', enforceNonce: true })
  expect(posts()).toHaveLength(2)
  expect(standIn.messages(ids.bench).map(one => one.content)).toEqual(['only once'])
})

test('without a nonce the same loss posts twice', async () => {
  standIn.faults.loseAnswer({ match: 'POST /channels' })
  await bench().send({ content: 'oops' })
  expect(standIn.messages(ids.bench)).toHaveLength(2)
})

test('a slow road delays what the bot asks for', async () => {
  standIn.faults.delayNext({ match: 'callback', ms: 120 })
  const before = performance.now()
  await standIn.as('Wren').run('hello')
  expect(performance.now() - before).toBeGreaterThan(115)
})

test('the journal never shows a token', async () => {
  await standIn.as('Wren').run('hello')
  const paths = standIn.journal.map(one => one.path).join('\n')
  expect(paths).toContain('/[token]/callback')
  expect(JSON.stringify(standIn.journal)).not.toContain(standIn.botToken)
})
