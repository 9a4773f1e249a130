// Families over SQL: one statement a save, versions only ever added, the same on SQLite and PostgreSQL.
import type { Kysely } from 'kysely'
import { sql } from 'kysely'
import { limits, type ServerFamily, type Version } from '../families/family.ts'
import type { FamilyStore, Saving, Tested } from '../families/family-store.ts'
import { unknownFamily } from '../trends/outcome.ts'
import { openFamilyKeepsakes } from './family-keepsakes.ts'
import { type Named, namedOf, readFamily, readNamed, readVersion, writeFamily, writeVersion } from './family-rows.ts'
import type { Tables } from './tables.ts'

export function openFamilyStore(db: Kysely<Tables>): FamilyStore {
  const namedBefore = async (server: string, id: string): Promise<Named | undefined> => {
    const row = await db
      .selectFrom('families')
      .select('named')
      .where('server', '=', server)
      .where('id', '=', id)
      .executeTakeFirst()
    return row && readNamed(row.named)
  }

  async function save(family: ServerFamily, nameKey: string, version?: Version): Promise<Saving> {
    const before = await namedBefore(family.server, family.id)
    const named = namedOf(family, version, before)
    try {
      const done = await db
        .updateTable('families')
        .set({
          state: family.state,
          head: family.head,
          revision: family.revision,
          name_key: nameKey,
          named: JSON.stringify(named),
          body: writeFamily(family),
          changed_by: family.changedBy,
          ...(version && { putting: JSON.stringify(puttingOf(family.server, version)) }),
        })
        .where('server', '=', family.server)
        .where('id', '=', family.id)
        .where('revision', '=', family.revision - 1)
        .where('changed_by', '!=', family.changedBy)
        .where('head', '=', version ? version.number - 1 : family.head)
        .executeTakeFirst()
      return done.numUpdatedRows === 1n ? 'saved' : 'stale'
    } catch (error) {
      if (isTaken(error)) return 'name-taken'
      throw error
    }
  }

  const versionsOf = (server: string, id: string) =>
    db.selectFrom('family_versions').selectAll().where('server', '=', server).where('family', '=', id)

  return {
    async heads(server) {
      const rows = await db
        .selectFrom('families')
        .select(['id', 'state', 'head', 'revision', 'named'])
        .where('server', '=', server)
        .execute()
      const order = ['in-force', 'in-review', 'draft', 'retired']
      return rows
        .map(row => ({
          ...readNamed(row.named),
          ...{ id: row.id, state: row.state as ServerFamily['state'] },
          ...{ head: Number(row.head), revision: Number(row.revision) },
        }))
        .sort((a, b) => order.indexOf(a.state) - order.indexOf(b.state) || a.name.localeCompare(b.name))
    },

    async load(server, id) {
      const row = await db
        .selectFrom('families')
        .selectAll()
        .where('server', '=', server)
        .where('id', '=', id)
        .executeTakeFirst()
      return row && readFamily(row)
    },

    async waiting(server) {
      // A draft in review may belong to a family in force, so its state alone does not tell.
      const rows = await db
        .selectFrom('families')
        .selectAll()
        .where('server', '=', server)
        .where('body', 'like', '%"review":{%')
        .execute()
      return rows
        .map(readFamily)
        .flatMap(family => (family.review ? [{ family, at: family.review.at }] : []))
        .sort((a, b) => a.at - b.at)
        .map(one => one.family)
    },

    async create(family, nameKey) {
      const { server } = family
      const row = {
        ...{ id: family.id, server, state: family.state, head: family.head, revision: family.revision },
        ...{
          name_key: nameKey,
          named: JSON.stringify(namedOf(family, undefined, undefined)),
          body: writeFamily(family),
        },
        ...{ opened_by: family.changedBy, changed_by: family.changedBy, putting: null },
      }
      // The limits stand in the statement itself. Two who begin in the same instant may both come in, which harms nobody.
      const counted = (state: 'draft' | 'any') =>
        sql<number>`(select count(*) from families where server = ${server}${state === 'draft' ? sql` and state in ('draft', 'in-review')` : sql``})`
      try {
        const done = await db
          .insertInto('families')
          .columns([
            ...([
              'id',
              'server',
              'state',
              'head',
              'revision',
              'name_key',
              'named',
              'body',
              'opened_by',
              'changed_by',
            ] as const),
          ])
          .expression(
            () =>
              sql`select ${row.id}, ${row.server}, ${row.state}, cast(${row.head} as integer), cast(${row.revision} as integer),
              ${row.name_key}, ${row.named}, ${row.body}, ${row.opened_by}, ${row.changed_by}
              where ${counted('any')} < ${limits.families} and ${counted('draft')} < ${limits.drafts}` as never,
          )
          .executeTakeFirst()
        if (done.numInsertedOrUpdatedRows === 1n) return 'saved'
      } catch (error) {
        if (!isTaken(error)) throw error
        const own = await db
          .selectFrom('families')
          .select('id')
          .where('server', '=', server)
          .where('opened_by', '=', family.changedBy)
          .executeTakeFirst()
        // Delivered a second time: it is there already.
        return own ? 'saved' : 'name-taken'
      }
      const all = await db.selectFrom('families').select('state').where('server', '=', server).execute()
      return all.length >= limits.families ? 'too-many-families' : 'too-many-drafts'
    },

    save: (family, nameKey) => save(family, nameKey),
    putInForce: (family, nameKey, version) => save(family, nameKey, version),

    async versions(server, id) {
      return (await versionsOf(server, id).orderBy('number', 'desc').execute()).map(readVersion)
    },

    async version(server, id, number) {
      const row = await versionsOf(server, id).where('number', '=', number).executeTakeFirst()
      return row && readVersion(row)
    },

    async byDigest(server, id, digest) {
      const row = await versionsOf(server, id).where('digest', '=', digest).orderBy('number', 'desc').executeTakeFirst()
      return row && readVersion(row)
    },

    async inForce(server) {
      const rows = await db
        .selectFrom('family_versions as v')
        .innerJoin('families as f', join =>
          join.onRef('f.server', '=', 'v.server').onRef('f.id', '=', 'v.family').onRef('f.head', '=', 'v.number'),
        )
        .selectAll('v')
        .where('f.server', '=', server)
        .where('f.state', '!=', 'retired')
        .orderBy('v.family')
        .execute()
      return rows.map(readVersion)
    },

    ...openFamilyKeepsakes(db),

    async outcomes(server, family, from, to, most) {
      const rows = await db
        .selectFrom('outcomes')
        .select(['reporter', 'options', 'verdict', 'fired'])
        .where('server', '=', server)
        .where('family', '=', family ?? unknownFamily)
        .where('week', '>=', from)
        .where('week', '<=', to)
        .orderBy('reporter')
        .limit(most)
        .execute()
      return rows.map(({ reporter, options, verdict, fired }) => ({
        reporter,
        options: JSON.parse(options) as Tested['options'],
        verdict: verdict as Tested['verdict'],
        fired: JSON.parse(fired) as Tested['fired'],
      }))
    },

    async discard(server, id, revision) {
      const done = await db
        .deleteFrom('families')
        .where('server', '=', server)
        .where('id', '=', id)
        .where('revision', '=', revision)
        .where('head', '=', 0)
        .executeTakeFirst()
      if (done.numDeletedRows !== 1n) return 'stale'
      for (const table of ['family_references', 'family_photos'] as const)
        await db.deleteFrom(table).where('server', '=', server).where('family', '=', id).execute()
      return 'saved'
    },

    async forget(server) {
      for (const table of [
        'families',
        'family_versions',
        'family_references',
        'family_photos',
        'family_trials',
      ] as const)
        await db.deleteFrom(table).where('server', '=', server).execute()
    },
  }
}

const puttingOf = (server: string, version: Version) => ({
  ...{ family: version.family, server, number: version.number, digest: version.digest, body: writeVersion(version) },
  ...{ by: version.by, agreed_by: version.agreedBy },
})

/** Whether a unique name or number was there already: SQLite and PostgreSQL say so in their own ways. */
function isTaken(error: unknown): boolean {
  const { code, message } = error as { code?: unknown; message?: unknown }
  return code === '23505' || /UNIQUE constraint failed/i.test(String(message))
}
