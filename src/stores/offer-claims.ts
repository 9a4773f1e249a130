// Claims on forum posts over SQL: one insert, which the database lets happen once.
import type { Kysely } from 'kysely'
import type { OfferClaims } from '../server/offer-claims.ts'
import type { Tables } from './tables.ts'

export const openOfferClaims = (db: Kysely<Tables>): OfferClaims => ({
  async claim(server, post, now) {
    const done = await db
      .insertInto('offers')
      .values({ post, server, claimed_at: now })
      .onConflict(conflict => conflict.column('post').doNothing())
      .executeTakeFirst()
    return done.numInsertedOrUpdatedRows === 1n
  },

  async purge(before) {
    const gone = await db.deleteFrom('offers').where('claimed_at', '<', before).executeTakeFirst()
    return Number(gone.numDeletedRows)
  },
})
