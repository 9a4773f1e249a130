// How the bot ends: with a sentence, with 2 for what only the operator can mend, with 1 for what may pass; and what it lives through.
import { mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { encodeBuying, placeOf } from '../../src/custom-ids/buying-id.ts'
import { startBot } from './bot-process.ts'
import { handsOn, inServer } from './open-bot.ts'
import { applicationId, channelId, openSmallGateway, type SmallGateway } from './small-gateway.ts'

let discord: SmallGateway
let data: string
beforeEach(async () => {
  discord = await openSmallGateway()
  data = await mkdtemp(join(tmpdir(), 'cellwary-endings-'))
})
afterEach(async () => {
  await discord.close()
  await rm(data, { recursive: true, force: true })
})

const withoutStack = (err: string) => expect(err).not.toMatch(/\bat .*\.ts:\d+/)

describe('a start that Discord refuses', () => {
  test.each([
    [4004, 2, /refused the token/],
    [4010, 2, /CELLWARY_SHARDS/],
    [4011, 2, /CELLWARY_SHARDS/],
    [4012, 2, /Install a newer one/],
    [4013, 2, /gateway intents/],
    [4014, 2, /gateway intents/],
  ])('closes with %i', async (close, wanted, sentence) => {
    discord.closeWith = close
    const { code, err } = await startBot(discord.api, data).ended
    expect(err).toMatch(sentence)
    withoutStack(err)
    expect(code).toBe(wanted)
    // Closed, the database leaves nothing beside its file.
    expect((await readdir(data)).filter(name => /-(wal|shm)$/.test(name))).toEqual([])
  })

  test('a token that is none', async () => {
    const { code, err } = await startBot(discord.api, data, { DISCORD_TOKEN: 'a.b.c' }).ended
    expect(err).toMatch(/^Discord refused the token/)
    expect(code).toBe(2)
  })

  test('no sessions left', async () => {
    discord.session.remaining = 0
    const { code, err } = await startBot(discord.api, data).ended
    expect(err).toMatch(/no more sessions until 20\d\d-/)
    withoutStack(err)
    expect(code).toBe(1)
  })

  test('out of reach, with a database at PostgreSQL', async () => {
    await discord.close()
    const { code, err } = await startBot(discord.api, data, {
      DATABASE_URL: 'postgres://postgres@127.0.0.1:5432/test',
    }).ended
    expect(err).toMatch(/^Discord cannot be reached \(ECONNREFUSED\)/)
    expect(err).not.toMatch(/database/)
    expect(code).toBe(1)
    discord = await openSmallGateway()
  })
})

describe('a setting that cannot be', () => {
  test('a database that does not answer', async () => {
    const env = { DATABASE_URL: 'postgres://postgres@127.0.0.1:1/test' }
    const { code, err } = await startBot(discord.api, data, env).ended
    expect(err).toMatch(/^DATABASE_URL: the database does not answer \(ECONNREFUSED\)/)
    expect(code).toBe(1)
  })

  test('a database that is not there', async () => {
    const env = { DATABASE_URL: 'postgres://postgres@127.0.0.1:5432/no_such_database' }
    const { code, err } = await startBot(discord.api, data, env).ended
    expect(err).toMatch(/^DATABASE_URL: the database does not let the bot in \(3D000\)/)
    expect(code).toBe(2)
  })

  test('an empty token file names itself', async () => {
    const file = join(data, 'token')
    await writeFile(file, '\n')
    const { code, err } = await startBot(discord.api, data, { DISCORD_TOKEN: '', DISCORD_TOKEN_FILE: file }).ended
    expect(err).toBe(`DISCORD_TOKEN_FILE: ${file} is empty. Put the bot’s token into it.\n`)
    expect(code).toBe(2)
  })

  test.each([
    ['under a file', '/dev/null/x'],
    ['where nothing can be made', '/proc/nothing/here'],
  ])('a data folder %s', async (_, folder) => {
    const { code, err } = await startBot(discord.api, folder).ended
    expect(err).toMatch(new RegExp(`^CELLWARY_DATA: ${folder} is no folder that the bot can write to`))
    withoutStack(err)
    expect(code).toBe(2)
  })

  test.each([
    ['is a folder', (file: string) => mkdir(file)],
    ['is damaged', (file: string) => writeFile(file, 'not a database, and longer than a page header '.repeat(30))],
  ])('a database file that %s', async (_, make) => {
    await make(join(data, 'cellwary.db'))
    const { code, err } = await startBot(discord.api, data).ended
    expect(err).toMatch(/^CELLWARY_DATA: .*cellwary\.db /)
    withoutStack(err)
    expect(code).toBe(2)
  })
})

describe('a bot that is running', () => {
  test.each([4004, 4014])('is closed with %i: says so, ends with 2', async close => {
    const bot = startBot(discord.api, data)
    await bot.ready()
    discord.drop(close)
    const { code, err } = await bot.ended
    expect(err).toMatch(/"level":60.*(refused the token|gateway intents)/)
    expect(code).toBe(2)
  })

  test('has its token refused by one request: says so, ends with 2', async () => {
    discord.answers.set(`GET /applications/${applicationId}/commands`, {
      status: 401,
      body: { code: 0, message: '401: Unauthorized' },
    })
    const { code, err } = await startBot(discord.api, data).ended
    expect(err).toMatch(/"level":60.*refused the token/)
    expect(code).toBe(2)
  })

  test('has its token refused when it posts for somebody: says so, ends with 2', async () => {
    const bot = startBot(discord.api, data)
    await bot.ready()
    const refused = { status: 401, body: { code: 0, message: '401: Unauthorized' } }
    discord.answers.set(`POST /channels/${channelId}/messages`, refused)
    await handsOn(discord).press(inServer(), encodeBuying({ is: 'post', place: placeOf('buy') }))
    const { code, err } = await bot.ended
    expect(err).toMatch(/"level":60.*refused the token/)
    expect(code).toBe(2)
  })

  test('is ready though Discord lets its commands wait, and answers', async () => {
    const waits = { status: 429, body: { message: 'You are being rate limited.', retry_after: 30, global: false } }
    discord.answers.set(`PUT /applications/${applicationId}/commands`, { ...waits, headers: { 'retry-after': '30' } })
    const bot = startBot(discord.api, data)
    await bot.ready()
    bot.signal('SIGTERM')
    expect((await bot.ended).code).toBe(0)
  })

  test('is cut off and comes back: both stand in the log, with how long it was away', async () => {
    const bot = startBot(discord.api, data)
    await bot.ready()
    discord.drop(4000)
    await discord.resumed
    bot.signal('SIGTERM')
    const { code, err } = await bot.ended
    expect(err).toMatch(/disconnected; connecting again/)
    expect(err).toMatch(/"how":"resumed","away_ms":\d+,"msg":"connected again"/)
    expect(code).toBe(0)
  })

  test('is stopped: nothing says that a connection was lost', async () => {
    const bot = startBot(discord.api, data)
    await bot.ready()
    bot.signal('SIGTERM')
    const { code, err } = await bot.ended
    expect(err).not.toMatch(/disconnected/)
    expect(code).toBe(0)
  })

  test('has its connection closed while it starts: it asks once more', async () => {
    let asked = 0
    discord.answers.set('GET /gateway/bot', () => {
      asked += 1
      return asked === 2 ? 'cut' : undefined
    })
    const bot = startBot(discord.api, data)
    await bot.ready()
    expect(asked).toBeGreaterThan(2)
    bot.signal('SIGTERM')
    expect((await bot.ended).code).toBe(0)
  })

  test('prints the invitation, with the scopes and exactly the permissions it needs', async () => {
    const bot = startBot(discord.api, data)
    await bot.ready()
    bot.signal('SIGTERM')
    const { err } = await bot.ended
    expect(err).toContain(
      `https://discord.com/oauth2/authorize?client_id=${applicationId}&scope=bot+applications.commands&permissions=274878008320`,
    )
  })
})
