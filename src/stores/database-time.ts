// The database's own clock, where it has another than this machine's.
import { type Kysely, SqliteAdapter, sql } from 'kysely'
import type { Tables } from './tables.ts'

/** Whole milliseconds since 1970; null on SQLite, which asks this machine. */
export async function databaseTime(db: Kysely<Tables>): Promise<number | null> {
  if (db.getExecutor().adapter instanceof SqliteAdapter) return null
  const { rows } = await sql<{ ms: string }>`select extract(epoch from clock_timestamp()) * 1000 as ms`.execute(db)
  return Math.round(Number(rows[0]?.ms))
}
