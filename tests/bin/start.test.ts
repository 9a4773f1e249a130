// A start that cannot be: one sentence that names what to change, an exit code, and no stack.
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { text } from 'node:stream/consumers'
import { fileURLToPath } from 'node:url'
import { sql } from 'kysely'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { weekOf } from '../../src/trends/week.ts'

const entry = fileURLToPath(new URL('../../src/bin/start.js', import.meta.url))
let folder: string
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-start-'))
})
afterAll(() => rm(folder, { recursive: true, force: true }))

function launch(env: Record<string, string>) {
  const inherited = Object.fromEntries(
    Object.entries(process.env).filter(([name]) => !/^(CELLWARY_|DISCORD_|DATABASE_)/.test(name)),
  )
  const child = spawn(process.execPath, [entry], {
    env: { ...inherited, CELLWARY_DATA: join(folder, 'data'), CELLWARY_PORT: '0', ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const closed = once(child, 'close')
  const ended = text(child.stderr).then(async err => ({ err, code: (await closed)[0] as number | null }))
  return { child, ended }
}

const start = (env: Record<string, string>) => launch(env).ended

test.each([
  ['a port that is none', { CELLWARY_PORT: 'many' }, 2, /^CELLWARY_PORT: .*Correct it or leave it out/],
  ['a database that is no address', { DATABASE_URL: 'mysql://x' }, 2, /^DATABASE_URL: /],
  [
    'a database for the practice room',
    { DATABASE_URL: 'postgres://127.0.0.1/x' },
    2,
    /^DATABASE_URL: the practice room.*Leave DATABASE_URL out to practise, or set DISCORD_TOKEN/,
  ],
  [
    'a token file that is not there',
    { DISCORD_TOKEN_FILE: '/no/such/file' },
    2,
    /^DISCORD_TOKEN_FILE: \/no\/such\/file cannot be read/,
  ],
  [
    'rules that are not there',
    { CELLWARY_RULES: '/no/such/folder' },
    2,
    /^CELLWARY_RULES: \/no\/such\/folder cannot be read \(ENOENT\)/,
  ],
] as const)('%s', async (_, env, wanted, sentence) => {
  const { code, err } = await start(env)
  expect(err).toMatch(sentence)
  expect(err).not.toMatch(/\bat .*\.ts:\d+/)
  expect(code).toBe(wanted)
})

test('a second one on the same folder, while the first runs; not once it has been killed', async () => {
  const env = { CELLWARY_DATA: join(folder, 'shared') }
  const first = launch(env)
  await once(first.child.stdout, 'data')
  const { code, err } = await start(env)
  expect(err).toMatch(
    /^CELLWARY_DATA: A practice room is running with the folder .*shared already\. Stop that one, or give/,
  )
  expect(code).toBe(2)
  first.child.kill('SIGKILL')
  await first.ended
  const third = launch(env)
  await once(third.child.stdout, 'data')
  third.child.kill('SIGTERM')
  expect((await third.ended).code).toBe(0)
})

test.skipIf(process.platform === 'win32')('a signal to npm alone ends the bot that it started', async () => {
  const npm = spawn('npm', ['start'], {
    cwd: fileURLToPath(new URL('../..', import.meta.url)),
    env: { ...process.env, CELLWARY_DATA: join(folder, 'by-npm'), CELLWARY_PORT: '0' },
    stdio: ['ignore', 'pipe', 'ignore'],
  })
  const room = /The practice room is open: (\S+)/
  let said = ''
  for await (const piece of npm.stdout) {
    said += piece
    if (room.test(said)) break
  }
  npm.kill('SIGTERM')
  const page = room.exec(said)?.[1] ?? ''
  await expect
    .poll(
      () =>
        fetch(page).then(
          () => 'open',
          () => 'closed',
        ),
      { timeout: 30_000 },
    )
    .toBe('closed')
})

test('a pack with a mistake is left out and named, and the rest starts', async () => {
  const home = join(folder, 'rules', 'broken')
  await mkdir(home, { recursive: true })
  await writeFile(join(home, 'pack.yaml'), 'pack: broken\nversion: 1\n')
  const { child, ended } = launch({ CELLWARY_RULES: join(folder, 'rules') })
  child.stdout?.once('data', () => child.kill('SIGTERM'))
  const { code, err } = await ended
  expect(err).toMatch(/broken\/pack\.yaml: version: .*a rule pack is left out/)
  expect(code).toBe(0)
})

test('a database that a newer version has changed', async () => {
  const data = join(folder, 'newer')
  const practice = join(data, 'practice')
  await mkdir(practice, { recursive: true })
  await writeFile(join(practice, 'begun'), weekOf(Date.now()))
  const db = await openSqlite(join(practice, 'cellwary.db'))
  await sql`insert into kysely_migration values ('9999-later', '2099-01-01T00:00:00.000Z')`.execute(db)
  await db.destroy()
  const { code, err } = await start({ CELLWARY_DATA: data })
  expect(err).toMatch(
    /^The database was written by a newer version: .* Start version .* nothing in the database was changed\.\n$/,
  )
  expect(code).toBe(2)
})

test('a port that somebody else has', async () => {
  const server = createServer().listen(0, '127.0.0.1')
  await once(server, 'listening')
  const { port } = server.address() as AddressInfo
  const { code, err } = await start({ CELLWARY_PORT: String(port) })
  server.close()
  expect(err).toMatch(new RegExp(`^Port ${port} is taken`))
  expect(code).toBe(2)
})
