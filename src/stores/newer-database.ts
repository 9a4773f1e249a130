// A database that a newer version has changed: which version can open it is kept in it, and this one leaves it alone.
import { type Kysely, sql } from 'kysely'
import manifest from '../../package.json' with { type: 'json' }
import type { Tables } from './tables.ts'

/** Thrown before anything is changed; the message says what to do. */
export class NewerDatabase extends Error {
  readonly code = 'newer-database'

  constructor(step: string, version: string | undefined) {
    const which = version === undefined ? 'the version that was used with it last' : `version ${version}`
    super(
      `The database was written by a newer version: it holds the step "${step}", which this one, ${manifest.version}, does not know. Start ${which}, or a later one; nothing in the database was changed.`,
    )
  }
}

/** Where the version is kept that took the last step: older ones cannot open the database any more. */
export const versionKey = 'needs-version'

export async function keepVersion(db: Kysely<Tables>): Promise<void> {
  const { version: value } = manifest
  await db
    .insertInto('kept')
    .values({ key: versionKey, value, expires_at: null })
    .onConflict(conflict => conflict.column('key').doUpdateSet({ value }))
    .execute()
}

/** What to say of a database that has taken a step which is not one of `known`; undefined if it has taken none. */
export async function newerThan(db: Kysely<Tables>, known: readonly string[]): Promise<NewerDatabase | undefined> {
  const step = (await stepsTaken(db)).find(name => !known.includes(name))
  if (step === undefined) return undefined
  // A later version may keep this elsewhere: then it is not known.
  const kept = db.selectFrom('kept').select('value').where('key', '=', versionKey).executeTakeFirst()
  return new NewerDatabase(step, (await kept.catch(() => undefined))?.value)
}

/** The steps it has taken, in order; none where it has no tables of ours. */
export async function stepsTaken(db: Kysely<Tables>): Promise<readonly string[]> {
  const reading = sql<{ name: string }>`select name from kysely_migration order by name`.execute(db)
  const { rows } = await reading.catch(error => (isMissing(error) ? { rows: [] } : Promise.reject(error)))
  return rows.map(({ name }) => name)
}

/** Whether a table is not there: PostgreSQL's “undefined table”, and how SQLite says it. */
export const isMissing = (error: unknown): boolean =>
  error instanceof Error && (('code' in error && error.code === '42P01') || /^no such table/.test(error.message))
