// The bot's token and its sessions: revoked at run time, refused at the start, used up, begun too fast.
import { Client, GatewayIntentBits, Routes } from 'discord.js'
import { afterEach, expect, test } from 'vitest'
import { WebSocket } from 'ws'
import { openStandIn, type StandIn, type StandInOptions } from '../../src/practice/stand-in.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startTinyBot } from './tiny-bot.ts'

let standIn: StandIn
const closing: (() => unknown)[] = []
afterEach(async () => {
  for (const close of closing.splice(0)) await close()
  await standIn.close()
})
const open = async (more: Partial<StandInOptions> = {}) => {
  standIn = await openStandIn({ scenario: hobbyServer, ...more })
}

/** Identifies by hand, and tells what came of it: a close code, or the first thing the gateway says. */
function identify(shard: readonly [number, number] = [0, 1]): Promise<number | { op: number; t: string | null }> {
  const socket = new WebSocket(`${standIn.pageUrl.replace(/^http/, 'ws')}gateway`)
  closing.push(() => socket.terminate())
  return new Promise(resolve => {
    socket.on('close', resolve)
    socket.on('message', data => {
      const { op, t } = JSON.parse(String(data)) as { op: number; t: string | null }
      if (op !== 10) return resolve({ op, t })
      socket.send(JSON.stringify({ op: 2, d: { token: standIn.botToken, intents: 1, properties: {}, shard } }))
    })
  })
}
const ready = { op: 0, t: 'READY' }

test('a token revoked at run time: the line closes with 4004, REST answers 401, answers to interactions go on', async () => {
  await open()
  const held = Promise.withResolvers<void>()
  const bot = await startTinyBot(standIn, [{ name: 'hello', description: 'x' }], async interaction => {
    await held.promise
    if (interaction.isRepliable()) await interaction.reply('still here')
  })
  closing.push(bot.stop)
  const asked = standIn.as('Wren').run('hello')
  const closed = new Promise<number>(resolve => bot.client.once('shardDisconnect', event => resolve(event.code)))
  const running = new Promise<void>(resolve => bot.client.on('interactionCreate', () => resolve()))
  await running
  standIn.faults.revokeToken()
  expect(await closed).toBe(4004)
  held.resolve()
  expect((await asked).kind).toBe('message')
  const post = bot.client.rest.post(Routes.channelMessages(ids.bench), { body: { content: 'x' } })
  await expect(post).rejects.toMatchObject({ status: 401 })
  expect(await identify()).toBe(4004)
  standIn.faults.clear()
  expect(await identify()).toEqual(ready)
})

test.each([4011, 4013, 4014])('every identify can be met by %i, until that is taken back', async code => {
  await open()
  standIn.faults.refuseSessions(code)
  expect(await identify()).toBe(code)
  standIn.faults.refuseSessions(null)
  expect(await identify()).toEqual(ready)
})

test('a session less for each identify; none left, and a real client does not even try', async () => {
  await open({ sessions: { total: 1000, remaining: 1, resetAfter: 60_000 } })
  const left = async () => {
    const headers = { authorization: `Bot ${standIn.botToken}` }
    const answer = await fetch(`${standIn.apiUrl}/v10/gateway/bot`, { headers })
    return ((await answer.json()) as { session_start_limit: { remaining: number } }).session_start_limit.remaining
  }
  expect(await left()).toBe(1)
  expect(await identify()).toEqual(ready)
  expect(await left()).toBe(0)
  const client = new Client({ intents: [GatewayIntentBits.Guilds], rest: { api: standIn.apiUrl } })
  await expect(client.login(standIn.botToken)).rejects.toThrow(/session/i)
  await client.destroy()
  // Whoever tries all the same loses the token, as the documentation threatens.
  expect(await identify()).toBe(4004)
})

test('the count begins anew after its time', async () => {
  let now = Date.parse('2026-11-02T10:00:00Z')
  await open({ now: () => now, sessions: { total: 2, remaining: 0, resetAfter: 1000 } })
  now += 1001
  expect(await identify()).toEqual(ready)
})

test('as many shards as Discord recommends, and each server at its own', async () => {
  // The second server falls to shard 1 of 2: its id, without the lowest 22 bits, is odd.
  const odd = String(1n << 22n)
  const members = { [ids.wren]: [] }
  const channels = [{ id: '900000000000000501', name: 'chatter', kind: 'text' as const }]
  const further = { id: odd, name: 'Odd', locale: 'de', roles: [], channels, members, install: 'bot' as const }
  const even = { ...further, id: String(1n << 23n), channels: [] }
  await open({ scenario: { ...hobbyServer, servers: [further, even] }, sessions: { shards: 2 } })
  const bot = await startTinyBot(standIn, [], async () => {}, { shards: 'auto' })
  closing.push(bot.stop)
  expect(bot.client.ws.shards.size).toBe(2)
  expect(bot.client.guilds.cache.get(odd)?.shardId).toBe(1)
  expect(bot.client.guilds.cache.get(even.id)?.shardId).toBe(0)
})

test('max_concurrency 1: a second identify within five seconds is an invalid session', async () => {
  let now = Date.parse('2026-11-02T10:00:00Z')
  await open({ now: () => now, sessions: { maxConcurrency: 1 } })
  expect(await identify([0, 2])).toEqual(ready)
  expect(await identify([1, 2])).toEqual({ op: 9, t: null })
  now += 5000
  expect(await identify([1, 2])).toEqual(ready)
})
