// Outcomes that checks have left and that wait, sealed, to be counted: found, taken away, and let go of.
import { setImmediate as turn } from 'node:timers/promises'
import { type Expression, type ExpressionBuilder, type Kysely, type SqlBool, sql } from 'kysely'
import type { Outcome } from '../trends/outcome.ts'
import type { Week } from '../trends/week.ts'
import { waitingBody } from './bodies/waiting-outcome.ts'
import { coded, type FamilyCodes } from './family-codes.ts'
import { pieces } from './in-batches.ts'
import { rowOf } from './outcome-row.ts'
import { type Seal, weekIn } from './seal.ts'
import type { Tables } from './tables.ts'

/** About so many are opened, or join, at a time, so that whoever clicks meanwhile waits for no more than some milliseconds. */
export const most = 200

/** The outcome as it waits. */
export const sealOutcome = (seal: Seal, outcome: Outcome): Promise<string> =>
  seal.close(waitingBody.write(outcome), outcome.week)

/** `in`: where it waits, in its check's row while its week lasts, then among those of its server for which there are too few yet. */
export type Waiting = { readonly in: 'checks' | 'waiting_outcomes'; readonly id: string; readonly outcome: Outcome }

export type Which = Readonly<{
  [Table in Waiting['in']]: (is: ExpressionBuilder<Tables, Table>) => Expression<SqlBool>
}>

/** Those that wait, part by part, and how many of a part cannot be opened. */
export async function* parts(
  db: Kysely<Tables>,
  seal: Seal,
  which: Which,
): AsyncGenerator<{ readonly opened: readonly Waiting[]; readonly lost: number }> {
  for (const table of ['checks', 'waiting_outcomes'] as const)
    for (let after = ''; ; ) {
      const rows =
        table === 'checks'
          ? await db
              .selectFrom('checks')
              .select(['id', 'outcome as sealed'])
              .where('outcome', 'is not', null)
              .where('id', '>', after)
              .where(which.checks)
              .orderBy('id')
              .limit(most)
              .execute()
          : await db
              .selectFrom('waiting_outcomes')
              .select(['id', 'sealed'])
              .where('id', '>', after)
              .where(which.waiting_outcomes)
              .orderBy('id')
              .limit(most)
              .execute()
      const last = rows.at(-1)
      if (last === undefined) break
      after = last.id
      const opened: Waiting[] = []
      for (const { id, sealed } of rows) {
        const text = sealed === null ? undefined : await seal.open(sealed)
        const [read] = text === undefined ? [] : waitingBody.readAll([text], () => undefined)
        if (read !== undefined) opened.push({ in: table, id, outcome: read })
      }
      yield { opened, lost: rows.length - opened.length }
      await turn()
    }
}

/** All that wait, of every server. */
export async function* allWaiting(db: Kysely<Tables>, seal: Seal): AsyncGenerator<Waiting> {
  const all = { checks: is => is.lit(true), waiting_outcomes: is => is.lit(true) } satisfies Which
  for await (const { opened } of parts(db, seal, all)) yield* opened
}

/** Under what an outcome that waits can be found: its person's pseudonyms, and the codes under which it would be counted. */
export async function namesOf({ outcome }: Waiting, codes: FamilyCodes): Promise<string[]> {
  const row = rowOf(outcome)
  const codeIn = await codes.in(row.epoch)
  return [row, ...(codeIn ? [coded(row, codeIn)] : [])].flatMap(({ reporter, pooled }) =>
    [reporter, pooled ?? []].flat(),
  )
}

/** Those that wait and are borne by one of the pseudonyms or codes. */
export async function waitingOf(
  db: Kysely<Tables>,
  seal: Seal,
  codes: FamilyCodes,
  names: readonly string[],
): Promise<Waiting[]> {
  const borne = new Set(names)
  const found: Waiting[] = []
  for await (const one of allWaiting(db, seal))
    if ((await namesOf(one, codes)).some(name => borne.has(name))) found.push(one)
  return found
}

/** Takes them from where they wait; says which were still there. */
export async function noLonger(db: Kysely<Tables>, waiting: readonly Waiting[]): Promise<Waiting[]> {
  const gone = new Set<string>()
  for (const some of pieces(
    waiting.filter(one => one.in === 'checks'),
    most,
  )) {
    const rows = await db
      .updateTable('checks')
      .set({ outcome: null })
      .where(
        'id',
        'in',
        some.map(one => one.id),
      )
      .where('outcome', 'is not', null)
      .returning('id')
      .execute()
    for (const { id } of rows) gone.add(`checks ${id}`)
  }
  for (const some of pieces(
    waiting.filter(one => one.in === 'waiting_outcomes'),
    most,
  )) {
    const rows = await db
      .deleteFrom('waiting_outcomes')
      .where(
        'id',
        'in',
        some.map(one => one.id),
      )
      .returning('id')
      .execute()
    for (const { id } of rows) gone.add(`waiting_outcomes ${id}`)
  }
  return waiting.filter(one => gone.has(`${one.in} ${one.id}`))
}

/** Lets go of what is sealed under the key of a week before this one; says how many. A check that has left it goes by its own time. */
export async function dropSealed(db: Kysely<Tables>, week: Week): Promise<number> {
  const left = await db
    .updateTable('checks')
    .set({ outcome: null })
    .where('outcome', 'is not', null)
    .where(sql<SqlBool>`${weekIn('outcome')} < ${week}`)
    .executeTakeFirst()
  const waited = await db.deleteFrom('waiting_outcomes').where('sealed_under', '<', week).executeTakeFirst()
  return Number(left.numUpdatedRows + waited.numDeletedRows)
}
