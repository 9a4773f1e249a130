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
const key = 'needs-version'

export async function keepVersion(db: Kysely<Tables>): Promise<void> {
  const { version: value } = manifest
  await db
    .insertInto('kept')
    .values({ key, value, expires_at: null })
    .onConflict(conflict => conflict.column('key').doUpdateSet({ value }))
    .execute()
}

/** What to say of a database that has taken a step which is not one of `known`; undefined if it has taken none. */
export async function newerThan(db: Kysely<Tables>, known: readonly string[]): Promise<NewerDatabase | undefined> {
  const { rows } = await sql<{ name: string }>`select name from kysely_migration order by name`.execute(db)
  const step = rows.find(({ name }) => !known.includes(name))?.name
  if (step === undefined) return undefined
  // A later version may keep this elsewhere: then it is not known.
  const kept = db.selectFrom('kept').select('value').where('key', '=', key).executeTakeFirst()
  return new NewerDatabase(step, (await kept.catch(() => undefined))?.value)
}
