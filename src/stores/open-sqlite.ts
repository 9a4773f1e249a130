// Opens the embedded database: node:sqlite behind kysely, in WAL mode so that several processes of one host can share it.
import { DatabaseSync, type SQLInputValue } from 'node:sqlite'
import { Kysely, type SqliteDatabase, SqliteDialect } from 'kysely'
import { migrate } from './migrations.ts'
import type { Tables } from './tables.ts'

/** How long a writer waits for another process before it gives up, in ms; half the time Discord gives for an answer. */
const busyTimeout = 1500

/**
 * Opens (and creates) the database at `path`, up to date. `synchronous = normal` in WAL mode keeps every commit through a
 * crash of the process, kill -9 included; a power cut may lose the last ones but never corrupts the file (sqlite.org/wal.html).
 */
export async function openSqlite(path: string): Promise<Kysely<Tables>> {
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: async () => adapt(path) }) })
  await migrate(db)
  return db
}

function adapt(path: string): SqliteDatabase {
  const database = new DatabaseSync(path, { timeout: busyTimeout })
  database.exec('pragma journal_mode = wal; pragma synchronous = normal; pragma foreign_keys = on')
  const prepared = new Map<string, ReturnType<DatabaseSync['prepare']>>()
  return {
    close: () => database.close(),
    prepare(sql) {
      let statement = prepared.get(sql)
      if (!statement) {
        statement = database.prepare(sql)
        // Only statements with a fixed text come back often; the bound keeps generated ones from piling up.
        if (prepared.size < 200 && !/^\s*(create|alter|drop|pragma)/i.test(sql)) prepared.set(sql, statement)
      }
      const ready = statement
      const values = (parameters: readonly unknown[]) => parameters as SQLInputValue[]
      return {
        reader: ready.columns().length > 0,
        all: parameters => ready.all(...values(parameters)),
        run: parameters => ready.run(...values(parameters)),
        iterate: parameters => ready.iterate(...values(parameters)),
      }
    },
  }
}
