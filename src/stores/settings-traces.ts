// A person in the history of servers' settings: what they changed, found, and left there without their name.
import { type Kysely, sql } from 'kysely'
import { type SettingsChange, withoutPerson } from '../server/history.ts'
import type { LeftOut } from './bodies/body.ts'
import { historyBody, settingsBody } from './bodies/settings.ts'
import { columnsOf } from './settings-store.ts'
import type { Tables } from './tables.ts'

export type ChangeOf = { readonly server: string } & SettingsChange

const rowsWith = (db: Kysely<Tables>, person: string) => {
  const written = `"by":${JSON.stringify(person)}`
  return db
    .selectFrom('servers')
    .select(['id', 'revision', 'body', 'history'])
    .where(sql<boolean>`replace(history, ${written}, '') <> history`)
    .orderBy('id')
    .execute()
}

export async function changesOf(db: Kysely<Tables>, person: string, leftOut: LeftOut): Promise<ChangeOf[]> {
  return (await rowsWith(db, person)).flatMap(({ id, history }) =>
    historyBody
      .readAll([history ?? ''], leftOut)
      .flatMap(({ changes }) => changes.filter(one => one.by === person).map(one => ({ server: id, ...one }))),
  )
}

/**
 * Puts nobody's name where theirs stood; says beside how many changes. The revision grows, so that whoever saves at the same moment does
 * not put the name back. A history that cannot be read goes as a whole.
 */
export async function forgetInSettings(db: Kysely<Tables>, person: string, leftOut: LeftOut): Promise<number> {
  let lost = 0
  for (let rows = await rowsWith(db, person); rows.length > 0; rows = await rowsWith(db, person))
    for (const { id, revision, body, history } of rows) {
      const [kept] = historyBody.readAll([history ?? ''], leftOut)
      const [settings] = settingsBody.readAll([body], leftOut)
      const next = Number(revision) + 1
      const done = await db
        .updateTable('servers')
        .set({
          ...columnsOf(kept ? withoutPerson(kept.changes, person) : []),
          // Settings of a newer version stay as they are, under their old revision.
          ...(settings && { revision: next, body: settingsBody.write({ ...settings, revision: next }) }),
        })
        .where('id', '=', id)
        .where('revision', '=', revision)
        .executeTakeFirst()
      if (done.numUpdatedRows === 1n) lost += kept?.changes.filter(one => one.by === person).length ?? 0
    }
  return lost
}
