// Opens the embedded database: node:sqlite behind kysely, in WAL mode so that several processes of one host can share it.
import { chmodSync, statSync } from 'node:fs'
import { DatabaseSync, type SQLInputValue } from 'node:sqlite'
import { Kysely, type LogConfig, type SqliteDatabase, SqliteDialect, type SqliteStatement } from 'kysely'
import { migrate } from './migrations.ts'
import { scrub } from './scrub.ts'
import type { Tables } from './tables.ts'

/** How long a writer waits for another process before it gives up, in ms; half the time Discord gives for an answer. */
const busyTimeout = 1500

/**
 * Opens (and creates) the database at `path`, up to date; throws `NewerDatabase` where a newer version was here. `synchronous =
 * normal` in WAL mode keeps every commit through a crash of the process, kill -9 included; a power cut may lose the last ones but
 * never corrupts the file (sqlite.org/wal.html).
 */
export async function openSqlite(path: string, log: LogConfig = []): Promise<Kysely<Tables>> {
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: async () => adapt(path) }), log })
  try {
    await migrate(db)
    // Whoever was here before may have been cut off between deleting and scrubbing.
    await scrub(db)
    return db
  } catch (error) {
    await db.destroy().catch(() => undefined)
    throw error
  }
}

/** The database at `path` as it stands, for reading, or for writing too; no step is taken to bring it up to date. */
export function openAsIs(path: string, writing: boolean): Kysely<Tables> {
  const database = new DatabaseSync(path, { timeout: busyTimeout, readOnly: !writing })
  return new Kysely<Tables>({ dialect: new SqliteDialect({ database: async () => wrap(database) }) })
}

function adapt(path: string): SqliteDatabase {
  const database = openPrivately(path)
  // Pages that every click reads and writes stay in memory, 16 MB of them.
  database.exec('pragma cache_size = -16000')
  // What is deleted is overwritten: nobody shall read in the file what the tables have forgotten.
  database.exec(
    'pragma journal_mode = wal; pragma synchronous = normal; pragma foreign_keys = on; pragma secure_delete = on',
  )
  return wrap(database, stillThere(path))
}

/** The file, and what SQLite lays beside it with the same rights, is for this user alone. */
function openPrivately(path: string): DatabaseSync {
  const before = process.umask(0o077)
  try {
    const database = new DatabaseSync(path, { timeout: busyTimeout })
    // One that another version made may be everybody's to read. Where it is somebody else's, they decide.
    for (const file of [path, `${path}-wal`, `${path}-shm`])
      try {
        chmodSync(file, 0o600)
      } catch {}
    return database
  } finally {
    process.umask(before)
  }
}

/** Whoever writes into a file that was removed is told so, and not that it was stored. */
class DatabaseGone extends Error {
  readonly code = 'DATABASE_GONE'
}

/** Throws once the file at `path` is no longer the one it was: what is written into it then is kept by nobody. */
function stillThere(path: string): () => void {
  if (path === ':memory:') return () => undefined
  const inode = () => statSync(path, { throwIfNoEntry: false })?.ino
  const first = inode()
  return () => {
    if (inode() !== first) throw new DatabaseGone(`${path} was removed or replaced while it was open`)
  }
}

function wrap(database: DatabaseSync, beforeWriting: () => void = () => undefined): SqliteDatabase {
  const prepared = new Map<string, SqliteStatement>()
  return {
    close: () => database.close(),
    prepare(sql) {
      const known = prepared.get(sql)
      if (known) return known
      const statement = statementOf(database, sql, beforeWriting)
      // Only statements with a fixed text come back often; the bound keeps generated ones from piling up.
      if (prepared.size < 200 && !/^\s*(create|alter|drop|pragma)/i.test(sql)) prepared.set(sql, statement)
      return statement
    },
  }
}

function statementOf(database: DatabaseSync, sql: string, beforeWriting: () => void): SqliteStatement {
  const statement = database.prepare(sql)
  const values = (parameters: readonly unknown[]) => parameters as SQLInputValue[]
  return {
    reader: statement.columns().length > 0,
    all: parameters => statement.all(...values(parameters)),
    run: parameters => {
      beforeWriting()
      return statement.run(...values(parameters))
    },
    iterate: parameters => statement.iterate(...values(parameters)),
  }
}
