// Makes the databases of version 0.1.0 anew: fills one on SQLite and one on PostgreSQL alike, and writes both as SQL text.
import { execFile } from 'node:child_process'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { mock } from 'node:test'
import { isDeepStrictEqual, promisify } from 'node:util'
import type { Kysely } from 'kysely'
import pg from 'pg'
import { openPostgres } from '../../../src/stores/open-postgres.ts'
import { openSqlite } from '../../../src/stores/open-sqlite.ts'
import type { Tables } from '../../../src/stores/tables.ts'
import { whatIsIn } from '../what-is-in.ts'
import { leaveChecks, leaveTheRest, now } from './make-checks.ts'
import { openMaker } from './make-desk.ts'
import { passWeeks } from './make-weeks.ts'

const run = promisify(execFile)
const url = process.env['CELLWARY_TEST_POSTGRES'] ?? 'postgres://postgres@127.0.0.1:5432/test'
const schema = 'cellwary_of_version'
const started = Date.UTC(2026, 6, 5)

async function fill(db: Kysely<Tables>) {
  const folder = await mkdtemp(join(tmpdir(), 'cellwary-make-'))
  const maker = await openMaker(db, folder, ['2026-E3', '2026-E4'])
  await passWeeks(maker, db)
  const checks = await leaveChecks(maker)
  const { drafts } = await leaveTheRest(maker)
  await rm(folder, { recursive: true })
  const findings = await db.selectFrom('findings').select('id').orderBy('server').orderBy('key').execute()
  const people = (await db.selectFrom('checks').select('holder').distinct().orderBy('holder').execute()).map(
    one => one.holder,
  )
  const look = { now, checks, findings: findings.map(one => one.id), drafts, people }
  return { version: '0.1.0', look, holds: await whatIsIn(db, maker.desk.programs, look) }
}

async function ofSqlite() {
  const folder = await mkdtemp(join(tmpdir(), 'cellwary-make-'))
  const file = join(folder, 'cellwary.db')
  mock.timers.setTime(started)
  const db = await openSqlite(file)
  const filled = await fill(db)
  await db.destroy()
  const { stdout } = await run('sqlite3', [file, '.dump'], { maxBuffer: 1e8 })
  await rm(folder, { recursive: true })
  return { filled, text: stdout }
}

async function ofPostgres() {
  const client = new pg.Client({ connectionString: url })
  await client.connect()
  await client.query(`drop schema if exists ${schema} cascade`)
  await client.query(`create schema ${schema}`)
  mock.timers.setTime(started)
  const db = await openPostgres(url, schema)
  const filled = await fill(db)
  await db.destroy()
  const how = ['--schema', schema, '--inserts', '--rows-per-insert=50', '--no-owner', '--no-privileges']
  const { stdout } = await run('pg_dump', [...how, '--dbname', url], { maxBuffer: 1e8 })
  await client.query(`drop schema ${schema} cascade`)
  await client.end()
  return { filled, text: withoutSchema(stdout) }
}

/** The dump for whatever schema the search path leads to, and without what only psql or a whole database understands. */
const withoutSchema = (text: string): string =>
  text
    .replaceAll(`${schema}.`, '')
    .replace(/^(SET |SELECT pg_catalog\.set_config|CREATE SCHEMA |\\(un)?restrict ).*\n/gm, '')
    .replace(/^--.*\n/gm, '')
    .replace(/\n{2,}/g, '\n')
    .trimStart()

mock.timers.enable({ apis: ['Date'], now: started })
const sqlite = await ofSqlite()
const postgres = await ofPostgres()
if (!isDeepStrictEqual(sqlite.filled, postgres.filled)) throw new Error('the two databases do not hold the same')
const here = (name: string) => join(import.meta.dirname, name)
await writeFile(here('sqlite.sql'), sqlite.text)
await writeFile(here('postgres.sql'), postgres.text)
await writeFile(here('what-is-in-it.json'), `${JSON.stringify(sqlite.filled, null, 1)}\n`)
