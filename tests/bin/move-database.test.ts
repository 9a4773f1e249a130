// From SQLite to PostgreSQL: every row is there afterwards, buttons of open checks work on, and what cannot be is said and changes nothing.
import { execFile } from 'node:child_process'
import { mkdtemp, rm, stat } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import type { Kysely } from 'kysely'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { moveDatabase } from '../../src/bin/move-database.ts'
import { seedFamilies } from '../../src/bin/practice-room/demo-families.ts'
import { unsettled } from '../../src/server/settings.ts'
import { openLeases } from '../../src/stores/lease.ts'
import { openPostgresAsIs } from '../../src/stores/open-postgres.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import type { Tables } from '../../src/stores/tables.ts'
import { idOf, inServer, openSmallBot, startCheck, textOf } from '../gateway/open-bot.ts'
import { serverId } from '../gateway/small-gateway.ts'
import { type FreshPostgres, freshPostgres, noPostgres } from '../stores/fresh-postgres.ts'
import { base } from '../trends/base-outcome.ts'

let data: string
let postgres: FreshPostgres
const file = () => join(data, 'cellwary.db')

describe.skipIf(noPostgres)(`to PostgreSQL${noPostgres ? ` (skipped: ${noPostgres})` : ''}`, () => {
  beforeEach(async () => {
    data = await mkdtemp(join(tmpdir(), 'cellwary-move-'))
    postgres = await freshPostgres()
  })
  afterEach(async () => {
    await postgres.close()
    await rm(data, { recursive: true, force: true })
  })

  const keys = {
    ...{ checks: 'id', kept: 'key', servers: 'id', findings: 'id', outcomes: 'reporter', opt_outs: 'person' },
    ...{ offers: 'post', notices: 'check_id', releases: 'week', families: 'id', family_versions: 'family' },
    ...{ family_references: 'id', family_photos: 'id', family_trials: 'week' },
  } as const
  const everything = async (db: Kysely<Tables>) => {
    const tables: Record<string, string[]> = {}
    for (const table of Object.keys(keys) as (keyof typeof keys)[]) {
      const rows = await db
        .selectFrom(table as 'kept')
        .selectAll()
        .execute()
      // Bytes as one writes them down, whatever the driver has them in.
      const told = rows.map(row =>
        JSON.stringify(
          Object.entries(row as object)
            .map(([name, value]) => [name, value instanceof Uint8Array ? Buffer.from(value).toString('hex') : value])
            .sort(),
        ),
      )
      tables[table] = told.sort()
    }
    return tables
  }

  /** One row in each table that the practice room's past does not fill. */
  async function fillTheRest(db: Kysely<Tables>): Promise<void> {
    const server = serverId
    await db
      .insertInto('notices')
      .values({ check_id: 'c', kind: 'offer', channel: '1', message: '2', until: 2 ** 41 })
      .execute()
    await db.insertInto('offers').values({ post: '77', server, claimed_at: 1_795_000_000_123 }).execute()
    await db
      .insertInto('opt_outs')
      .values({ person: 'f'.repeat(64) })
      .execute()
    await db
      .insertInto('releases')
      .values({ scope: 'pool', week: '2026-W44', bytes: '{"a":"ü\\u0000"}', state: null, unread: 1 })
      .execute()
    const finding = {
      ...{ id: 'f1', server, key: 'k', week: '2026-W44', revision: 2 ** 31 - 1, state: 'open' },
      again: null,
    }
    await db
      .insertInto('findings')
      .values({ ...finding, unposted: 0, due: 1, body: '{}' })
      .execute()
    await db.insertInto('family_references').values({ id: 'r1', server, family: 'f-1', body: '{"by":"1"}' }).execute()
    await db.insertInto('family_trials').values({ server, week: '2026-W44', made: 2 }).execute()
    const bytes = Buffer.from(Array.from({ length: 70_000 }, (_, i) => i % 256))
    for (let i = 0; i < 25; i++)
      await db
        .insertInto('family_photos')
        .values({ id: `p${i}`, server, family: 'f-1', body: '{}', size: 70_000, bytes })
        .execute()
    await openLeases(db).take('weekly', 'a process that is gone', 0, 2 ** 41)
  }

  test('every row of every table is there afterwards, a button of before works on, and nothing stays open', async () => {
    const before = await openSmallBot({}, data)
    const answer = await before.command(inServer(), 'check', startCheck)
    const { services } = before
    await seedFamilies(services, serverId)
    await services.servers.save({ ...unsettled(serverId), revision: 1, outcomes: true })
    for (const reporter of ['a', 'b']) await services.trends.outcomes.record({ ...base, server: serverId, reporter })
    await before.close()
    const db = await openSqlite(file())
    await fillTheRest(db)
    const there = await everything(db)
    await db.destroy()
    for (const [table, rows] of Object.entries(there)) expect(rows.length, table).toBeGreaterThan(0)

    const done = await moveDatabase(data, postgres.url)
    expect(done).toMatchObject({ ok: true, rows: { checks: 1, family_photos: 25 } })
    const into = openPostgresAsIs(postgres.url)
    expect(await everything(into)).toEqual(there)
    // Whoever held a lease has been stopped.
    expect(await into.selectFrom('leases').selectAll().execute()).toEqual([])
    await into.destroy()

    const after = await openSmallBot({ DATABASE_URL: postgres.url }, data)
    const next = await after.press(inServer(), idOf(answer, '.unsure'))
    expect(textOf(next)).not.toBe(textOf(answer))
    expect(idOf(next, '.unsure')).not.toBe(idOf(answer, '.unsure'))
    expect((await after.services.families.store.heads(serverId)).length).toBe(4)
    expect(await after.services.servers.load(serverId)).toMatchObject({ revision: 1, outcomes: true })
    await after.close()
    const [row] = await postgres.query('select revision from checks')
    expect(Number(row?.['revision'])).toBeGreaterThan(0)

    // Done twice, it is refused: what people have answered since stays.
    expect(await moveDatabase(data, postgres.url)).toEqual({ ok: false, sentence: expect.stringMatching(/not empty/) })
  })

  test('a bot that runs is in the way', async () => {
    const running = await openSqlite(file())
    expect(await moveDatabase(data, postgres.url)).toEqual({
      ok: false,
      sentence: expect.stringMatching(/Stop the bot first/),
    })
    await running.destroy()
    expect(await moveDatabase(data, postgres.url)).toMatchObject({ ok: true })
  })

  test('a database that is not empty stays as it is', async () => {
    await (await openSqlite(file())).destroy()
    await postgres.query("create table checks (id text primary key); insert into checks values ('theirs')")
    expect(await moveDatabase(data, postgres.url)).toEqual({
      ok: false,
      sentence: expect.stringMatching(/not empty \(checks\)/),
    })
    expect(await postgres.query('select id from checks')).toEqual([{ id: 'theirs' }])
    expect(
      await postgres.query(
        "select 1 from pg_tables where tablename = 'kysely_migration' and schemaname = current_schema()",
      ),
    ).toEqual([])
  })

  test.each([
    ['newer', "insert into kysely_migration values ('9999-later', '2099-01-01T00:00:00.000Z')", /newer version/],
    ['older', "delete from kysely_migration where name = '0023-stories'", /older version.*start this version once/],
  ])('one of a %s version is refused', async (_, sql, says) => {
    const db = await openSqlite(file())
    await db.destroy()
    const { DatabaseSync } = await import('node:sqlite')
    const raw = new DatabaseSync(file())
    raw.exec(sql)
    raw.close()
    expect(await moveDatabase(data, postgres.url)).toEqual({ ok: false, sentence: expect.stringMatching(says) })
    expect(await postgres.query('select 1 from pg_tables where schemaname = current_schema()')).toEqual([])
  })

  test('a target of a newer version is refused', async () => {
    await (await openSqlite(file())).destroy()
    await postgres.query(
      "create table kysely_migration (name text, timestamp text); insert into kysely_migration values ('9999-later', '')",
    )
    expect(await moveDatabase(data, postgres.url)).toEqual({
      ok: false,
      sentence: expect.stringMatching(/newer version/),
    })
  })

  test('what cannot be written leaves nothing behind', async () => {
    const db = await openSqlite(file())
    await db.insertInto('servers').values({ id: 's', revision: 1, body: '{}' }).execute()
    // PostgreSQL keeps no NUL in a text.
    await db.insertInto('servers').values({ id: 't', revision: 1, body: 'a\0b' }).execute()
    await db.destroy()
    expect(await moveDatabase(data, postgres.url)).toEqual({
      ok: false,
      sentence: expect.stringMatching(/^Nothing was moved/),
    })
    expect(await postgres.query('select id from servers')).toEqual([])
  })

  test('a database that is not there, and one that does not answer', async () => {
    expect(await moveDatabase(data, postgres.url)).toEqual({
      ok: false,
      sentence: expect.stringMatching(/there is no .*cellwary\.db/),
    })
    await expect(stat(file())).rejects.toThrow(/ENOENT/)
    await (await openSqlite(file())).destroy()
    const away = await moveDatabase(data, 'postgres://postgres@127.0.0.1:1/test')
    expect(away).toEqual({ ok: false, sentence: expect.stringMatching(/does not answer \(ECONNREFUSED\)/) })
  })

  test('the command says what was moved and what to do; without a target it says which setting', async () => {
    await (await openSqlite(file())).destroy()
    const run = (env: NodeJS.ProcessEnv) =>
      new Promise<{ code: number; out: string; err: string }>(done =>
        execFile(
          process.execPath,
          [resolve(import.meta.dirname, '../../src/bin/cellwary.ts'), 'move'],
          { env: { PATH: process.env['PATH'], CELLWARY_DATA: data, ...env } },
          (error, out, err) => done({ code: error === null ? 0 : Number(error.code), out, err }),
        ),
      )
    expect(await run({})).toMatchObject({ code: 2, out: '', err: expect.stringMatching(/^DATABASE_URL is not set/) })
    expect(await run({ DATABASE_URL: postgres.url })).toMatchObject({
      code: 0,
      out: expect.stringMatching(/1 {2}kept\n[\s\S]*leave the folder keys in [\s\S]*delete cellwary\.db/),
      err: '',
    })
  })
})
