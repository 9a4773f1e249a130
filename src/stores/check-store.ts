// The check store over SQL: one statement a save, with the outcome it leaves, so that claim, compare-and-set and change are one or none.
import type { Kysely, Updateable } from 'kysely'
import type { Check } from '../check/check.ts'
import type { CheckStore } from '../check/store.ts'
import type { Outcome } from '../trends/outcome.ts'
import type { LeftOut } from './bodies/body.ts'
import { bodyColumns, bodyOf, checkOf, checksOf, columnsOf, isFoundAlike } from './check-body.ts'
import { atOnce, inBatches } from './in-batches.ts'
import { insert, insertWithin } from './insert-check.ts'
import { passWithin } from './pass-check.ts'
import { scrub } from './scrub.ts'
import type { Seal } from './seal.ts'
import type { CheckRow, Tables } from './tables.ts'
import { sealOutcome } from './waiting-outcomes.ts'
import { withValues } from './with-values.ts'

/** `leftOut` is told of checks that cannot be read, where others are listed; the one that is loaded throws `UnreadableBody`. */
export function openCheckStore(
  db: Kysely<Tables>,
  seal: Seal,
  leftOut: LeftOut = () => undefined,
): CheckStore<Outcome> {
  // The statements of every click, compiled once: kysely builds the text, each call brings its values in order.
  const loading = db
    .selectFrom('checks')
    .select([...bodyColumns, 'changed_by'])
    .where('id', '=', '')
    .compile()
  const changing = (row: Updateable<CheckRow>) =>
    db
      .updateTable('checks')
      .set(row)
      .where('id', '=', '')
      .where('revision', '=', 0)
      .where('settled', '=', 0)
      .where('changed_by', '!=', '')
      .compile()
  const saving = changing({ ...blank, changed_by: '' })
  const leaving = changing({ ...blank, changed_by: '', outcome: '' })
  // What most clicks change; a column that is written costs its indexes, whether or not it says the same.
  const stepping = changing({ revision: 0, body: '', changed_by: '' })

  const sealed = async (outcome: Outcome | null) => outcome && sealOutcome(seal, outcome)

  /** Checks that are neither closed nor expired. */
  const openAt = (now: number) =>
    db.selectFrom('checks').select(bodyColumns).where('phase', '!=', 'closed').where('expires_at', '>', now)

  return {
    async create(check, interaction, most) {
      const row = {
        ...(await columnsOf(seal, check)),
        id: check.id,
        started_at: check.startedAt,
        opened_by: interaction,
        changed_by: interaction,
      }
      return most === undefined ? insert(db, row) : insertWithin(db, row, most)
    },

    async load(id) {
      const { rows } = await db.executeQuery(withValues(loading, [id]))
      const check = rows[0] && (await checkOf(seal, rows[0]))
      return check && { check, changedBy: rows[0]?.changed_by ?? '' }
    },

    async save(check, expected, interaction, outcome, stood) {
      // A check that has left its outcome, or none, leaves no second one.
      const settles = outcome !== undefined && !check.settled
      const next: Check = settles ? { ...check, settled: true } : check
      const key = [check.id, expected, check.settled ? 1 : 0, interaction]
      const changes = async () => {
        if (stood && isFoundAlike(next, stood))
          return withValues(stepping, [next.revision, await bodyOf(seal, next), interaction, ...key])
        const row = Object.values(await columnsOf(seal, next))
        return settles
          ? withValues(leaving, [...row, interaction, await sealed(outcome), ...key])
          : withValues(saving, [...row, interaction, ...key])
      }
      const saved = await db.executeQuery(await changes())
      if (saved.numAffectedRows === 1n) return 'saved'
      const { rows } = await db.executeQuery(withValues(loading, [check.id]))
      return rows[0]?.changed_by === interaction ? 'seen' : 'stale'
    },

    async pass(check, expected, interaction, now, most) {
      const row = await columnsOf(seal, check)
      return passWithin(db, { id: check.id, expected, settled: row.settled, interaction, row, now, most })
    },

    async finished(expiry, limit) {
      const rows = await db
        .selectFrom('checks')
        .select(bodyColumns)
        .where('phase', '=', 'done')
        .where('settled', '=', 0)
        .where('expires_at', '<=', expiry)
        .orderBy('expires_at')
        .limit(limit)
        .execute()
      return checksOf(seal, rows, leftOut)
    },

    async settle(check, outcome) {
      // The last interaction stays as it is: this is nobody's click.
      const done = await db
        .updateTable('checks')
        .set({ ...(await columnsOf(seal, { ...check, settled: true })), outcome: await sealed(outcome) })
        .where('id', '=', check.id)
        .where('revision', '=', check.revision)
        .where('settled', '=', 0)
        .executeTakeFirst()
      return done.numUpdatedRows === 1n
    },

    async heldBy(person, now) {
      const rows = await openAt(now).where('holder', '=', person).orderBy('started_at', 'desc').orderBy('id').execute()
      return checksOf(seal, rows, leftOut)
    },

    async startedBy(person, now) {
      const rows = await openAt(now)
        .where('starter', '=', person)
        .where('holder', '!=', person)
        .orderBy('started_at', 'desc')
        .orderBy('id')
        .execute()
      return checksOf(seal, rows, leftOut)
    },

    async handedIn(server, now) {
      const rows = await openAt(now)
        .where('server', '=', server)
        .where('starter', 'is not', null)
        .orderBy('started_at')
        .orderBy('id')
        .execute()
      return checksOf(seal, rows, leftOut)
    },

    async startedSince(person, since) {
      const row = await db
        .selectFrom('checks')
        .select(({ fn }) => fn.countAll<number>().as('count'))
        .where('holder', '=', person)
        .where('started_at', '>=', since)
        .executeTakeFirstOrThrow()
      return row.count
    },

    async counted(person, interaction) {
      const row = await db
        .selectFrom('checks')
        .select('id')
        .where('holder', '=', person)
        .where(where => where.or([where('opened_by', '=', interaction), where('changed_by', '=', interaction)]))
        .executeTakeFirst()
      return row !== undefined
    },

    async purge(now) {
      // What it has left still waits to be counted, if nobody has closed weeks for so long.
      const expired = db
        .selectFrom('checks')
        .select('id')
        .where('expires_at', '<=', now)
        .where('outcome', 'is', null)
        .limit(atOnce)
      const gone = await inBatches(async () => {
        const { numDeletedRows } = await db.deleteFrom('checks').where('id', 'in', expired).executeTakeFirstOrThrow()
        return numDeletedRows
      })
      if (gone > 0) await scrub(db)
      return gone
    },
  }
}

/** Stands in for what a check is while a statement is compiled: in the order of `columnsOf`. */
const blank = {
  revision: 0,
  holder: '',
  server: '',
  phase: '',
  expires_at: 0,
  starter: '',
  settled: 0,
  body: '',
}
