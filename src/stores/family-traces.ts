// A person in families: what they made, agreed to, vouched for or photographed; found, and taken out, while what it says stays.
import { type Kysely, sql } from 'kysely'
import { nobody } from '../server/traces.ts'
import type { Tables } from './tables.ts'

/** What somebody has to do with a server's families, without anybody else's part in it. */
export type FamilyDeed = { readonly server: string; readonly family: string; readonly is: string; readonly at?: number }

const written = (person: string): string => JSON.stringify(person)
const holds = (column: string, person: string) =>
  sql<boolean>`replace(${sql.ref(column)}, ${written(person)}, '') <> ${sql.ref(column)}`

export async function familyDeedsOf(db: Kysely<Tables>, person: string): Promise<FamilyDeed[]> {
  const versions = await db
    .selectFrom('family_versions')
    .select(['server', 'family', 'number', 'by'])
    .where(one => one.or([one('by', '=', person), one('agreed_by', '=', person)]))
    .execute()
  const families = await db.selectFrom('families').select(['server', 'id']).where(holds('body', person)).execute()
  const references = await db.selectFrom('family_references').selectAll().where(holds('body', person)).execute()
  const photos = await db
    .selectFrom('family_photos')
    .select(['server', 'family'])
    .where(holds('body', person))
    .execute()
  return [
    ...versions.map(({ server, family, number, by }) => ({
      ...{ server, family },
      is: `${by === person ? 'made' : 'agreed to'} version ${number}`,
    })),
    ...families.map(({ server, id }) => ({ server, family: id, is: 'has a part in its draft' })),
    ...references.map(({ server, family }) => ({ server, family, is: 'has a part in a reference cell' })),
    ...photos.map(({ server, family }) => ({ server, family, is: 'sent a photograph' })),
  ]
}

/** Puts nobody's name where theirs stood, and takes their reasons away; says in how many places. */
export async function forgetInFamilies(db: Kysely<Tables>, person: string): Promise<number> {
  let lost = 0
  const made = await db.selectFrom('family_versions').selectAll().where('by', '=', person).execute()
  for (const { server, family, number, body } of made) {
    await db
      .updateTable('family_versions')
      .set({ by: nobody, body: JSON.stringify({ ...JSON.parse(body), why: '' }) })
      .where('server', '=', server)
      .where('family', '=', family)
      .where('number', '=', Number(number))
      .execute()
    lost++
  }
  const agreed = await db
    .updateTable('family_versions')
    .set({ agreed_by: nobody })
    .where('agreed_by', '=', person)
    .executeTakeFirst()
  lost += Number(agreed.numUpdatedRows)
  // A draft that changes meanwhile is met by the revision, and looked at once more.
  for (let left = 20; left > 0; left--) {
    const rows = await db
      .selectFrom('families')
      .select(['server', 'id', 'revision', 'body'])
      .where(holds('body', person))
      .execute()
    if (rows.length === 0) break
    for (const { server, id, revision, body } of rows) {
      const done = await db
        .updateTable('families')
        .set({ body: JSON.stringify(withoutPerson(JSON.parse(body), person)), revision: Number(revision) + 1 })
        .where('server', '=', server)
        .where('id', '=', id)
        .where('revision', '=', Number(revision))
        .executeTakeFirst()
      lost += Number(done.numUpdatedRows)
    }
  }
  // One name for all their cells of a family, so that these still count as of one person, and not as of the next who goes.
  const names = new Map<string, string>()
  for (const table of ['family_references', 'family_photos'] as const)
    for (const { server, family, id, body } of await db
      .selectFrom(table)
      .select(['server', 'family', 'id', 'body'])
      .where(holds('body', person))
      .execute()) {
      const name = names.get(`${server} ${family}`) ?? `gone-${id}`
      names.set(`${server} ${family}`, name)
      await db
        .updateTable(table)
        .set({ body: JSON.stringify(withoutPerson(JSON.parse(body), person, name)) })
        .where('server', '=', server)
        .where('family', '=', family)
        .where('id', '=', id)
        .execute()
      lost++
    }
  return lost
}

/**
 * The same without the person, their reasons included. `instead`: what a reference cell names in place of who brought it, so that cells
 * of two people who are gone still count as of two, and two cells of one as of one.
 */
function withoutPerson(value: unknown, person: string, instead = nobody): unknown {
  if (value === person) return instead
  if (Array.isArray(value)) return value.map(one => withoutPerson(one, person, instead))
  if (typeof value !== 'object' || value === null) return value
  const theirs = (value as { by?: unknown }).by === person
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => [
      key,
      theirs && key === 'why' ? '' : withoutPerson(one, person, instead),
    ]),
  )
}
