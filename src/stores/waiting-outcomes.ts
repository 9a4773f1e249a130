// Outcomes that checks have left wait in the check's own row, sealed, until their week is over; then a server's join the others together.
//
// What is written in one transaction is joined for good by its number, its place and the log, so what is written there is sealed. Between
// the check and the open outcome lies a batch: all that a server's checks have left in the weeks that are over, in the order of their
// pseudonyms, which are random to whoever has no key. The key of the seal is destroyed soon after.
import { setImmediate as turn } from 'node:timers/promises'
import { type Expression, type ExpressionBuilder, type Kysely, type SqlBool, sql } from 'kysely'
import { epochOf } from '../trends/epoch.ts'
import type { Outcome } from '../trends/outcome.ts'
import type { Week } from '../trends/week.ts'
import { waitingBody } from './bodies/waiting-outcome.ts'
import { keepCommon } from './common-answers.ts'
import { rowOf } from './outcome-row.ts'
import { type Seal, weekIn } from './seal.ts'
import type { OutcomeRow, Tables } from './tables.ts'

/** At most so many join in one transaction, so that whoever clicks meanwhile waits for no more than some milliseconds. */
const most = 200

/** The outcome as it waits. */
export const sealOutcome = (seal: Seal, outcome: Outcome): Promise<string> =>
  seal.close(waitingBody.write(outcome), outcome.week)

export type Waiting = { readonly check: string; readonly outcome: Outcome }

/** Those that wait of a server's weeks, part by part, and how many of a part cannot be opened. */
async function* parts(
  db: Kysely<Tables>,
  seal: Seal,
  size: number,
  those: (is: ExpressionBuilder<Tables, 'checks'>) => Expression<SqlBool>,
): AsyncGenerator<{ readonly opened: readonly Waiting[]; readonly lost: number }> {
  for (let after = ''; ; ) {
    const rows = await db
      .selectFrom('checks')
      .select(['id', 'outcome'])
      .where('outcome', 'is not', null)
      .where('id', '>', after)
      .where(those)
      .orderBy('id')
      .limit(size)
      .execute()
    const last = rows.at(-1)
    if (last === undefined) return
    after = last.id
    const opened: Waiting[] = []
    for (const { id, outcome } of rows) {
      const text = outcome === null ? undefined : await seal.open(outcome)
      const [read] = text === undefined ? [] : waitingBody.readAll([text], () => undefined)
      if (read !== undefined) opened.push({ check: id, outcome: read })
    }
    yield { opened, lost: rows.length - opened.length }
    await turn()
  }
}

/**
 * Lets the outcomes of weeks up to `upTo` join the others; says how many did. `keep` puts one into the table, in the given
 * transaction. Those that cannot be opened stay, and are told to `lost`.
 */
export async function admitWaiting(
  db: Kysely<Tables>,
  seal: Seal,
  upTo: Week,
  keep: (within: Kysely<Tables>, row: OutcomeRow) => Promise<unknown>,
  lost: (rows: number) => void,
): Promise<number> {
  const over = sql<SqlBool>`${weekIn('outcome')} <= ${upTo}`
  const servers = await db
    .selectFrom('checks')
    .select(({ fn }) => ['server', fn.countAll<number>().as('count')])
    .where('outcome', 'is not', null)
    .where(over)
    .groupBy('server')
    .execute()
  let joined = 0
  for (const { server, count } of servers) {
    // Parts of the same size: a last one of two or three would say whose they are.
    const size = Math.ceil(count / Math.ceil(count / most))
    for await (const part of parts(db, seal, size, is => is.and([is('server', '=', server), over]))) {
      if (part.lost > 0) lost(part.lost)
      if (part.opened.length > 0) joined += await join(db, part.opened, keep)
    }
  }
  return joined
}

async function join(
  db: Kysely<Tables>,
  waiting: readonly Waiting[],
  keep: (within: Kysely<Tables>, row: OutcomeRow) => Promise<unknown>,
): Promise<number> {
  return db.transaction().execute(async within => {
    const taken = await noLonger(within, waiting)
    // What was deleted meanwhile, because its person wanted so, does not join.
    const left = waiting.filter(one => taken.has(one.check)).map(one => one.outcome)
    const rows: OutcomeRow[] = []
    for (const [server, theirs] of Map.groupBy(left, one => one.server))
      rows.push(...(await keepCommon(within, server, await onceEach(within, server, theirs))).map(rowOf))
    for (const row of rows.sort((a, b) => (placeOf(a) < placeOf(b) ? -1 : 1))) await keep(within, row)
    return left.length
  })
}

type Place = Pick<OutcomeRow, 'epoch' | 'reporter' | 'family'>
const placeOf = ({ epoch, reporter, family }: Place): string => `${epoch} ${reporter} ${family}`

/** Those that are not counted already: somebody who checks ten cells of a family does not make a rare answer a common one. */
async function onceEach(within: Kysely<Tables>, server: string, outcomes: readonly Outcome[]): Promise<Outcome[]> {
  const byPlace = new Map(outcomes.map(outcome => [placeOf(rowOf(outcome)), outcome]))
  const there = await within
    .selectFrom('outcomes')
    .select(['epoch', 'reporter', 'family'])
    .where('server', '=', server)
    .where('epoch', 'in', [...new Set(outcomes.map(one => epochOf(one.week)))])
    .where('reporter', 'in', [...new Set(outcomes.map(one => one.reporter))])
    .execute()
  for (const one of there) byPlace.delete(placeOf(one))
  return [...byPlace.values()]
}

/** Those that wait and are borne by one of the pseudonyms. */
export async function waitingOf(db: Kysely<Tables>, seal: Seal, pseudonyms: readonly string[]): Promise<Waiting[]> {
  const borne = new Set<string | null>(pseudonyms)
  const found: Waiting[] = []
  for await (const { opened } of parts(db, seal, most, is => is.lit(true)))
    found.push(...opened.filter(({ outcome: { reporter, pooled } }) => borne.has(reporter) || borne.has(pooled)))
  return found
}

/** Takes them out of their checks; says of which. */
export async function noLonger(db: Kysely<Tables>, waiting: readonly Waiting[]): Promise<ReadonlySet<string>> {
  if (waiting.length === 0) return new Set()
  const checks = waiting.map(one => one.check)
  const gone = await db
    .updateTable('checks')
    .set({ outcome: null })
    .where('id', 'in', checks)
    .where('outcome', 'is not', null)
    .returning('id')
    .execute()
  return new Set(gone.map(one => one.id))
}
