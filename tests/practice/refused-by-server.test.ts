// What a server or Discord refuses the bot beside bad bodies: limits by route, blocked words, replies to what is gone, installs.
import { DiscordAPIError, Routes } from 'discord.js'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { Scenario } from '../../src/practice/scenario.ts'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startTinyBot, type TinyBot } from './tiny-bot.ts'

const botRole = '900000000000000029'
const scenario: Scenario = {
  ...hobbyServer,
  roles: [...hobbyServer.roles, { id: botRole, name: 'Tiny Bot', ofBot: true }],
}
let now: number
let standIn: StandIn
let bot: TinyBot
beforeEach(async () => {
  now = Date.parse('2026-11-02T10:00:00Z')
  standIn = await openStandIn({ scenario, now: () => now })
  const answer = { post: { content: 'come to lampshade.example' }, hush: { content: 'lampshade', flags: 64 } }
  bot = await startTinyBot(
    standIn,
    Object.keys(answer).map(name => ({ name, description: 'x' })),
    async one => {
      if (one.isChatInputCommand()) await one.reply(answer[one.commandName as keyof typeof answer])
    },
  )
})
afterEach(async () => {
  await bot.stop()
  await standIn.close()
})

const messages = Routes.channelMessages(ids.bench)
const post = (body: object) => bot.client.rest.post(messages, { body })
/** The refusal that a request meets. */
const refusal = (asked: Promise<unknown>): Promise<DiscordAPIError> =>
  asked.then(
    () => Promise.reject(new Error('It was not refused')),
    error => (error instanceof DiscordAPIError ? error : Promise.reject(error)),
  )
const raw = (path: string, content: string) =>
  fetch(`${standIn.apiUrl}/v10${path}`, {
    method: 'POST',
    headers: { authorization: `Bot ${standIn.botToken}`, 'content-type': 'application/json' },
    body: JSON.stringify({ content }),
  })

describe('limits by route', () => {
  const route = 'POST /channels/:channel/messages'
  const numbers = (answer: Response) =>
    ['limit', 'remaining', 'reset-after'].map(name => Number(answer.headers.get(`x-ratelimit-${name}`)))

  test('headers count down, the one too many is 429 for its own channel alone, and time fills the bucket', async () => {
    standIn.faults.limitRoutes([{ route, limit: 2, seconds: 5 }])
    expect(numbers(await raw(messages, 'a'))).toEqual([2, 1, 5])
    now += 2000
    expect(numbers(await raw(messages, 'b'))).toEqual([2, 0, 3])
    const refused = await raw(messages, 'c')
    expect([refused.status, await refused.json()]).toEqual([
      429,
      { message: 'You are being rate limited.', retry_after: 3, global: false },
    ])
    expect(refused.headers.get('x-ratelimit-scope')).toBe('user')
    expect((await raw(Routes.channelMessages(standIn.directId('Wren')), 'd')).status).toBe(200)
    now += 3000
    expect(numbers(await raw(messages, 'e'))).toEqual([2, 1, 5])
    expect(standIn.messages(ids.bench).map(one => one.content)).toEqual(['a', 'b', 'e'])
  })
  test('other routes, and all of them without limits, say nothing', async () => {
    standIn.faults.limitRoutes([{ route: 'PATCH /channels/:channel/messages/:message', limit: 1, seconds: 5 }])
    expect((await raw(messages, 'a')).headers.get('x-ratelimit-limit')).toBeNull()
  })
})

describe('automatic moderation', () => {
  beforeEach(() => standIn.faults.block({ words: ['lampshade'], links: ['https://quay.example'] }))
  test.each([
    ['a word', { content: 'Lampshade!' }, 200_000],
    ['a word in an embed', { embeds: [{ title: 'on lampshades' }] }, 200_000],
    ['a word in a text display', { flags: 1 << 15, components: [{ type: 10, content: 'lampshade' }] }, 200_000],
    ['a link', { content: 'see https://quay.example/a' }, 240_000],
  ])('%s is refused and not posted', async (_what, body, code) => {
    const refused = await refusal(post(body))
    expect([refused.status, refused.code]).toEqual([400, code])
    expect(standIn.messages(ids.bench)).toEqual([])
  })
  test('edits and answers for everyone as well; what one person sees is left alone', async () => {
    const { id } = (await post({ content: 'fine' })) as { id: string }
    const edit = bot.client.rest.patch(Routes.channelMessage(ids.bench, id), { body: { content: 'lampshade' } })
    await expect(edit).rejects.toMatchObject({ code: 200_000 })
    expect((await standIn.as('Wren').run('hush')).kind).toBe('message')
    const silent = standIn.as('Wren').run('post')
    await expect.poll(() => bot.errors).toMatchObject([{ code: 200_000 }])
    now += 3000
    expect((await silent).kind).toBe('silent')
  })
})

test('a reply to a message that is gone is an invalid body, unless the bot says that it may be', async () => {
  const gone = standIn.say('Wren', ids.bench, 'x')
  await bot.client.rest.delete(Routes.channelMessage(ids.bench, ((await post({ content: 'y' })) as { id: string }).id))
  const missing = `${BigInt(gone.id) + 99n}`
  const refused = await refusal(post({ content: 'z', message_reference: { message_id: missing } }))
  expect([refused.status, refused.code]).toEqual([400, 50035])
  expect(refused.rawError).toMatchObject({
    errors: { message_reference: { _errors: [{ code: 'REPLIES_UNKNOWN_MESSAGE' }] } },
  })
  const kept = await post({ content: 'z', message_reference: { message_id: missing, fail_if_not_exists: false } })
  expect(kept).toMatchObject({ content: 'z' })
})

test('the bot wears the managed role that was made for it, which says whose it is', async () => {
  const guild = bot.client.guilds.cache.get(ids.server)
  const me = await guild?.members.fetchMe({ force: true })
  expect(me?.roles.botRole?.id).toBe(botRole)
  expect([me?.roles.botRole?.managed, me?.roles.botRole?.tags?.botId]).toEqual([true, ids.application])
  expect(me?.permissions.has('SendMessages')).toBe(true)
  // Its rights in a channel can be taken from it through that role.
  standIn.changeRights(ids.bench, { forbid: [{ who: botRole, what: ['send'] }] })
  await expect(post({ content: 'x' })).rejects.toMatchObject({ code: 50013 })
})

test('commands name only installs that the application has', async () => {
  await bot.stop()
  await standIn.close()
  const application = { ...scenario.application, installs: ['server'] as const }
  standIn = await openStandIn({ scenario: { ...scenario, application } })
  const named = (types: number[]) => [{ name: 'hello', description: 'x', integration_types: types }] as never
  bot = await startTinyBot(standIn, named([0]), async () => {})
  const config = await bot.client.rest.get('/applications/@me')
  expect(Object.keys((config as { integration_types_config: object }).integration_types_config)).toEqual(['0'])
  const both = bot.client.rest.put(Routes.applicationCommands(ids.application), { body: named([0, 1]) })
  await expect(both).rejects.toMatchObject({ code: 50035, status: 400 })
  expect(standIn.as('Wren').commands()).toHaveLength(1)
})
