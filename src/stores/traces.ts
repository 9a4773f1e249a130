// Everything that stands under the id of a person or a server, over SQL; a new table that holds either is entered here.
import { type Kysely, sql } from 'kysely'
import type { Check } from '../check/check.ts'
import { forgetPerson, giveBackWithout, partIn } from '../check/person-in-check.ts'
import { type KeptOfPerson, nobody, type Traces } from '../server/traces.ts'
import { type Decision, type Finding, withoutPerson } from '../trends/findings/finding.ts'
import { readFinding } from '../trends/findings/read-finding.ts'
import { draftsNamespace } from './cache-adapter.ts'
import { bodyColumns, checksOf, columnsOf } from './check-body.ts'
import { openFamilyStore } from './family-store.ts'
import { familyDeedsOf, forgetInFamilies } from './family-traces.ts'
import { openFindingLog } from './finding-log.ts'
import { scrub } from './scrub.ts'
import type { Seal } from './seal.ts'
import type { Tables } from './tables.ts'

export function openTraces(db: Kysely<Tables>, seal: Seal): Traces {
  const findings = openFindingLog(db)
  const draftsOf = (person: string) => holds('value', 'person', person)

  async function decidedBy(person: string): Promise<Finding[]> {
    const rows = await db
      .selectFrom('findings')
      .select('body')
      .where(holds('body', 'by', person))
      .execute()
    return rows.map(row => readFinding(JSON.parse(row.body)))
  }

  async function loseName(person: string): Promise<number> {
    let lost = 0
    for (let found = await decidedBy(person); found.length > 0; found = await decidedBy(person))
      for (const finding of found) {
        const left = withoutPerson(finding, person, nobody)
        // Whoever has changed it meanwhile is met again by the next look.
        const saved = await findings.save({ ...left, stale: finding.told, revision: finding.revision + 1 })
        if (saved === 'saved') lost += finding.decisions.filter(one => isBy(one, person)).length
      }
    return lost
  }

  /** Checks of others in which this person stands; what is sealed has to be opened to see that. */
  async function othersWith(person: string): Promise<Check[]> {
    const named = JSON.stringify(person)
    const rows = await db
      .selectFrom('checks')
      .select(bodyColumns)
      .where('starter', 'is not', null)
      .where('holder', '!=', person)
      .where(is => is.or([is('settled', '=', 1), contains('body', named)]))
      .orderBy('id')
      .execute()
    return (await checksOf(seal, rows)).filter(check => JSON.stringify(check).includes(named))
  }

  /** Puts a changed check in the place of what it was; false if somebody else has changed it meanwhile. */
  async function put(before: Check, after: Check): Promise<boolean> {
    const done = await db
      .updateTable('checks')
      .set(await columnsOf(seal, { ...after, revision: before.revision + 1 }))
      .where('id', '=', before.id)
      .where('revision', '=', before.revision)
      .where('settled', '=', before.settled ? 1 : 0)
      .executeTakeFirst()
    return done.numUpdatedRows === 1n
  }

  /** Checks that others started and this person held are their starters' again. */
  async function giveBackTo(person: string): Promise<number> {
    let given = 0
    const rows = await db
      .selectFrom('checks')
      .select(bodyColumns)
      .where('holder', '=', person)
      .where('starter', 'is not', null)
      .where('phase', '!=', 'closed')
      .execute()
    for (const check of await checksOf(seal, rows)) {
      const back = giveBackWithout(check, person)
      if (!back) continue
      if (await put(check, back)) given++
    }
    return given
  }

  async function leaveOthers(person: string): Promise<void> {
    for (let found = await othersWith(person); found.length > 0; found = await othersWith(person))
      for (const check of found) {
        // Whoever has changed it meanwhile is met again by the next look.
        await put(check, forgetPerson(check, person))
      }
  }

  return {
    async of(person): Promise<KeptOfPerson> {
      const checks = await db
        .selectFrom('checks')
        .select(bodyColumns)
        .where('holder', '=', person)
        .orderBy('id')
        .execute()
      const drafts = await db
        .selectFrom('kept')
        .select('value')
        .where(inNamespace(draftsNamespace))
        .where(draftsOf(person))
        .orderBy('key')
        .execute()
      const decided = (await decidedBy(person)).flatMap(({ server, week, parts, decisions }) =>
        decisions.filter(one => isBy(one, person)).map(one => ({ server, week, parts, ...partOf(one, person) })),
      )
      return {
        checks: await checksOf(seal, checks),
        others: (await othersWith(person)).map(check => partIn(check, person)),
        drafts: drafts.map(row => JSON.parse(row.value).value),
        decisions: decided,
        families: await familyDeedsOf(db, person),
      }
    },

    async forgetPerson(person) {
      const given = await giveBackTo(person)
      const checks = await db.deleteFrom('checks').where('holder', '=', person).executeTakeFirst()
      const drafts = await db
        .deleteFrom('kept')
        .where(inNamespace(draftsNamespace))
        .where(draftsOf(person))
        .executeTakeFirst()
      await leaveOthers(person)
      const decisions = await loseName(person)
      const families = await forgetInFamilies(db, person)
      await scrub(db)
      return {
        checks: Number(checks.numDeletedRows) + given,
        drafts: Number(drafts.numDeletedRows),
        decisions,
        families,
      }
    },

    async forgetServer(server) {
      const checks = db.selectFrom('checks').select('id').where('server', '=', server)
      await db.deleteFrom('notices').where('check_id', 'in', checks).execute()
      await db.deleteFrom('checks').where('server', '=', server).execute()
      await findings.forget(server)
      await openFamilyStore(db).forget(server)
      await db.deleteFrom('outcomes').where('server', '=', server).execute()
      await db.deleteFrom('releases').where('scope', '=', `server:${server}`).execute()
      await db.deleteFrom('offers').where('server', '=', server).execute()
      await db.deleteFrom('servers').where('id', '=', server).execute()
      await scrub(db)
    },
  }
}

const isBy = ({ by, undone }: Decision, person: string): boolean => by === person || undone?.by === person

/** A decision as the person who made it, or took it back, may see it: without whoever else did. */
const partOf = ({ by, undone, before: _standing, ...rest }: Decision, person: string) => ({
  ...rest,
  by: by === person ? by : nobody,
  undone: undone && { ...undone, by: undone.by === person ? undone.by : nobody },
})

/** Rows whose JSON holds this text under this name. `replace` rather than `like`, so that no character of it is a wildcard. */
function holds(column: 'value' | 'body', name: string, text: string) {
  return contains(column, `${JSON.stringify(name)}:${JSON.stringify(text)}`)
}

const contains = (column: 'value' | 'body', written: string) =>
  sql<boolean>`replace(${sql.ref(column)}, ${written}, '') <> ${sql.ref(column)}`

const inNamespace = (namespace: string) => sql<boolean>`substr(key, 1, ${namespace.length + 1}) = ${`${namespace}:`}`
