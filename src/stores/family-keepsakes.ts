// What belongs to families beside their versions, over SQL: reference cells, photographs, and how often a server has tried.
import { type Kysely, sql } from 'kysely'
import type { FamilyStore } from '../families/family-store.ts'
import { readPhoto, readReference } from './family-rows.ts'
import { scrub } from './scrub.ts'
import type { Tables } from './tables.ts'

type Keepsakes = Pick<
  FamilyStore,
  'references' | 'keepReference' | 'photos' | 'photo' | 'keepPhoto' | 'removePhoto' | 'countTrial'
>

export function openFamilyKeepsakes(db: Kysely<Tables>): Keepsakes {
  return {
    async references(server, id) {
      const rows = await db
        .selectFrom('family_references')
        .select('body')
        .where('server', '=', server)
        .where('family', '=', id)
        .orderBy('id')
        .execute()
      return rows.map(row => readReference(row.body))
    },

    async keepReference(server, family, reference, most) {
      const body = JSON.stringify(reference)
      const changed = await db
        .updateTable('family_references')
        .set({ body })
        .where('server', '=', server)
        .where('family', '=', family)
        .where('id', '=', reference.id)
        .executeTakeFirst()
      if (changed.numUpdatedRows === 1n) return 'kept'
      const done = await db
        .insertInto('family_references')
        .columns(['id', 'server', 'family', 'body'])
        .expression(
          () =>
            sql`select ${reference.id}, ${server}, ${family}, ${body}
              where (select count(*) from family_references where server = ${server} and family = ${family}) < ${most}` as never,
        )
        .executeTakeFirst()
      return done.numInsertedOrUpdatedRows === 1n ? 'kept' : 'too-many'
    },

    async photos(server, family) {
      const rows = await db
        .selectFrom('family_photos')
        .select(['id', 'body', 'size'])
        .where('server', '=', server)
        .where('family', '=', family)
        .orderBy('id')
        .execute()
      return rows.map(row => ({ ...readPhoto(row.body), id: row.id, server, family, size: Number(row.size) }))
    },

    async photo(server, id) {
      const row = await db
        .selectFrom('family_photos')
        .selectAll()
        .where('server', '=', server)
        .where('id', '=', id)
        .executeTakeFirst()
      return row && { ...readPhoto(row.body), id, server, family: row.family, bytes: new Uint8Array(row.bytes) }
    },

    async keepPhoto({ id, server, family, bytes, feature, option, genuine, alt, by, at }, most) {
      const body = JSON.stringify({ feature, option, genuine, alt, by, at })
      // The limit stands in the statement itself, and so does the family, which may have gone while the file was read.
      const done = await db
        .insertInto('family_photos')
        .columns(['id', 'server', 'family', 'body', 'size', 'bytes'])
        .expression(
          () =>
            sql`select ${id}, ${server}, ${family}, ${body}, cast(${bytes.length} as integer), ${Buffer.from(bytes)}
              where (select count(*) from family_photos where server = ${server} and id <> ${id}) < ${most}
              and exists (select 1 from families where server = ${server} and id = ${family})` as never,
        )
        .onConflict(conflict => conflict.columns(['server', 'id']).doNothing())
        .executeTakeFirst()
      if (done.numInsertedOrUpdatedRows === 1n) return 'kept'
      const of = (table: 'family_photos' | 'families', one: string) =>
        db.selectFrom(table).select('id').where('server', '=', server).where('id', '=', one).executeTakeFirst()
      if (await of('family_photos', id)) return 'kept'
      return (await of('families', family)) ? 'too-many' : 'gone'
    },

    async removePhoto(server, id) {
      await db.deleteFrom('family_photos').where('server', '=', server).where('id', '=', id).execute()
      await scrub(db)
    },

    async countTrial(server, week, most) {
      const done = await db
        .insertInto('family_trials')
        .values({ server, week, made: 1 })
        .onConflict(conflict =>
          conflict
            .columns(['server', 'week'])
            .doUpdateSet({ made: sql`family_trials.made + 1` })
            .where('family_trials.made', '<', most),
        )
        .executeTakeFirst()
      return done.numInsertedOrUpdatedRows === 1n
    },
  }
}
