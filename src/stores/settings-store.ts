// The settings of servers over SQL: one row a server, one statement a save.
import type { Kysely } from 'kysely'
import { type History, withChange, youngerThan } from '../server/history.ts'
import { unsettled } from '../server/settings.ts'
import type { SettingsStore } from '../server/settings-store.ts'
import { type LeftOut, UnreadableBody } from './bodies/body.ts'
import { historyBody, settingsBody } from './bodies/settings.ts'
import type { Tables } from './tables.ts'
import { withValues } from './with-values.ts'

/**
 * `leftOut` is told of settings that cannot be read, where those of all servers are asked for, and of a damaged history, which begins
 * anew; `load` throws `UnreadableBody`.
 */
export function openSettingsStore(db: Kysely<Tables>, leftOut: LeftOut = () => undefined): SettingsStore {
  // Asked for in every click: compiled once.
  const loading = db.selectFrom('servers').select('body').where('id', '=', '').compile()
  const at = (server: string, revision: number) =>
    db
      .selectFrom('servers')
      .select(['body', 'history'])
      .where('id', '=', server)
      .where('revision', '=', revision)
      .executeTakeFirst()
  const historyIn = (row: { readonly history: string | null } | undefined): History => {
    try {
      return row?.history ? historyBody.read(row.history).changes : []
    } catch (error) {
      // What was changed before is no reason for nothing to be changed any more.
      if (!(error instanceof UnreadableBody)) throw error
      leftOut(error)
      return []
    }
  }
  return {
    async load(server) {
      const { rows } = await db.executeQuery(withValues(loading, [server]))
      return rows[0] ? settingsBody.read(rows[0].body) : unsettled(server)
    },

    async save(settings, made) {
      const row = { id: settings.server, revision: settings.revision, body: settingsBody.write(settings) }
      const first = settings.revision === 1
      const before = first || !made ? undefined : await at(row.id, row.revision - 1)
      if (!first && made && !before) return 'stale'
      const settingsBefore = before ? settingsBody.read(before.body) : unsettled(row.id)
      const kept = made && columnsOf(withChange(historyIn(before), settingsBefore, settings, made))
      if (first) {
        const done = await db
          .insertInto('servers')
          .values({ ...row, ...columnsOf([]), ...kept })
          .onConflict(conflict => conflict.column('id').doNothing())
          .executeTakeFirst()
        return done.numInsertedOrUpdatedRows === 1n ? 'saved' : 'stale'
      }
      const done = await db
        .updateTable('servers')
        .set({ revision: row.revision, body: row.body, ...kept })
        .where('id', '=', row.id)
        .where('revision', '=', row.revision - 1)
        .executeTakeFirst()
      return done.numUpdatedRows === 1n ? 'saved' : 'stale'
    },

    async history(server) {
      return historyIn(await db.selectFrom('servers').select('history').where('id', '=', server).executeTakeFirst())
    },

    async forgetChanges(before) {
      let servers = 0
      const old = db.selectFrom('servers').select(['id', 'revision', 'history']).where('history_from', '<', before)
      for (const { id, revision, history } of await old.execute()) {
        const done = await db
          .updateTable('servers')
          .set(columnsOf(youngerThan(historyIn({ history }), before)))
          .where('id', '=', id)
          .where('revision', '=', revision)
          .executeTakeFirst()
        // Whoever has changed something meanwhile has let go of it, or is met again.
        servers += Number(done.numUpdatedRows)
      }
      return servers
    },

    async all() {
      const rows = await db.selectFrom('servers').select('body').orderBy('id').execute()
      return settingsBody.readAll(
        rows.map(row => row.body),
        leftOut,
      )
    },

    async forget(server) {
      await db.deleteFrom('servers').where('id', '=', server).execute()
    },
  }
}

/** A history as it is stored. */
export const columnsOf = (history: History) => ({
  history: history.length > 0 ? historyBody.write({ changes: history }) : null,
  history_from: history.at(-1)?.at ?? null,
})
