// Opens PostgreSQL for more than one host: the same tables and the same repository functions as on SQLite.
import { Kysely, PostgresDialect, sql } from 'kysely'
import pg from 'pg'
import { migrate } from './migrations.ts'
import type { Tables } from './tables.ts'

/** Opens the database at `url` (postgres://…), up to date; throws `NewerDatabase` where a newer version was here. */
export async function openPostgres(url: string, schema?: string): Promise<Kysely<Tables>> {
  const db = openPostgresAsIs(url, schema)
  try {
    const { rows } = await sql<{ here: string }>`select current_schema() as here`.execute(db)
    await migrate(db, rows[0]?.here)
    return db
  } catch (error) {
    await db.destroy().catch(() => undefined)
    throw error
  }
}

/** The database as it stands; nothing is migrated. Big integers come back as numbers: ours are times in ms, and counts. */
export function openPostgresAsIs(url: string, schema?: string): Kysely<Tables> {
  const types = {
    getTypeParser: (oid: number, format?: 'text') => (oid === 20 ? Number : pg.types.getTypeParser(oid, format)),
  }
  const pool = new pg.Pool({
    connectionString: url,
    max: 10,
    types: types as pg.CustomTypesConfig,
    ...(schema && { options: `-c search_path=${schema}` }),
  })
  return new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) })
}
