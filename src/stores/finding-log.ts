// Findings over SQL: one row each, one statement a save.
import type { Expression, ExpressionBuilder, Kysely, SqlBool } from 'kysely'
import { begin, type Finding, isPending } from '../trends/findings/finding.ts'
import type { FindingLog } from '../trends/findings/finding-log.ts'
import type { Week } from '../trends/week.ts'
import type { LeftOut } from './bodies/body.ts'
import { findingBody } from './bodies/finding.ts'
import type { FindingRow, Tables } from './tables.ts'

/** `leftOut` is told of findings that cannot be read, where others are listed; the one that is loaded throws `UnreadableBody`. */
export function openFindingLog(db: Kysely<Tables>, leftOut: LeftOut = () => undefined): FindingLog {
  const readAll = (rows: readonly { readonly body: string }[]): Finding[] =>
    findingBody.readAll(
      rows.map(row => row.body),
      leftOut,
    )
  const ofServer = (server: string) => db.selectFrom('findings').select('body').where('server', '=', server)
  return {
    async add(server, found, newId) {
      for (const one of found) {
        const finding = begin(one, newId(), server)
        await db
          .insertInto('findings')
          .values({ ...changeable(finding), id: finding.id, server, key: finding.key, week: finding.week })
          .onConflict(conflict => conflict.columns(['server', 'key']).doNothing())
          .execute()
      }
    },

    async load(id) {
      const row = await db.selectFrom('findings').select('body').where('id', '=', id).executeTakeFirst()
      return row && findingBody.read(row.body)
    },

    async of(server) {
      const rows = await ofServer(server).orderBy('week', 'desc').orderBy('key').execute()
      return readAll(rows)
    },

    async due(server, week) {
      const rows = await ofServer(server).where(dueIn(week)).orderBy('week').orderBy('key').execute()
      return readAll(rows)
    },

    async serversWaiting(week) {
      const rows = await db
        .selectFrom('findings')
        .select('server')
        .distinct()
        .where(is => is.or([dueIn(week)(is), is('unposted', '=', 1)]))
        .orderBy('server')
        .execute()
      return rows.map(row => row.server)
    },

    async unposted(server) {
      const rows = await ofServer(server).where('unposted', '=', 1).orderBy('key').execute()
      return readAll(rows)
    },

    async save(finding) {
      const done = await db
        .updateTable('findings')
        .set(changeable(finding))
        .where('id', '=', finding.id)
        .where('revision', '=', finding.revision - 1)
        .executeTakeFirst()
      return done.numUpdatedRows === 1n ? 'saved' : 'stale'
    },

    async forget(server) {
      await db.deleteFrom('findings').where('server', '=', server).execute()
    },
  }
}

const dueIn =
  (week: Week) =>
  (is: ExpressionBuilder<Tables, 'findings'>): Expression<SqlBool> =>
    is.or([is('due', '=', 1), is.and([is('state', '=', 'watching'), is('again', '<=', week)])])

const changeable = (finding: Finding): Omit<FindingRow, 'id' | 'server' | 'key' | 'week'> => ({
  revision: finding.revision,
  state: finding.state,
  again: finding.until,
  unposted: isPending(finding) ? 1 : 0,
  due: !finding.told || finding.stale ? 1 : 0,
  body: findingBody.write(finding),
})
