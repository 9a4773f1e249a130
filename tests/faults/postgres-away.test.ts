// PostgreSQL cuts connections, restarts, or is away: the process goes on, whoever asks meanwhile is told of trouble, and it reconnects.
import Keyv from 'keyv'
import { type Kysely, sql } from 'kysely'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openLog } from '../../src/discord/gateway/logger.ts'
import { failingOf } from '../../src/discord/interaction/failures.ts'
import { KeptValues } from '../../src/stores/cache-adapter.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openPostgres } from '../../src/stores/open-postgres.ts'
import type { Tables } from '../../src/stores/tables.ts'
import { databases, type Opened, postgresUrl } from '../stores/databases.ts'
import { pausedCheck } from '../stores/paused-check.ts'
import { testSeal } from '../stores/test-seal.ts'
import { openWay, type Way } from './way.ts'

const kind = databases.find(one => one.name === 'PostgreSQL')

/** Asks again while it is trouble, once for each connection of the pool that may be found dead: more often is a fault. */
async function soon<T>(ask: () => Promise<T>): Promise<T> {
  for (let dead = 0; ; dead++)
    try {
      return await ask()
    } catch (error) {
      if (dead >= 10 || failingOf(error) !== 'trouble') throw error
    }
}

describe.skipIf(kind?.missing)(`on PostgreSQL${kind?.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
  let opened: Opened
  let way: Way
  let db: Kysely<Tables>
  const lost: Error[] = []
  const told = Promise.withResolvers<void>()
  beforeAll(async () => {
    opened = (await kind?.open()) as Opened
    const { rows } = await sql<{ here: string }>`select current_schema() as here`.execute(opened.db)
    way = await openWay()
    const url = new URL(postgresUrl)
    url.port = String(way.port)
    db = await openPostgres(url.href, rows[0]?.here, error => {
      lost.push(error)
      told.resolve()
    })
  })
  afterAll(async () => {
    await db?.destroy()
    await way?.shut()
    await opened?.close()
  })

  test('a connection that is cut while nobody uses it is told of, and the next click has another', async () => {
    const store = openCheckStore(db, testSeal)
    expect(await store.create(pausedCheck('a'), 'i-a')).toBe('saved')
    way.cut()
    await told.promise
    expect(lost[0]).toMatchObject({ name: 'Error', code: expect.any(String) })
    expect((await soon(() => store.load('a')))?.check.id).toBe('a')
  })

  test('the server ends a connection, as a restart does: whoever asks next has another', async () => {
    const store = openCheckStore(db, testSeal)
    const backend = async () => (await sql<{ pid: number }>`select pg_backend_pid() as pid`.execute(db)).rows[0]?.pid
    const ours = await soon(backend)
    await sql`select pg_terminate_backend(${ours})`.execute(opened.db)
    expect(await soon(backend)).not.toBe(ours)
    expect((await soon(() => store.load('a')))?.check.id).toBe('a')
  })

  test('a statement that is cut off is trouble, as is everything while the database is away; then it goes on', async () => {
    const store = openCheckStore(db, testSeal)
    const cutOff = sql`select pg_sleep(60)`.execute(db).catch(error => error)
    // Another statement that came back shows that the first is under way, on a connection of its own.
    await store.load('a')
    await way.shut()
    const kept = new Keyv({ store: new KeptValues(db, 'drafts') })
    const failures = [
      await cutOff,
      ...(await Promise.all([
        store.load('a').catch(error => error),
        store.create(pausedCheck('b'), 'i-b').catch(error => error),
        store.save(pausedCheck('a', { revision: 1 }), 0, 'i-a1').catch(error => error),
        kept.set('k', 1).catch(error => error),
      ])),
    ]
    for (const failure of failures) expect(failingOf(failure), String(failure)).toBe('trouble')
    await way.open()
    expect((await soon(() => store.load('a')))?.check.revision).toBe(0)
    expect(await store.create(pausedCheck('b'), 'i-b')).toBe('saved')
    expect(await kept.set('k', 1)).toBe(true)
  })

  test('no error repeats a row, in the log or anywhere else', async () => {
    const lines: string[] = []
    const log = openLog('trace', { write: line => void lines.push(line) })
    const row = { ...{ id: 'c', revision: 0, holder: 'somebody’s id', phase: 'paused', expires_at: 1, started_at: 1 } }
    const broken = [
      sql`insert into checks (id, revision, holder, phase, expires_at, started_at, body) values
        (${row.id}, 0, ${row.holder}, ${row.phase}, 1, 1, 'somebody’s answers')`,
      sql`insert into checks (id, revision, holder) values ('d', ${'somebody’s words'}::int, 'x')`,
      sql`select 'somebody’s answers' from nowhere`,
    ]
    for (const statement of broken) {
      const error = await statement.execute(db).catch((one: unknown) => one)
      log.error({ err: error }, 'failed')
      expect(error).toMatchObject({ code: expect.stringMatching(/^\w{5}$/) })
    }
    expect(lines).toHaveLength(3)
    expect(lines.join()).toMatch(/23502 in table checks/)
    expect(lines.join()).not.toMatch(/somebody/)
  })
})
