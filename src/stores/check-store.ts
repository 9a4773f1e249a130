// The check store over SQL: one statement a save, so that claim, compare-and-set and change are one or none.
import type { Kysely, Updateable } from 'kysely'
import type { Check } from '../check/check.ts'
import type { CheckStore } from '../check/store.ts'
import type { Outcome } from '../trends/outcome.ts'
import { rowOf } from './outcome-row.ts'
import { scrub } from './scrub.ts'
import type { CheckRow, Tables } from './tables.ts'
import { withValues } from './with-values.ts'

export function openCheckStore(db: Kysely<Tables>): CheckStore<Outcome> {
  // The two statements of every click, compiled once: kysely builds the text, each call brings its values in order.
  const loading = db.selectFrom('checks').select(['body', 'changed_by']).where('id', '=', '').compile()
  const changing = (row: Updateable<CheckRow>) =>
    db
      .updateTable('checks')
      .set(row)
      .where('id', '=', '')
      .where('revision', '=', 0)
      .where('changed_by', '!=', '')
      .compile()
  const saving = changing(changeable(blank, ''))
  // Closing writes the outcome too: a trigger keeps it, in the same statement, if none was settled before.
  const closing = changing({ ...changeable(blank, ''), settled: 1, outcome: '' })

  /** Checks that are neither closed nor expired. */
  const openAt = (now: number) =>
    db.selectFrom('checks').select('body').where('phase', '!=', 'closed').where('expires_at', '>', now)

  return {
    async create(check, interaction) {
      const row = {
        ...changeable(check, interaction),
        id: check.id,
        started_at: check.startedAt,
        opened_by: interaction,
      }
      const done = await db
        .insertInto('checks')
        .values(row)
        .onConflict(conflict => conflict.column('opened_by').doNothing())
        .executeTakeFirst()
      return done.numInsertedOrUpdatedRows === 1n ? 'saved' : 'seen'
    },

    async load(id) {
      const { rows } = await db.executeQuery(withValues(loading, [id]))
      return rows[0] && { check: fromBody(rows[0].body), changedBy: rows[0].changed_by }
    },

    async save(check, expected, interaction, outcome) {
      const values = Object.values(changeable(check, interaction))
      const key = [check.id, expected, interaction]
      const query =
        outcome === undefined
          ? withValues(saving, [...values, ...key])
          : withValues(closing, [...values, 1, textOf(outcome), ...key])
      const done = await db.executeQuery(query)
      if (done.numAffectedRows === 1n) return 'saved'
      const { rows } = await db.executeQuery(withValues(loading, [check.id]))
      return rows[0]?.changed_by === interaction ? 'seen' : 'stale'
    },

    async finished(expiry, limit) {
      const rows = await db
        .selectFrom('checks')
        .select('body')
        .where('phase', '=', 'done')
        .where('settled', '=', 0)
        .where('expires_at', '<=', expiry)
        .orderBy('expires_at')
        .limit(limit)
        .execute()
      return rows.map(row => fromBody(row.body))
    },

    async settle(check, outcome) {
      const done = await db
        .updateTable('checks')
        .set({ settled: 1, outcome: textOf(outcome) })
        .where('id', '=', check.id)
        .where('revision', '=', check.revision)
        .where('settled', '=', 0)
        .executeTakeFirst()
      return done.numUpdatedRows === 1n
    },

    async heldBy(person, now) {
      const rows = await openAt(now).where('holder', '=', person).orderBy('started_at', 'desc').orderBy('id').execute()
      return rows.map(row => fromBody(row.body))
    },

    async startedBy(person, now) {
      const rows = await openAt(now)
        .where('starter', '=', person)
        .where('holder', '!=', person)
        .orderBy('started_at', 'desc')
        .orderBy('id')
        .execute()
      return rows.map(row => fromBody(row.body))
    },

    async handedIn(server, now) {
      const rows = await openAt(now)
        .where('server', '=', server)
        .where('starter', 'is not', null)
        .orderBy('started_at')
        .orderBy('id')
        .execute()
      return rows.map(row => fromBody(row.body))
    },

    async counted(person, interaction) {
      const row = await db
        .selectFrom('checks')
        .select('id')
        .where('holder', '=', person)
        .where(where => where.or([where('opened_by', '=', interaction), where('changed_by', '=', interaction)]))
        .executeTakeFirst()
      return row !== undefined
    },

    async purge(now) {
      const gone = await db.deleteFrom('checks').where('expires_at', '<=', now).executeTakeFirst()
      if (gone.numDeletedRows > 0n) await scrub(db)
      return Number(gone.numDeletedRows)
    },
  }
}

const textOf = (outcome: Outcome | null): string | null => outcome && JSON.stringify(rowOf(outcome))

const fromBody = (body: string): Check => JSON.parse(body) as Check

/** The columns a save writes, in the order in which they are bound. */
function changeable(
  check: Check,
  interaction: string,
): Omit<CheckRow, 'id' | 'started_at' | 'opened_by' | 'outcome' | 'settled'> {
  return {
    revision: check.revision,
    holder: check.holder,
    server: check.server,
    phase: check.phase.is,
    expires_at: check.expiresAt,
    body: JSON.stringify(check),
    starter: check.custody?.starter ?? null,
    changed_by: interaction,
  }
}

/** Stands in for a check while the statement is compiled. */
const blank = { revision: 0, holder: '', server: '', phase: { is: 'done' }, expiresAt: 0 } as Check
