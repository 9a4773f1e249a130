// Everything that stands under the id of a person or a server, over SQL; a new table that holds either is entered here.
import { type Kysely, sql } from 'kysely'
import type { Check } from '../check/check.ts'
import { forgetPerson, giveBackWithout, partIn } from '../check/person-in-check.ts'
import { type KeptOfPerson, nobody, type Traces } from '../server/traces.ts'
import { type Decision, type Finding, withoutPerson } from '../trends/findings/finding.ts'
import type { LeftOut } from './bodies/body.ts'
import { findingBody } from './bodies/finding.ts'
import { draftsNamespace } from './cache-adapter.ts'
import { bodyColumns, type checkOf, checksOf, columnsOf } from './check-body.ts'
import { openFamilyStore } from './family-store.ts'
import { familyDeedsOf, forgetInFamilies } from './family-traces.ts'
import { openFindingLog } from './finding-log.ts'
import { atOnce, inBatches } from './in-batches.ts'
import { scrub } from './scrub.ts'
import type { Seal } from './seal.ts'
import { changesOf, forgetInSettings } from './settings-traces.ts'
import type { Tables } from './tables.ts'

/** `leftOut` is told of what cannot be read: it is deleted with the rest, but not shown. */
export function openTraces(db: Kysely<Tables>, seal: Seal, leftOut: LeftOut = () => undefined): Traces {
  const findings = openFindingLog(db, leftOut)
  const draftsOf = (person: string) => holds('value', 'person', person)

  async function decidedBy(person: string): Promise<Finding[]> {
    const rows = await db
      .selectFrom('findings')
      .select('body')
      .where(holds('body', 'by', person))
      .execute()
    return findingBody.readAll(
      rows.map(row => row.body),
      leftOut,
    )
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
    return (await checksOf(seal, rows, leftOut)).filter(check => JSON.stringify(check).includes(named))
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

  /** Rows of checks that were handed on and this person holds: others may wait for them. */
  const handedTo = (person: string) =>
    db
      .selectFrom('checks')
      .select(['id', 'revision', ...bodyColumns])
      .where('holder', '=', person)
      .where('starter', 'is not', null)
      .execute()

  /** Checks that others started and this person held are their starters' again; those that nobody waits for go. Says how many. */
  async function letGoOfHanded(person: string): Promise<number> {
    let gone = 0
    for (let rows = await handedTo(person); rows.length > 0; rows = await handedTo(person))
      for (const row of rows) {
        const check = await readable(row)
        const back = check && check.phase.is !== 'closed' ? giveBackWithout(check, person) : undefined
        // Whoever has changed it meanwhile is met again by the next look: what comes back to somebody is never deleted.
        if (check && back ? await put(check, back) : await remove(row)) gone++
      }
    return gone
  }

  /** What this version cannot read goes as a whole: nobody could be given it back. */
  async function readable(row: Parameters<typeof checkOf>[1]): Promise<Check | undefined> {
    const [check] = await checksOf(seal, [row], leftOut)
    return check
  }

  async function remove({ id, revision }: { readonly id: string; readonly revision: number }): Promise<boolean> {
    const done = await db.deleteFrom('checks').where('id', '=', id).where('revision', '=', revision).executeTakeFirst()
    return done.numDeletedRows === 1n
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
        checks: await checksOf(seal, checks, leftOut),
        others: (await othersWith(person)).map(check => partIn(check, person)),
        drafts: drafts.map(row => JSON.parse(row.value).value),
        decisions: decided,
        helped: await db
          .selectFrom('helped')
          .select(['server', 'week', 'count'])
          .where('person', '=', person)
          .orderBy('server')
          .orderBy('week')
          .execute(),
        settings: await changesOf(db, person, leftOut),
        families: await familyDeedsOf(db, person),
      }
    },

    async forgetPerson(person) {
      const handed = await letGoOfHanded(person)
      const checks = await db
        .deleteFrom('checks')
        .where('holder', '=', person)
        .where('starter', 'is', null)
        .executeTakeFirst()
      const drafts = await db
        .deleteFrom('kept')
        .where(inNamespace(draftsNamespace))
        .where(draftsOf(person))
        .executeTakeFirst()
      await db.deleteFrom('helped').where('person', '=', person).execute()
      await leaveOthers(person)
      const decisions = await loseName(person)
      const settings = await forgetInSettings(db, person, leftOut)
      const families = await forgetInFamilies(db, person)
      await scrub(db)
      return {
        checks: Number(checks.numDeletedRows) + handed,
        drafts: Number(drafts.numDeletedRows),
        decisions,
        settings,
        families,
      }
    },

    async forgetServer(server) {
      await inBatches(async () => {
        const found = await db.selectFrom('checks').select('id').where('server', '=', server).limit(atOnce).execute()
        const checks = found.map(one => one.id)
        if (checks.length === 0) return 0
        await db.deleteFrom('notices').where('check_id', 'in', checks).execute()
        await db.deleteFrom('checks').where('id', 'in', checks).execute()
        return checks.length
      })
      await findings.forget(server)
      await openFamilyStore(db).forget(server)
      const outcomes = db
        .selectFrom('outcomes')
        .select(['server', 'epoch', 'family', 'reporter'])
        .where('server', '=', server)
        .limit(atOnce)
      await inBatches(async () => {
        const done = await sql`delete from outcomes where (server, epoch, family, reporter) in (${outcomes})`.execute(
          db,
        )
        return done.numAffectedRows ?? 0
      })
      await db.deleteFrom('waiting_outcomes').where('server', '=', server).execute()
      await db.deleteFrom('answer_counts').where('server', '=', server).execute()
      await db.deleteFrom('releases').where('scope', '=', `server:${server}`).execute()
      await db.deleteFrom('helped').where('server', '=', server).execute()
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
