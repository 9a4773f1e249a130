// Outcomes that checks have left wait, sealed, until five people of a server have left one; then theirs join the others together.
//
// What is written in one transaction is joined for good by its number, its place and the log, so what is written there is sealed. Between
// the people and the open outcomes lies a batch: the outcomes of at least five people of a server, all under the week in which the fifth
// came, in the order of their pseudonyms, which are random to whoever has no key. The key of a seal is destroyed soon after.
import { randomUUID } from 'node:crypto'
import { setImmediate as turn } from 'node:timers/promises'
import { type Expression, type ExpressionBuilder, type Kysely, type SqlBool, sql } from 'kysely'
import { type Epoch, epochOf } from '../trends/epoch.ts'
import { minimumReporters } from '../trends/fives.ts'
import type { Outcome } from '../trends/outcome.ts'
import type { Week } from '../trends/week.ts'
import { waitingBody } from './bodies/waiting-outcome.ts'
import { keepCommon } from './common-answers.ts'
import { rowOf } from './outcome-row.ts'
import { type Seal, weekIn } from './seal.ts'
import type { OutcomeRow, Tables } from './tables.ts'

/** About so many join in one transaction, so that whoever clicks meanwhile waits for no more than some milliseconds. */
const most = 200

/** The outcome as it waits. */
export const sealOutcome = (seal: Seal, outcome: Outcome): Promise<string> =>
  seal.close(waitingBody.write(outcome), outcome.week)

/** `in`: where it waits, in its check's row while its week lasts, then among those of its server for which there are too few yet. */
export type Waiting = { readonly in: 'checks' | 'waiting_outcomes'; readonly id: string; readonly outcome: Outcome }

type Which = Readonly<{
  [Table in Waiting['in']]: (is: ExpressionBuilder<Tables, Table>) => Expression<SqlBool>
}>

/** Those that wait, part by part, and how many of a part cannot be opened. */
async function* parts(
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

/** Puts one into the table, in the given transaction. */
type Keep = (within: Kysely<Tables>, row: OutcomeRow) => Promise<unknown>

/**
 * Lets the outcomes of weeks up to `upTo` join the others, those of each server once there are enough; says how many did. Those that
 * cannot be opened stay, and are told to `lost`.
 */
export async function admitWaiting(
  db: Kysely<Tables>,
  seal: Seal,
  upTo: Week,
  keep: Keep,
  lost: (rows: number) => void,
): Promise<number> {
  let joined = 0
  for (const server of await serversOf(db, upTo)) {
    const byEpoch = new Map<Epoch, Waiting[]>()
    const over = sql<SqlBool>`${weekIn('outcome')} <= ${upTo}`
    const theirs = parts(db, seal, {
      checks: is => is.and([is('server', '=', server), over]),
      waiting_outcomes: is => is('server', '=', server),
    })
    for await (const part of theirs) {
      if (part.lost > 0) lost(part.lost)
      for (const one of part.opened) {
        const epoch = epochOf(one.outcome.week)
        const others = byEpoch.get(epoch)
        if (others) others.push(one)
        else byEpoch.set(epoch, [one])
      }
    }
    for (const waiting of byEpoch.values()) {
      const fresh = await notCounted(db, server, waiting)
      const { batches, left } = inBatchesOf(fresh)
      for (const { week, waiting: batch } of batches) joined += await join(db, server, week, batch, keep)
      await goOnWaiting(db, seal, server, upTo, left)
    }
  }
  return joined
}

/** Those where a week is over since somebody looked last. */
async function serversOf(db: Kysely<Tables>, upTo: Week): Promise<readonly string[]> {
  const left = await db
    .selectFrom('checks')
    .select('server')
    .distinct()
    .where('outcome', 'is not', null)
    .where(sql<SqlBool>`${weekIn('outcome')} <= ${upTo}`)
    .execute()
  const waiting = await db
    .selectFrom('waiting_outcomes')
    .select('server')
    .distinct()
    .where('sealed_under', '<', upTo)
    .execute()
  return [...new Set([...left, ...waiting].flatMap(({ server }) => server ?? []))].sort()
}

/** Those that are not counted already; what is lets go of its place. */
async function notCounted(db: Kysely<Tables>, server: string, waiting: readonly Waiting[]): Promise<Waiting[]> {
  const there = new Set<string>()
  for (const some of pieces(waiting)) {
    const rows = await db
      .selectFrom('outcomes')
      .select(['epoch', 'reporter', 'family'])
      .where('server', '=', server)
      .where('epoch', 'in', [...new Set(some.map(one => epochOf(one.outcome.week)))])
      .where('reporter', 'in', [...new Set(some.map(one => one.outcome.reporter))])
      .execute()
    for (const row of rows) there.add(placeOf(row))
  }
  const { counted = [], fresh = [] } = Object.groupBy(waiting, one =>
    there.has(placeOf(rowOf(one.outcome))) ? 'counted' : 'fresh',
  )
  for (const some of pieces(counted)) await noLonger(db, some)
  return fresh
}

type Batch = { readonly week: Week; readonly waiting: readonly Waiting[] }

/** Week by week, who comes is added to those who wait, until they are enough: then all of them are of that week. */
function inBatchesOf(waiting: readonly Waiting[]): { readonly batches: Batch[]; readonly left: readonly Waiting[] } {
  const byWeek = Map.groupBy(waiting, one => one.outcome.week)
  const batches: Batch[] = []
  let left: Waiting[] = []
  for (const week of [...byWeek.keys()].sort()) {
    left.push(...(byWeek.get(week) ?? []))
    const reporters = [...Map.groupBy(left, one => one.outcome.reporter).entries()].sort(([a], [b]) => (a < b ? -1 : 1))
    if (reporters.length < minimumReporters) continue
    // Each batch has people enough of its own.
    const count = Math.max(1, Math.min(Math.ceil(left.length / most), Math.floor(reporters.length / minimumReporters)))
    for (let i = 0; i < count; i++) {
      const [from, to] = [i, i + 1].map(n => Math.floor((n * reporters.length) / count))
      batches.push({ week, waiting: reporters.slice(from, to).flatMap(([, theirs]) => theirs) })
    }
    left = []
  }
  return { batches, left }
}

const people = (waiting: readonly Waiting[]): number => new Set(waiting.map(one => one.outcome.reporter)).size

async function join(
  db: Kysely<Tables>,
  server: string,
  week: Week,
  waiting: readonly Waiting[],
  keep: Keep,
): Promise<number> {
  const joining = db.transaction().execute(async within => {
    const taken = await noLonger(within, waiting)
    // What was deleted meanwhile, because its person wanted so, does not join; where too few are left, nobody does yet.
    if (people(taken) < minimumReporters) throw new TooFew()
    const once = new Map(taken.map(({ outcome }) => [placeOf(rowOf(outcome)), { ...outcome, week }]))
    const rows = (await keepCommon(within, server, [...once.values()])).map(rowOf)
    for (const row of rows.sort((a, b) => (placeOf(a) < placeOf(b) ? -1 : 1))) await keep(within, row)
    return taken.length
  })
  return joining.catch(error => {
    if (error instanceof TooFew) return 0
    throw error
  })
}
class TooFew extends Error {}

/**
 * Those that are too few yet leave their checks, and are sealed anew, all of them together and in no order: the key of the week in which
 * they came is destroyed before they join.
 */
async function goOnWaiting(
  db: Kysely<Tables>,
  seal: Seal,
  server: string,
  upTo: Week,
  waiting: readonly Waiting[],
): Promise<void> {
  if (waiting.length === 0) return
  const sealed = new Map<Waiting, string>()
  for (const one of waiting) sealed.set(one, await seal.close(waitingBody.write(one.outcome), upTo))
  await db.transaction().execute(async within => {
    const rows = (await noLonger(within, waiting)).map(one => ({
      id: randomUUID(),
      server,
      epoch: epochOf(one.outcome.week),
      sealed_under: upTo,
      sealed: sealed.get(one) as string,
    }))
    for (const some of pieces(rows.sort((a, b) => (a.id < b.id ? -1 : 1))))
      await within.insertInto('waiting_outcomes').values(some).execute()
  })
}

type Place = Pick<OutcomeRow, 'epoch' | 'reporter' | 'family'>
const placeOf = ({ epoch, reporter, family }: Place): string => `${epoch} ${reporter} ${family}`

function* pieces<T>(all: readonly T[]): Generator<T[]> {
  for (let i = 0; i < all.length; i += most) yield all.slice(i, i + most)
}

/** All that wait, of every server. */
export async function* allWaiting(db: Kysely<Tables>, seal: Seal): AsyncGenerator<Waiting> {
  const all = { checks: is => is.lit(true), waiting_outcomes: is => is.lit(true) } satisfies Which
  for await (const { opened } of parts(db, seal, all)) yield* opened
}

/** Those that wait and are borne by one of the pseudonyms. */
export async function waitingOf(db: Kysely<Tables>, seal: Seal, pseudonyms: readonly string[]): Promise<Waiting[]> {
  const borne = new Set<string | null>(pseudonyms)
  const found: Waiting[] = []
  for await (const one of allWaiting(db, seal))
    if (borne.has(one.outcome.reporter) || borne.has(one.outcome.pooled)) found.push(one)
  return found
}

/** Takes them from where they wait; says which were still there. */
export async function noLonger(db: Kysely<Tables>, waiting: readonly Waiting[]): Promise<Waiting[]> {
  const gone = new Set<string>()
  for (const some of pieces(waiting.filter(one => one.in === 'checks'))) {
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
  for (const some of pieces(waiting.filter(one => one.in === 'waiting_outcomes'))) {
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
