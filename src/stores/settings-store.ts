// The settings of servers over SQL: one row a server, one statement a save.
import type { Kysely } from 'kysely'
import type { ServerSettings } from '../server/settings.ts'
import { unsettled } from '../server/settings.ts'
import type { SettingsStore } from '../server/settings-store.ts'
import type { Tables } from './tables.ts'
import { withValues } from './with-values.ts'

export function openSettingsStore(db: Kysely<Tables>): SettingsStore {
  const read = (server: string, body: string): ServerSettings => ({
    // What a later version has added holds as before any decision.
    ...unsettled(server),
    ...(JSON.parse(body) as Partial<ServerSettings>),
  })
  // Asked for in every click: compiled once.
  const loading = db.selectFrom('servers').select('body').where('id', '=', '').compile()
  return {
    async load(server) {
      const { rows } = await db.executeQuery(withValues(loading, [server]))
      return rows[0] ? read(server, rows[0].body) : unsettled(server)
    },

    async save(settings) {
      const row = { id: settings.server, revision: settings.revision, body: JSON.stringify(settings) }
      const done =
        settings.revision === 1
          ? await db
              .insertInto('servers')
              .values(row)
              .onConflict(conflict => conflict.column('id').doNothing())
              .executeTakeFirst()
              .then(one => one.numInsertedOrUpdatedRows)
          : await db
              .updateTable('servers')
              .set({ revision: row.revision, body: row.body })
              .where('id', '=', row.id)
              .where('revision', '=', row.revision - 1)
              .executeTakeFirst()
              .then(one => one.numUpdatedRows)
      return done === 1n ? 'saved' : 'stale'
    },

    async all() {
      const rows = await db.selectFrom('servers').select(['id', 'body']).orderBy('id').execute()
      return rows.map(row => read(row.id, row.body))
    },

    async forget(server) {
      await db.deleteFrom('servers').where('id', '=', server).execute()
    },
  }
}
