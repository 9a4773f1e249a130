// Several processes of one bot over one PostgreSQL: each with its connections, in turn, and posts for any server from any of them.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type FreshPostgres, freshPostgres, noPostgres } from '../stores/fresh-postgres.ts'
import { idOf, inServer, type OpenedBot, openSmallBot, startCheck, textOf } from './open-bot.ts'
import { serverIds } from './ordinary-server.ts'
import { channelId, openSmallGateway, type SmallGateway } from './small-gateway.ts'

describe.skipIf(noPostgres)(`two processes${noPostgres ? ` (skipped: ${noPostgres})` : ''}`, () => {
  const [first = '', second = ''] = [...serverIds(2)].sort(
    (a, b) => Number((BigInt(a) >> 22n) % 2n) - Number((BigInt(b) >> 22n) % 2n),
  )
  let discord: SmallGateway
  let postgres: FreshPostgres
  let data: string
  let bots: OpenedBot[]
  beforeAll(async () => {
    discord = await openSmallGateway()
    discord.identifyEvery = 5_000
    discord.servers = [first, second].map(id => ({ id, coming: true }))
    postgres = await freshPostgres()
    data = await mkdtemp(join(tmpdir(), 'cellwary-sharding-'))
    const open = (part: number) =>
      openSmallBot({ DATABASE_URL: postgres.url, CELLWARY_SHARDS: `${part}of2/2` }, data, discord)
    bots = await Promise.all([open(0), open(1)])
  })
  afterAll(async () => {
    for (const bot of bots ?? []) await bot.close()
    await discord?.close()
    await postgres?.close()
    await rm(data, { recursive: true, force: true })
  })

  test('each makes its own connection, and Discord had to send none of them away', () => {
    expect(discord.identified.map(({ shard, of }) => `${shard} of ${of}`).sort()).toEqual(['0 of 2', '1 of 2'])
    const [a, b] = discord.identified
    expect((b?.at ?? 0) - (a?.at ?? 0)).toBeGreaterThanOrEqual(5_000)
  })

  test('each knows which servers are its own, and of the others only that they are elsewhere', () => {
    const [one, two] = bots
    expect([one?.whereabouts(first), one?.whereabouts(second)]).toEqual(['here', 'elsewhere'])
    expect([two?.whereabouts(first), two?.whereabouts(second)]).toEqual(['elsewhere', 'here'])
    expect(two?.whereabouts(serverIds(4).find(id => (BigInt(id) >> 22n) % 2n === 1n && id !== second) ?? '')).toBe(
      'absent',
    )
  })

  test('a check goes on from one to the other', async () => {
    const [bot] = bots as [OpenedBot]
    const where = (server: string) => ({
      ...inServer(),
      guild_id: server,
      authorizing_integration_owners: { 0: server },
    })
    const answer = await bot.command(where(first), 'check', startCheck)
    const next = await bot.press(where(second), idOf(answer, '.unsure'))
    expect(textOf(next)).not.toBe(textOf(answer))
    const again = await bot.press(where(first), idOf(next, '.unsure'))
    expect(textOf(again)).not.toBe(textOf(next))
  })

  test.each([
    ['everybody may read', '1024', [], true],
    ['nobody may by role', '0', [], false],
    ['the channel forbids', '1024', [{ allow: '0', deny: '1024' }], false],
    ['the channel allows', '0', [{ allow: '1024', deny: '0' }], true],
  ])(
    'whether a channel of the other’s server is open to all is asked of Discord: %s',
    async (_, permissions, own, open) => {
      const [bot] = bots as [OpenedBot]
      const channel = String(BigInt(channelId) + 99n)
      const permission_overwrites = own.map(one => ({ id: second, type: 0, ...one }))
      discord.answers.set(`GET /channels/${channel}`, {
        status: 200,
        body: { id: channel, type: 0, guild_id: second, permission_overwrites },
      })
      discord.answers.set(`GET /guilds/${second}/roles`, {
        status: 200,
        body: [{ id: second, name: '@everyone', permissions }],
      })
      expect(await bot.services.posts.isOpenToAll(channel)).toBe(open)
      discord.answers.set(`GET /channels/${channel}`, { status: 403, body: { code: 50001, message: 'Missing Access' } })
      expect(await bot.services.posts.isOpenToAll(channel)).toBe(false)
    },
  )
})
