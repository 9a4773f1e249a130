// What was deleted is to be gone from the file too, not only from the tables.
import { type Kysely, SqliteAdapter, sql } from 'kysely'
import type { Tables } from './tables.ts'

/**
 * On SQLite, brings the write-ahead log into the database and empties it: with `secure_delete` the freed pages are zeros, but the log
 * holds older ones until then. On PostgreSQL its own vacuum does as much in its own time.
 */
export async function scrub(db: Kysely<Tables>): Promise<void> {
  if (db.getExecutor().adapter instanceof SqliteAdapter) await sql`pragma wal_checkpoint(truncate)`.execute(db)
}
