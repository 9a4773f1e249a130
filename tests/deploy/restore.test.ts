// A back-up of either database put back as operate.md says: every check that was acknowledged before it goes on from there.
import { execFile } from 'node:child_process'
import { randomUUID } from 'node:crypto'
import { copyFile, mkdir, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import type { Kysely } from 'kysely'
import pg from 'pg'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { backUp } from '../../deploy/back-up.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openFamilyStore } from '../../src/stores/family-store.ts'
import { openPostgres } from '../../src/stores/open-postgres.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import type { Tables } from '../../src/stores/tables.ts'
import { draftOf, named, versionOf } from '../families/made-families.ts'
import { postgresUrl } from '../stores/databases.ts'
import { noPostgres } from '../stores/fresh-postgres.ts'
import { pausedCheck } from '../stores/paused-check.ts'
import { testSeal } from '../stores/test-seal.ts'

const run = promisify(execFile)
const missing =
  noPostgres ??
  (await run('pg_dump', ['--version']).then(
    () => undefined,
    () => 'no pg_dump',
  ))
const now = Date.UTC(2026, 10, 25)
let folder: string
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-restore-'))
})
afterEach(() => rm(folder, { recursive: true, force: true }))

async function leaveSomething(db: Kysely<Tables>): Promise<void> {
  const checks = openCheckStore(db, testSeal)
  for (let n = 0; n < 20; n++) expect(await checks.create(pausedCheck(`c${n}`), `i${n}`)).toBe('saved')
  const families = openFamilyStore(db)
  expect(await families.create(draftOf('s', named('f-aaaaaa', 'Larkmoor 10')), 'larkmoor 10')).toBe('saved')
}

/** What was there is there, and can be gone on with: saves, and the trigger that puts a family in force. */
async function goesOn(db: Kysely<Tables>): Promise<void> {
  const checks = openCheckStore(db, testSeal)
  for (let n = 0; n < 20; n++) expect((await checks.load(`c${n}`))?.check).toEqual(pausedCheck(`c${n}`))
  expect(await checks.load('later')).toBeUndefined()
  expect(await checks.create(pausedCheck('anew'), 'i0')).not.toBe('saved')
  expect(await checks.create(pausedCheck('anew'), 'i-anew')).toBe('saved')
  const families = openFamilyStore(db)
  const facts = named('f-aaaaaa', 'Larkmoor 10')
  const inForce = {
    ...draftOf('s', facts),
    state: 'in-force' as const,
    head: 1,
    revision: 2,
    draft: null,
    changedBy: 'x',
  }
  expect(await families.putInForce(inForce, 'larkmoor 10', versionOf(facts, 1))).toBe('saved')
  expect(await db.selectFrom('family_versions').select('number').execute()).toEqual([{ number: 1 }])
}

test('SQLite', async () => {
  const [data, kept, anew] = ['data', 'kept', 'anew'].map(name => join(folder, name)) as [string, string, string]
  await mkdir(data)
  const db = await openSqlite(join(data, 'cellwary.db'))
  await leaveSomething(db)
  const done = await backUp(data, kept, now)
  expect(done.ok).toBe(true)
  expect(await openCheckStore(db, testSeal).create(pausedCheck('later'), 'i-later')).toBe('saved')
  await db.destroy()
  await mkdir(anew)
  await copyFile(done.ok ? done.file : '', join(anew, 'cellwary.db'))
  const again = await openSqlite(join(anew, 'cellwary.db'))
  await goesOn(again)
  await again.destroy()
})

test.skipIf(missing)(`PostgreSQL${missing ? ` (skipped: ${missing})` : ''}`, async () => {
  const admin = new pg.Client({ connectionString: postgresUrl })
  await admin.connect()
  const names = ['before', 'after'].map(name => `cellwary_${name}_${randomUUID().slice(0, 8)}`) as [string, string]
  const [before, after] = names.map(name => Object.assign(new URL(postgresUrl), { pathname: `/${name}` }).href) as [
    string,
    string,
  ]
  const file = join(folder, 'kept.dump')
  try {
    for (const name of names) await admin.query(`create database ${name}`)
    const db = await openPostgres(before)
    await leaveSomething(db)
    await run('pg_dump', ['--format=custom', `--file=${file}`, before])
    expect(await openCheckStore(db, testSeal).create(pausedCheck('later'), 'i-later')).toBe('saved')
    await db.destroy()
    await run('pg_restore', ['--no-owner', `--dbname=${after}`, file])
    const again = await openPostgres(after)
    await goesOn(again)
    await again.destroy()
  } finally {
    for (const name of names) await admin.query(`drop database if exists ${name}`)
    await admin.end()
  }
})
