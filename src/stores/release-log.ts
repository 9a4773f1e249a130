// Frozen releases over SQL: a week is kept once, after the week before it, and never changed.
import { type Kysely, sql } from 'kysely'
import type { ReleaseLog, Scope } from '../trends/outcome-log.ts'
import type { ReleaseState } from '../trends/release/state.ts'
import { weekPlus } from '../trends/week.ts'
import { UnreadableBody } from './bodies/body.ts'
import { stateBody } from './bodies/release-state.ts'
import type { Tables } from './tables.ts'

export function openReleaseLog(db: Kysely<Tables>): ReleaseLog {
  return {
    async latest(scope) {
      const row = await db
        .selectFrom('releases')
        .select(['week', 'state'])
        .where('scope', '=', keyOf(scope))
        .orderBy('week', 'desc')
        .limit(1)
        .executeTakeFirst()
      return row === undefined ? null : { week: row.week, state: row.state === null ? null : stateOf(row.state) }
    },

    async freeze(scope, week, bytes, state) {
      const key = keyOf(scope)
      const kept = (at: string | null) =>
        at === null
          ? sql`exists (select 1 from releases where scope = ${key})`
          : sql`exists (select 1 from releases where scope = ${key} and week = ${at})`
      const done = await sql`
        insert into releases (scope, week, bytes, state, unread)
        select * from (select cast(${key} as text) as scope, cast(${week} as text) as week, cast(${bytes} as text) as bytes,
          cast(${stateBody.write(state)} as text) as state, ${sql.lit(scope.kind === 'pool' ? 0 : 1)} as unread) as new
        where not ${kept(null)} or (${kept(weekPlus(week, -1))} and not ${kept(week)})
        on conflict do nothing`.execute(db)
      if (done.numAffectedRows !== 1n) return 'already-frozen'
      // Only the latest state is ever gone on from; what older ones counted need not be kept.
      await db.updateTable('releases').set({ state: null }).where('scope', '=', key).where('week', '<', week).execute()
      return 'frozen'
    },

    async bytes(scope, week) {
      const row = await db
        .selectFrom('releases')
        .select('bytes')
        .where('scope', '=', keyOf(scope))
        .where('week', '=', week)
        .where('bytes', '!=', withdrawn)
        .executeTakeFirst()
      return row?.bytes ?? null
    },

    async unread() {
      const rows = await db
        .selectFrom('releases')
        .select(['scope', 'week'])
        .where('unread', '=', 1)
        .orderBy('scope')
        .orderBy('week')
        .execute()
      return rows.map(({ scope, week }) => ({ server: scope.slice(ofServer.length), week }))
    },

    async markRead(server, week) {
      await db
        .updateTable('releases')
        .set({ unread: 0 })
        .where('scope', '=', `${ofServer}${server}`)
        .where('week', '<=', week)
        .where('unread', '=', 1)
        .execute()
    },

    async weeks(scope) {
      const rows = await db
        .selectFrom('releases')
        .select('week')
        .where('scope', '=', keyOf(scope))
        .where('bytes', '!=', withdrawn)
        .orderBy('week')
        .execute()
      return rows.map(row => row.week)
    },
  }
}

/** Stands for the bytes of a week that is closed and of which nothing is told any more. */
const withdrawn = ''

/** Null if the text is not the state a release is gone on from. */
function stateOf(text: string): ReleaseState | null {
  try {
    return stateBody.read(text)
  } catch (error) {
    if (error instanceof UnreadableBody) return null
    throw error
  }
}

const ofServer = 'server:'
const keyOf = (scope: Scope): string => (scope.kind === 'pool' ? 'pool' : `${ofServer}${scope.server}`)
