// Opens PostgreSQL for more than one host: the same tables and the same repository functions as on SQLite.
import { Kysely, type LogConfig, PostgresDialect, type PostgresPool, type PostgresPoolClient, sql } from 'kysely'
import pg from 'pg'
import { migrate } from './migrations.ts'
import type { Tables } from './tables.ts'

/** How long a click waits for a connection before its person is told to try again, in ms. */
const connectWithin = 2000

/**
 * What PostgreSQL, or the way to it, refused. Its own words are left behind: they repeat whole rows (“Failing row contains …”), which
 * are in no log's place. `code`: SQLSTATE, or the system's name for what became of the connection.
 */
export class PostgresTrouble extends Error {
  readonly code: string

  constructor(error: unknown) {
    const { code, table, constraint } = error as Partial<Record<'code' | 'table' | 'constraint', string>>
    const where = [table && ` in table ${table}`, constraint && ` by ${constraint}`].filter(Boolean).join('')
    super(`PostgreSQL: ${code ?? 'the connection was lost'}${where}`)
    this.code = code ?? (error instanceof Error && /not support SSL/.test(error.message) ? 'NO_TLS' : 'ECONNLOST')
  }
}

/** Opens the database at `url` (postgres://…), up to date; throws `NewerDatabase` where a newer version was here. */
export async function openPostgres(
  url: string,
  schema?: string,
  lost?: (error: Error) => void,
  log?: LogConfig,
): Promise<Kysely<Tables>> {
  const db = openPostgresAsIs(url, schema, lost, log)
  try {
    const { rows } = await sql<{ here: string }>`select current_schema() as here`.execute(db)
    await migrate(db, rows[0]?.here)
    return db
  } catch (error) {
    await db.destroy().catch(() => undefined)
    throw error
  }
}

/**
 * The database as it stands; nothing is migrated. Big integers come back as numbers: ours are times in ms, and counts. A connection that
 * is lost is told to `lost` and made anew for whoever asks next.
 */
export function openPostgresAsIs(
  url: string,
  schema?: string,
  lost: (error: Error) => void = () => undefined,
  log: LogConfig = [],
): Kysely<Tables> {
  const types = {
    getTypeParser: (oid: number, format?: 'text') => (oid === 20 ? Number : pg.types.getTypeParser(oid, format)),
  }
  const pool = new pg.Pool({
    connectionString: url,
    max: 10,
    connectionTimeoutMillis: connectWithin,
    keepAlive: true,
    types: types as pg.CustomTypesConfig,
    ...(schema && { options: `-c search_path=${schema}` }),
  })
  const tell = (error: unknown) => lost(new PostgresTrouble(error))
  // A connection without a listener ends the process when the server closes it, at work or not.
  pool.on('error', tell)
  pool.on('connect', client => void client.on('error', tell))
  return new Kysely<Tables>({ dialect: new PostgresDialect({ pool: withoutRows(pool) }), log })
}

/** The pool, with every error as `PostgresTrouble`. */
function withoutRows(pool: pg.Pool): PostgresPool {
  const known = new WeakMap<pg.PoolClient, PostgresPoolClient>()
  const told = (error: unknown): never => {
    throw new PostgresTrouble(error)
  }
  const wrap = (client: pg.PoolClient): PostgresPoolClient => {
    const query = (text: string, values: unknown[]) => client.query(text, values).catch(told)
    return { query, release: (broken?: boolean) => client.release(broken) } as unknown as PostgresPoolClient
  }
  return {
    async connect() {
      const client = await pool.connect().catch(told)
      const wrapped = known.get(client) ?? wrap(client)
      known.set(client, wrapped)
      return wrapped
    },
    end: () => pool.end(),
  } as PostgresPool
}
