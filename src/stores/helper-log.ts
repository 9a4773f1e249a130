// Who has helped how often over SQL: a row a server, person and week.
import type { Kysely } from 'kysely'
import type { HelperLog } from '../server/helper-log.ts'
import { openOptOuts } from './opt-outs.ts'
import type { Tables } from './tables.ts'

export function openHelperLog(db: Kysely<Tables>): HelperLog {
  const optOuts = openOptOuts(db, 'counts no help')
  const forget = (person: string) => db.deleteFrom('helped').where('person', '=', person).execute()
  return {
    async count(server, person, week) {
      if (await optOuts.has(person)) return
      await db
        .insertInto('helped')
        .values({ server, person, week, count: 1 })
        .onConflict(conflict =>
          conflict
            .columns(['server', 'person', 'week'])
            .doUpdateSet(({ eb, ref }) => ({ count: eb(ref('helped.count'), '+', 1) })),
        )
        .execute()
      // Whoever has said no in the meantime is not counted after all.
      if (await optOuts.has(person)) await forget(person)
    },
    async sums(server, from, to) {
      const rows = await db
        .selectFrom('helped')
        .select(({ fn }) => ['person', fn.sum<number>('count').as('count')])
        .where('server', '=', server)
        .where('week', '>=', from)
        .where('week', '<=', to)
        .groupBy('person')
        .orderBy('person')
        .execute()
      return rows.map(({ person, count }) => ({ person, count: Number(count) }))
    },
    saidNo: person => optOuts.has(person),
    async sayNo(person) {
      await optOuts.add(person)
      await forget(person)
    },
    sayYes: person => optOuts.remove(person),
    async purgeBefore(week) {
      const { numDeletedRows } = await db.deleteFrom('helped').where('week', '<', week).executeTakeFirstOrThrow()
      return Number(numDeletedRows)
    },
  }
}
