// The database's files: readable by nobody else, and without what was deleted, whoever was reading at the time.
import { chmod, mkdtemp, readdir, readFile, rm, stat } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { setImmediate as turn } from 'node:timers/promises'
import { sql } from 'kysely'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { KeptValues } from '../../src/stores/cache-adapter.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { base } from '../trends/base-outcome.ts'
import { testCodes, testSeal } from './test-seal.ts'

let folder: string
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-files-'))
})
afterEach(() => rm(folder, { recursive: true, force: true }))
const file = () => join(folder, 'cellwary.db')
const modes = async () =>
  Object.fromEntries(
    await Promise.all(
      (await readdir(folder)).map(async name => [name, ((await stat(join(folder, name))).mode & 0o777).toString(8)]),
    ),
  )
const bytes = async () =>
  (await Promise.all((await readdir(folder)).map(name => readFile(join(folder, name), 'latin1')))).join()
const gone = { ...base, reporter: 'd0'.repeat(32) }

test('the files are for this user alone, those that were everybody’s before as well', async () => {
  const db = await openSqlite(file())
  await openOutcomeLog(db, testSeal, testCodes).record(base)
  expect(await modes()).toEqual({ 'cellwary.db': '600', 'cellwary.db-wal': '600', 'cellwary.db-shm': '600' })
  await db.destroy()
  await chmod(file(), 0o644)
  const again = await openSqlite(file())
  await openOutcomeLog(again, testSeal, testCodes).record({ ...base, server: 'there' })
  expect(await modes()).toEqual({ 'cellwary.db': '600', 'cellwary.db-wal': '600', 'cellwary.db-shm': '600' })
  await again.destroy()
})

test('while somebody reads an older state the log cannot be emptied; as soon as they are through, it is', async () => {
  const db = await openSqlite(file())
  const log = openOutcomeLog(db, testSeal, testCodes)
  await log.record(gone)
  const reader = new DatabaseSync(file())
  reader.exec('begin')
  reader.prepare('select count(*) from outcomes').all()
  const patience = async () => (await sql<{ timeout: number }>`pragma busy_timeout`.execute(db)).rows
  const before = await patience()
  expect(await log.forget([gone.reporter])).toBe(1)
  expect(await patience()).toEqual(before)
  // Still there, or the search would find nothing whatever happened.
  expect(await bytes()).toContain(gone.reporter)
  reader.exec('commit')
  reader.close()
  while ((await bytes()).includes(gone.reporter)) await turn()
  await db.destroy()
})

test('what was left in the log by a process that died is gone once the next one has opened the database', async () => {
  const db = await openSqlite(file())
  const log = openOutcomeLog(db, testSeal, testCodes)
  await log.record(gone)
  const reader = new DatabaseSync(file())
  reader.exec('begin')
  reader.prepare('select count(*) from outcomes').all()
  await log.forget([gone.reporter])
  // Closed while the log cannot be emptied, as by a kill; the files stay as they are.
  await db.destroy()
  expect(await bytes()).toContain(gone.reporter)
  reader.close()
  const again = await openSqlite(file())
  expect(await bytes()).not.toContain(gone.reporter)
  await again.destroy()
})

test('a draft that has expired is swept out of the files as well', async () => {
  const db = await openSqlite(file())
  let now = 1000
  const kept = new KeptValues(db, 'drafts', () => now)
  await kept.set('k', '"words of ada"', 2000)
  expect(await bytes()).toContain('words of ada')
  now = 3000
  expect(await kept.purge()).toBe(1)
  expect(await bytes()).not.toContain('words of ada')
  await db.destroy()
})
