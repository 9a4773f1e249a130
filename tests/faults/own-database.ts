// A database of its own for processes that are killed: opened here, and named so that they can open it, too.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Kysely } from 'kysely'
import pg from 'pg'
import { openPostgres } from '../../src/stores/open-postgres.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import type { Tables } from '../../src/stores/tables.ts'
import { postgresUrl } from '../stores/databases.ts'

export type OwnDatabase = {
  readonly db: Kysely<Tables>
  /** What the programs of this folder are started with: the kind, the file or address, and the schema. */
  readonly words: readonly [string, string, string]
  close(): Promise<void>
}

export async function openOwnDatabase(kind: string, name: string): Promise<OwnDatabase> {
  if (kind === 'SQLite') {
    const folder = await mkdtemp(join(tmpdir(), `cellwary-${name}-`))
    const file = join(folder, 'test.db')
    const db = await openSqlite(file)
    return {
      db,
      words: [kind, file, ''],
      async close() {
        await db.destroy()
        await rm(folder, { recursive: true, force: true })
      },
    }
  }
  const schema = `cellwary_${name}_${process.pid}`
  const client = new pg.Client({ connectionString: postgresUrl })
  await client.connect()
  await client.query(`drop schema if exists ${schema} cascade`)
  await client.query(`create schema ${schema}`)
  const db = await openPostgres(postgresUrl, schema)
  return {
    db,
    words: [kind, postgresUrl, schema],
    async close() {
      await db.destroy()
      await client.query(`drop schema ${schema} cascade`)
      await client.end()
    },
  }
}
