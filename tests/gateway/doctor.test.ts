// cellwary doctor in prepared wrong situations: the right sentence, the exit code, and nobody touched.
import { spawn } from 'node:child_process'
import { chmod, mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { text } from 'node:stream/consumers'
import { fileURLToPath } from 'node:url'
import { sql } from 'kysely'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { applicationId, botToken, channelId, openSmallGateway, type SmallGateway } from './small-gateway.ts'

const entry = fileURLToPath(new URL('../../src/bin/cellwary.ts', import.meta.url))
let discord: SmallGateway
let data: string
beforeEach(async () => {
  discord = await openSmallGateway()
  data = await mkdtemp(join(tmpdir(), 'cellwary-doctor-'))
})
afterEach(async () => {
  await discord.close()
  await rm(data, { recursive: true, force: true })
})

async function doctor(env: Readonly<Record<string, string>> = {}, words: readonly string[] = []) {
  const inherited = Object.entries(process.env).filter(([name]) => !/^(CELLWARY_|DISCORD_|DATABASE_)/.test(name))
  const child = spawn(process.execPath, [entry, 'doctor', ...words], {
    env: {
      ...Object.fromEntries(inherited),
      DISCORD_TOKEN: botToken,
      CELLWARY_DISCORD_API: discord.api,
      CELLWARY_DATA: data,
      ...env,
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const closed = new Promise<number | null>(resolve => child.once('close', resolve))
  const [out, err, code] = await Promise.all([text(child.stdout), text(child.stderr), closed])
  return { out, err, code }
}

test('where all is well: every line is fine, and the invitation is printed', async () => {
  discord.application = {
    ...discord.application,
    privacy_policy_url: 'https://example.org/privacy',
    terms_of_service_url: 'https://example.org/terms',
  }
  await doctor()
  const { out, err, code } = await doctor()
  expect(err).toBe('')
  expect(out.split('\n').filter(line => /^(WRONG|TROUBLE)/.test(line))).toEqual([])
  expect(out.match(/^fine/gm)?.length).toBeGreaterThan(9)
  expect(out).toContain(`client_id=${applicationId}&scope=bot+applications.commands&permissions=274878008320`)
  expect(code).toBe(0)
})

test('touches nobody: it only reads, and leaves nothing in the data folder', async () => {
  await doctor()
  expect(discord.asked.every(one => one.method === 'GET')).toBe(true)
  expect(await readdir(data)).toEqual([])
})

type Wrong = {
  readonly name: string
  readonly line: RegExp
  readonly code: number
  readonly env?: () => Record<string, string>
  prepare?(): unknown
}
const situations: readonly Wrong[] = [
  {
    name: 'a setting that is none',
    line: /^WRONG +settings: CELLWARY_PORT: .*Correct it/m,
    code: 2,
    env: () => ({ CELLWARY_PORT: 'many' }),
  },
  {
    name: 'no token',
    line: /^WRONG +token: There is none.*DISCORD_TOKEN_FILE/m,
    code: 2,
    env: () => ({ DISCORD_TOKEN: '' }),
  },
  {
    name: 'a token that is refused',
    line: /^WRONG +token: Discord refused the token/m,
    code: 2,
    env: () => ({ DISCORD_TOKEN: 'a.b.c' }),
  },
  {
    name: 'an interactions endpoint',
    line: /^WRONG +interactions endpoint: .*nothing of ours answers there \(404\).*Empty it/m,
    code: 2,
    prepare: () => Object.assign(discord.application, { interactions_endpoint_url: `${discord.api}/elsewhere` }),
  },
  {
    name: 'an interactions endpoint behind which nothing runs yet',
    line: /^TROUBLE +interactions endpoint: .*\(no answer\).*Start the processes behind it/m,
    code: 1,
    env: () => ({ CELLWARY_HTTP: '8080' }),
    prepare: () => Object.assign(discord.application, { interactions_endpoint_url: 'http://127.0.0.1:1/interactions' }),
  },
  {
    name: 'an interactions endpoint of other processes',
    line: /^note +interactions endpoint: Discord brings commands and presses to .*to processes with CELLWARY_HTTP/m,
    code: 0,
    prepare: () => {
      discord.answers.set('POST /interactions', { status: 401, body: {} })
      return Object.assign(discord.application, { interactions_endpoint_url: `${discord.api}/v10/interactions` })
    },
  },
  {
    name: 'HTTP without an interactions endpoint',
    line: /^note +interactions endpoint: None is set, so nothing reaches this process.*enter https:\/\/YOUR-HOST\/interactions/m,
    code: 0,
    env: () => ({ CELLWARY_HTTP: '8080' }),
  },
  {
    name: 'HTTP and connections in one process',
    line: /^WRONG +settings: CELLWARY_SHARDS: .*Leave one of the two out/m,
    code: 2,
    env: () => ({ CELLWARY_HTTP: '8080', CELLWARY_SHARDS: '0/1' }),
  },
  {
    name: 'a code grant',
    line: /^WRONG +code grant: .*Switch it off, under Bot/m,
    code: 2,
    prepare: () => Object.assign(discord.application, { bot_require_code_grant: true }),
  },
  {
    name: 'no installation on servers',
    line: /^WRONG +installation: “Guild Install” is off/m,
    code: 2,
    prepare: () => Object.assign(discord.application, { integration_types_config: { 1: {} } }),
  },
  {
    name: 'no sessions left',
    line: /^TROUBLE +sessions: No starts are left for the next 60 minutes/m,
    code: 1,
    prepare: () => Object.assign(discord.session, { remaining: 0 }),
  },
  {
    name: 'few sessions left',
    line: /^note +sessions: 12 of 1000 starts are left.*what starts the bot so often/m,
    code: 0,
    prepare: () => Object.assign(discord.session, { remaining: 12 }),
  },
  {
    name: 'fewer shards than Discord advises',
    line: /^note +shards: CELLWARY_SHARDS says 2 connections, and Discord advises 5\. Raise it/m,
    code: 0,
    env: () => ({ CELLWARY_SHARDS: '0-1/2' }),
    prepare: () => Object.assign(discord, { shards: 5 }),
  },
  {
    name: 'a range of shards that is none',
    line: /^WRONG +settings: CELLWARY_SHARDS: The 4 connections are numbered from 0 to 3; there is no 4\./m,
    code: 2,
    env: () => ({ CELLWARY_SHARDS: '2-4/4' }),
  },
  {
    name: 'several processes without a database to share',
    line: /^WRONG +settings: CELLWARY_SHARDS: .*Set DATABASE_URL/m,
    code: 2,
    env: () => ({ CELLWARY_SHARDS: '0/2' }),
  },
  {
    name: 'other commands registered',
    line: /^note +commands: Registered otherwise than here: .*\bold\b/m,
    code: 0,
    prepare: () =>
      discord.answers.set(`GET /applications/${applicationId}/commands`, {
        status: 200,
        body: [{ id: '1', type: 1, name: 'old', description: 'x' }],
      }),
  },
  {
    name: 'a clock of last week',
    line: /^WRONG +clock: This machine’s clock is \d+ s ahead of Discord’s.*Set it right/m,
    code: 2,
    prepare: () => {
      discord.clock = Date.now() - 7 * 86_400_000
    },
  },
  {
    name: 'Discord out of reach',
    line: /^TROUBLE +Discord: Discord cannot be reached/m,
    code: 1,
    env: () => ({ CELLWARY_DISCORD_API: 'http://127.0.0.1:1/api' }),
  },
  {
    name: 'a database of a newer version',
    line: /^WRONG +database: .*newer version/m,
    code: 2,
    async prepare() {
      const db = await openSqlite(join(data, 'cellwary.db'))
      await sql`insert into kysely_migration values ('9999-later', '2099-01-01T00:00:00.000Z')`.execute(db)
      await db.destroy()
    },
  },
  {
    name: 'a damaged database',
    line: /^WRONG +database: .*cellwary\.db is no database, or is damaged\. Restore it/m,
    code: 2,
    prepare: () => writeFile(join(data, 'cellwary.db'), 'no database at all, however long it may be '.repeat(50)),
  },
  {
    name: 'a database server that does not answer',
    line: /^TROUBLE +database: DATABASE_URL: .*does not answer/m,
    code: 1,
    env: () => ({ DATABASE_URL: 'postgres://postgres@127.0.0.1:1/test' }),
  },
  {
    name: 'a data folder where none can be',
    line: /^WRONG +data folder: CELLWARY_DATA: \/proc\/nope is no folder that the bot can write to \(ENOENT\)/m,
    code: 2,
    env: () => ({ CELLWARY_DATA: '/proc/nope' }),
  },
  {
    name: 'a port that somebody else has',
    line: /^WRONG +figures: Port \d+ is taken\. Stop what uses it, or set CELLWARY_FIGURES_PORT/m,
    code: 2,
    env: () => ({ CELLWARY_FIGURES_PORT: new URL(discord.api).port }),
  },
  {
    name: 'something else in the place of Discord',
    line: /^TROUBLE +Discord: What answers in Discord’s place does not speak as Discord does\. Leave CELLWARY_DISCORD_API out/m,
    code: 1,
    prepare: () => discord.answers.set('GET /applications/@me', { status: 200, body: '<html>' }),
  },
  {
    name: 'a data folder that others read',
    line: /^note +data folder: .*chmod 700/m,
    code: 0,
    prepare: () => chmod(data, 0o755),
  },
  {
    name: 'rules with a mistake',
    line: /^WRONG +rules: .*broken\/pack\.yaml: version/m,
    code: 2,
    env: () => ({ CELLWARY_RULES: join(data, 'rules') }),
    async prepare() {
      await mkdir(join(data, 'rules', 'broken'), { recursive: true })
      await writeFile(join(data, 'rules', 'broken', 'pack.yaml'), 'pack: broken\nversion: 1\n')
    },
  },
]

describe('a wrong situation', () => {
  test.each(situations)('$name', async ({ line, code, env, prepare }) => {
    await prepare?.()
    const found = await doctor(env?.())
    expect(found.out).toMatch(line)
    expect(found.err).toBe('')
    expect(found.code).toBe(code)
  })
})

describe('with a channel', () => {
  test('tries what no list tells, and leaves nothing behind', async () => {
    const { out, code } = await doctor({}, ['--channel', channelId])
    const tried = 'a post, stands there once, a change, a picture, a panel, a menu of roles, typing, taking'.split(', ')
    for (const what of tried) expect(out).toMatch(new RegExp(`^fine +channel: .*${what}`, 'm'))
    expect(discord.asked.filter(one => one.method === 'POST' && /messages$/.test(one.path)).length).toBe(5)
    expect([...discord.standing]).toEqual([])
    expect(code).toBe(0)
  })

  test('one where it may not post', async () => {
    const refused = { status: 403, body: { code: 50013, message: 'Missing Permissions' } }
    discord.answers.set(`POST /channels/${channelId}/messages`, refused)
    const { out, code } = await doctor({}, ['--channel', channelId])
    expect(out).toMatch(/^WRONG +channel: a post: The bot may not post there\. Give its role/m)
    expect(code).toBe(2)
  })

  test('a nonce that is not kept to', async () => {
    let id = 900_000_000_000_009_000n
    discord.answers.set(`POST /channels/${channelId}/messages`, () => {
      id += 1n
      return { status: 200, body: { id: String(id), channel_id: channelId } }
    })
    const { out, code } = await doctor({}, ['--channel', channelId])
    expect(out).toMatch(/^WRONG +channel: the same post again stands there once: It was posted twice/m)
    expect(code).toBe(2)
  })

  test('what is no channel’s id', async () => {
    const { out, code } = await doctor({}, ['--channel', 'general'])
    expect(out).toMatch(/^WRONG +channel: “general” is no id of a channel/m)
    expect(code).toBe(2)
  })
})

test('as JSON', async () => {
  const { out } = await doctor({}, ['--json'])
  const { findings, invitation } = JSON.parse(out)
  expect(findings).toContainEqual({ about: 'token', is: 'fine', says: expect.any(String) })
  expect(invitation).toMatch(/^https:\/\/discord\.com\/oauth2\/authorize/)
})
