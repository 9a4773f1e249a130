// The settings of servers over SQL: one row a server, one statement a save.
import type { Kysely } from 'kysely'
import { unsettled } from '../server/settings.ts'
import type { SettingsStore } from '../server/settings-store.ts'
import type { LeftOut } from './bodies/body.ts'
import { settingsBody } from './bodies/settings.ts'
import type { Tables } from './tables.ts'
import { withValues } from './with-values.ts'

/** `leftOut` is told of settings that cannot be read, where those of all servers are asked for; `load` throws `UnreadableBody`. */
export function openSettingsStore(db: Kysely<Tables>, leftOut: LeftOut = () => undefined): SettingsStore {
  // Asked for in every click: compiled once.
  const loading = db.selectFrom('servers').select('body').where('id', '=', '').compile()
  return {
    async load(server) {
      const { rows } = await db.executeQuery(withValues(loading, [server]))
      return rows[0] ? settingsBody.read(rows[0].body) : unsettled(server)
    },

    async save(settings) {
      const row = { id: settings.server, revision: settings.revision, body: settingsBody.write(settings) }
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
