// Leases over SQL: of many processes one does a piece of work, and another takes over where it dies.
import type { Kysely } from 'kysely'
import type { Leases } from '../trends/lease.ts'
import type { Tables } from './tables.ts'

export function openLeases(db: Kysely<Tables>): Leases {
  return {
    async take(name, holder, now, until) {
      const done = await db
        .insertInto('leases')
        .values({ name, holder, until })
        .onConflict(conflict =>
          conflict
            .column('name')
            .doUpdateSet({ holder, until })
            .where(where => where.or([where('leases.until', '<=', now), where('leases.holder', '=', holder)])),
        )
        .executeTakeFirst()
      return done.numInsertedOrUpdatedRows === 1n
    },

    async giveBack(name, holder) {
      await db.deleteFrom('leases').where('name', '=', name).where('holder', '=', holder).execute()
    },
  }
}
