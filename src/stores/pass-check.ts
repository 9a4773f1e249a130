// Stores a check that comes to another holder, within a number of open ones, whatever other processes give them at the same moment.
import { type Kysely, SqliteAdapter, sql, type Updateable } from 'kysely'
import type { Saving } from '../check/store.ts'
import { openOf } from './insert-check.ts'
import type { CheckRow, Tables } from './tables.ts'

export type Passing = {
  readonly id: string
  readonly expected: number
  readonly settled: number
  readonly interaction: string
  readonly row: Updateable<CheckRow> & { readonly holder: string }
  /** ms since 1970. */
  readonly now: number
  readonly most: number
}

/** SQLite lets one statement write at a time; PostgreSQL is asked to let one take of a person wait for the other. */
export const passWithin = (db: Kysely<Tables>, passing: Passing): Promise<Saving | 'full'> =>
  db.getExecutor().adapter instanceof SqliteAdapter
    ? pass(db, passing)
    : db.transaction().execute(async within => {
        await sql`select pg_advisory_xact_lock(hashtext(${passing.row.holder}))`.execute(within)
        return pass(within, passing)
      })

async function pass(db: Kysely<Tables>, passing: Passing): Promise<Saving | 'full'> {
  const { id, expected, settled, interaction, row, now, most } = passing
  const open = openOf(db, { holder: row.holder, started_at: now })
  const done = await db
    .updateTable('checks')
    .set({ ...row, changed_by: interaction })
    .where('id', '=', id)
    .where('revision', '=', expected)
    .where('settled', '=', settled)
    .where('changed_by', '!=', interaction)
    .where(sql<boolean>`(${open}) < ${most}`)
    .executeTakeFirstOrThrow()
  if (done.numUpdatedRows === 1n) return 'saved'
  const stands = await db
    .selectFrom('checks')
    .select(['revision', 'changed_by'])
    .where('id', '=', id)
    .executeTakeFirst()
  if (stands?.changed_by === interaction) return 'seen'
  return stands?.revision === expected ? 'full' : 'stale'
}
