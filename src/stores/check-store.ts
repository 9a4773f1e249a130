// The check store over SQL: one statement a save, so that claim, compare-and-set and change are one or none.
import type { Kysely } from 'kysely'
import type { Check } from '../check/check.ts'
import { type CheckStore, claimLifetime } from '../check/store.ts'
import type { CheckRow, Tables } from './tables.ts'

export function openCheckStore(db: Kysely<Tables>): CheckStore {
  return {
    async create(check, interaction) {
      const done = await db
        .insertInto('checks')
        .values({ ...toRow(check), opened_by: interaction, changed_by: interaction })
        .onConflict(conflict => conflict.column('opened_by').doNothing())
        .executeTakeFirst()
      return done.numInsertedOrUpdatedRows === 1n ? 'saved' : 'seen'
    },

    async load(id) {
      const row = await db.selectFrom('checks').select(['body', 'changed_by']).where('id', '=', id).executeTakeFirst()
      return row && { check: fromBody(row.body), changedBy: row.changed_by }
    },

    async save(check, expected, interaction) {
      const done = await db
        .updateTable('checks')
        .set({ ...toRow(check), changed_by: interaction })
        .where('id', '=', check.id)
        .where('revision', '=', expected)
        .where('changed_by', '!=', interaction)
        .executeTakeFirst()
      if (done.numUpdatedRows === 1n) return 'saved'
      const row = await db.selectFrom('checks').select('changed_by').where('id', '=', check.id).executeTakeFirst()
      return row?.changed_by === interaction ? 'seen' : 'stale'
    },

    async heldBy(person, now) {
      const rows = await db
        .selectFrom('checks')
        .select('body')
        .where('holder', '=', person)
        .where('phase', '!=', 'closed')
        .where('expires_at', '>', now)
        .orderBy('started_at', 'desc')
        .orderBy('id')
        .execute()
      return rows.map(row => fromBody(row.body))
    },

    async claim(interaction, now) {
      const done = await db
        .insertInto('claims')
        .values({ interaction, claimed_at: now })
        .onConflict(conflict => conflict.column('interaction').doNothing())
        .executeTakeFirst()
      return done.numInsertedOrUpdatedRows === 1n
    },

    async purge(now) {
      await db
        .deleteFrom('claims')
        .where('claimed_at', '<=', now - claimLifetime)
        .execute()
      const gone = await db.deleteFrom('checks').where('expires_at', '<=', now).executeTakeFirst()
      return Number(gone.numDeletedRows)
    },
  }
}

const fromBody = (body: string): Check => JSON.parse(body) as Check

function toRow(check: Check): Omit<CheckRow, 'opened_by' | 'changed_by'> {
  return {
    id: check.id,
    revision: check.revision,
    holder: check.holder,
    server: check.server,
    phase: check.phase.is,
    expires_at: check.expiresAt,
    started_at: check.startedAt,
    body: JSON.stringify(check),
  }
}
