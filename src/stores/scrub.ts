// What was deleted is to be gone from the file too, not only from the tables.
import { setTimeout as after } from 'node:timers/promises'
import { type Kysely, SqliteAdapter, sql } from 'kysely'
import type { Tables } from './tables.ts'

/** How long it waits for whoever reads an older state of the database before it tries again, in ms; longer each time. */
const [first, longest] = [50, 60_000]

/** Databases whose log still holds what was deleted, and is being tried again. */
const owed = new WeakSet<object>()

/**
 * On SQLite, brings the write-ahead log into the database and empties it: with `secure_delete` the freed pages are zeros, but the log
 * holds older ones until then. While another connection reads an older state it cannot be emptied: it is tried again until it is, and
 * once more when the database is opened. On PostgreSQL its own vacuum does as much in its own time.
 */
export async function scrub(db: Kysely<Tables>): Promise<void> {
  if (!(db.getExecutor().adapter instanceof SqliteAdapter) || owed.has(db) || (await empty(db))) return
  owed.add(db)
  void tryAgain(db).finally(() => owed.delete(db))
}

async function tryAgain(db: Kysely<Tables>): Promise<void> {
  for (let wait = first; ; wait = Math.min(2 * wait, longest)) {
    await after(wait, undefined, { ref: false })
    // Once the database is closed, the next one to open it does so.
    if (await empty(db).catch(() => true)) return
  }
}

/** Whether the log was emptied. It does not wait for whoever reads: nobody who clicks meanwhile shall. */
async function empty(db: Kysely<Tables>): Promise<boolean> {
  return db.connection().execute(async alone => {
    const { rows: before } = await sql<{ timeout: number }>`pragma busy_timeout`.execute(alone)
    await sql`pragma busy_timeout = 0`.execute(alone)
    try {
      const { rows } = await sql<{ busy: number }>`pragma wal_checkpoint(truncate)`.execute(alone)
      return rows[0]?.busy === 0
    } finally {
      await sql`pragma busy_timeout = ${sql.lit(before[0]?.timeout ?? 0)}`.execute(alone)
    }
  })
}
