// The notices of checks over SQL.
import type { Kysely, Selectable } from 'kysely'
import type { Notice, NoticeStore } from '../check/notice-store.ts'
import type { NoticeRow, Tables } from './tables.ts'

export function openNoticeStore(db: Kysely<Tables>): NoticeStore {
  const ofCheck = (check: string) => db.selectFrom('notices').selectAll().where('check_id', '=', check)
  const soonest = (limit: number) =>
    db.selectFrom('notices').selectAll().orderBy('until').orderBy('check_id').limit(limit)
  return {
    async put(notice) {
      const { check, kind, channel, message, until } = notice
      const before = await ofCheck(check).where('kind', '=', kind).executeTakeFirst()
      const row = { channel, message, until }
      await db
        .insertInto('notices')
        .values({ check_id: check, kind, ...row })
        .onConflict(conflict => conflict.columns(['check_id', 'kind']).doUpdateSet(row))
        .execute()
      return before && before.message !== message ? noticeOf(before) : undefined
    },
    of: async check => (await ofCheck(check).orderBy('kind').execute()).map(noticeOf),
    async ofKind(kind, limit) {
      const rows = await soonest(limit).where('kind', '=', kind).execute()
      return rows.map(noticeOf)
    },
    async expired(now, limit) {
      const rows = await soonest(limit).where('until', '<=', now).execute()
      return rows.map(noticeOf)
    },
    async drop({ check, kind, message }) {
      await db
        .deleteFrom('notices')
        .where('check_id', '=', check)
        .where('kind', '=', kind)
        .where('message', '=', message)
        .execute()
    },
  }
}

const noticeOf = ({ check_id, kind, ...rest }: Selectable<NoticeRow>): Notice => ({
  check: check_id,
  kind: kind as Notice['kind'],
  ...rest,
})
