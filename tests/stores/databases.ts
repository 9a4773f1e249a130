// The databases the store contracts are held against: SQLite always, PostgreSQL where one is in reach (and says when not).
import { randomUUID } from 'node:crypto'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { type Kysely, sql } from 'kysely'
import pg from 'pg'
import { openPostgres, PostgresTrouble } from '../../src/stores/open-postgres.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import type { Tables } from '../../src/stores/tables.ts'

export type Opened = { readonly db: Kysely<Tables>; again(): Promise<Kysely<Tables>>; close(): Promise<void> }
export type Kind = {
  readonly name: string
  readonly missing: string | undefined
  /** The name of its dumps. */
  readonly dump: string
  /** A database of its own; `holding`: the SQL text of a dump, which is there before the stores open it. */
  open(holding?: string): Promise<Opened>
}

export const postgresUrl = process.env['CELLWARY_TEST_POSTGRES'] ?? 'postgres://postgres@127.0.0.1:5432/test'

async function reachable(): Promise<boolean> {
  const client = new pg.Client({ connectionString: postgresUrl, connectionTimeoutMillis: 2000 })
  try {
    await client.connect()
    await client.end()
    return true
  } catch {
    return false
  }
}

const postgres = await reachable()

/** Whoever looks at all tables of the database meets schemas and columns that other tests are just dropping: then it looks again, for a while. */
const justDropped: readonly (string | undefined)[] = ['3F000', '42703']
const mostLooks = 20

async function openBeside(schema: string): Promise<Kysely<Tables>> {
  for (let look = 1; ; look += 1)
    try {
      return await openPostgres(postgresUrl, schema)
    } catch (error) {
      if (!(error instanceof PostgresTrouble) || !justDropped.includes(error.code) || look === mostLooks) throw error
    }
}

export const databases: readonly Kind[] = [
  {
    name: 'SQLite',
    missing: undefined,
    dump: 'sqlite.sql',
    async open(holding) {
      const folder = await mkdtemp(join(tmpdir(), 'cellwary-'))
      const path = join(folder, 'test.db')
      if (holding !== undefined) {
        const database = new DatabaseSync(path)
        database.exec(holding)
        database.close()
      }
      const opened = [await openSqlite(path)]
      return {
        db: opened[0] as Kysely<Tables>,
        async again() {
          opened.push(await openSqlite(path))
          return opened.at(-1) as Kysely<Tables>
        },
        async close() {
          for (const one of opened) await one.destroy()
          await rm(folder, { recursive: true, force: true })
        },
      }
    },
  },
  {
    name: 'PostgreSQL',
    missing: postgres ? undefined : `no PostgreSQL at ${new URL(postgresUrl).host}`,
    dump: 'postgres.sql',
    async open(holding) {
      const schema = `cellwary_${randomUUID().replaceAll('-', '')}`
      const client = new pg.Client({ connectionString: postgresUrl })
      await client.connect()
      await client.query(`create schema ${schema}`)
      if (holding !== undefined) await client.query(`set search_path to ${schema};\n${holding}`)
      const opened = [await openBeside(schema)]
      return {
        db: opened[0] as Kysely<Tables>,
        async again() {
          opened.push(await openBeside(schema))
          return opened.at(-1) as Kysely<Tables>
        },
        async close() {
          for (const one of opened) await one.destroy()
          await client.query(`drop schema ${schema} cascade`)
          await client.end()
        },
      }
    },
  },
]

export { sql }
