// Buckets of fair use in PostgreSQL, for several processes on it: each bucket is one number, changed by one statement.
import { createHmac } from 'node:crypto'
import { type Kysely, type RawBuilder, sql } from 'kysely'
import type { SharedBuckets, Wanted } from '../services/fair-use/shared-buckets.ts'
import { atOnce, inBatches } from './in-batches.ts'
import type { Tables } from './tables.ts'

export type Allowances = SharedBuckets & {
  /** Lets go of buckets that are full again; returns how many. */
  purge(): Promise<number>
}

/**
 * `keyOf`: a key that all processes have and the database has not, so that what stands there names nobody. `at`: the time in ms, the
 * database's own unless a test hands in another: the clocks of two hosts differ.
 */
export function openAllowances(
  db: Kysely<Tables>,
  keyOf: () => Promise<Uint8Array>,
  at: () => RawBuilder<number> = () => sql<number>`(extract(epoch from now()) * 1000)::bigint`,
): Allowances {
  async function named(wanted: readonly Wanted[]) {
    const key = await keyOf()
    return wanted.map(one => {
      const most = one.rate.burst * one.rate.every_ms
      return {
        key: createHmac('sha256', key).update(one.of).digest('base64url'),
        most,
        cost: Math.min(one.tokens * one.rate.every_ms, most),
        always: one.always === true,
      }
    })
  }
  type Named = Awaited<ReturnType<typeof named>>[number]

  /**
   * The time at which the bucket is full again moves on by the cost, if that is no more than it holds. One that is further ahead is of a
   * clock that was set back: it is empty, and fills from then on. What is always taken may lie 1 ms beyond, which tells that it was not there.
   */
  const taking = ({ key, most, cost, always }: Named, now: RawBuilder<number>) => {
    const ahead = sql`greatest(a.full_at - ${now}, 0)`
    const fits = sql`(${ahead} <= ${most - cost}::bigint or a.full_at - ${now} > ${most + 1}::bigint)`
    return sql`insert into allowances as a (key, full_at) values (${key}, ${now} + ${cost}::bigint)
      on conflict (key) do update set full_at = ${now} + least(${ahead} + ${cost}::bigint, ${most + (always ? 1 : 0)}::bigint)
      ${always ? sql`` : sql`where ${fits}`} returning full_at - ${now} as ahead`
  }

  return {
    async take(wanted) {
      const all = await named(wanted)
      const now = at()
      const takings = all.map((one, i) => sql`${sql.raw(`taken${i}`)} as (${taking(one, now)})`)
      const told = all.map(
        ({ key }, i) => sql`select ${sql.lit(i)} as i,
          (select ahead from ${sql.raw(`taken${i}`)}) as taken,
          (select full_at - ${now} from allowances where key = ${key}) as before`,
      )
      const { rows } = await sql<{ i: number; taken: number | null; before: number | null }>`
        with ${sql.join(takings)} ${sql.join(told, sql` union all `)}`.execute(db)
      return all.map(({ most, cost }, i) => {
        const { taken = null, before = null } = rows.find(row => row.i === i) ?? {}
        if (taken !== null) return Math.max(0, Number(taken) - most)
        // Of two that come at the same moment one is refused for what this statement has not seen: the least it can be.
        return Math.max(1, Math.min(Number(before ?? 0), most) - (most - cost))
      })
    },

    async giveBack(wanted) {
      for (const { key, cost } of await named(wanted))
        await db
          .updateTable('allowances')
          .set({ full_at: sql`full_at - ${cost}::bigint` })
          .where('key', '=', key)
          .execute()
    },

    async purge() {
      const full = db.selectFrom('allowances').select('key').where('full_at', '<=', sql<number>`${at()}`).limit(atOnce)
      return inBatches(async () => {
        const done = await db.deleteFrom('allowances').where('key', 'in', full).executeTakeFirstOrThrow()
        return done.numDeletedRows
      })
    },
  }
}
