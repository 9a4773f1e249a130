// Lets outcomes that wait, sealed, join the counted ones: once five people of a server have left one, theirs together.
//
// What is written in one transaction is joined for good by its number, its place and the log, so what is written there is sealed. Between
// the people and the open outcomes lies a batch: the outcomes of at least five people of a server, all under the week in which the fifth
// came, in the order of their codes, which are random to whoever has no key. The key of a seal is destroyed soon after. Only while they
// wait do those of one person bear one pseudonym, by which people are counted.
import { randomUUID } from 'node:crypto'
import { type Kysely, type SqlBool, sql } from 'kysely'
import { type Epoch, epochOf } from '../trends/epoch.ts'
import { minimumReporters } from '../trends/fives.ts'
import type { Week } from '../trends/week.ts'
import { waitingBody } from './bodies/waiting-outcome.ts'
import { keepCommon } from './common-answers.ts'
import { type CodeIn, coded, type FamilyCodes } from './family-codes.ts'
import { pieces } from './in-batches.ts'
import { rowOf } from './outcome-row.ts'
import { type Seal, weekIn } from './seal.ts'
import type { OutcomeRow, Tables } from './tables.ts'
import { most, noLonger, parts, type Waiting } from './waiting-outcomes.ts'

/** Puts one into the table, in the given transaction. */
type Keep = (within: Kysely<Tables>, row: OutcomeRow) => Promise<unknown>

/**
 * Lets the outcomes of weeks up to `upTo` join the others, those of each server once there are enough; says how many did. Those that
 * cannot be opened, or whose epoch has no key any more, stay and are told to `lost`.
 */
export async function admitWaiting(
  db: Kysely<Tables>,
  seal: Seal,
  codes: FamilyCodes,
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
    for (const [epoch, waiting] of byEpoch) {
      const codeIn = await codes.in(epoch)
      if (codeIn === undefined) {
        lost(waiting.length)
        continue
      }
      const fresh = await notCounted(db, server, waiting, codeIn)
      const { batches, left } = inBatchesOf(fresh)
      for (const { week, waiting: batch } of batches) joined += await join(db, server, week, batch, codeIn, keep)
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
async function notCounted(
  db: Kysely<Tables>,
  server: string,
  waiting: readonly Waiting[],
  codeIn: CodeIn,
): Promise<Waiting[]> {
  const there = new Set<string>()
  for (const some of pieces(waiting, most)) {
    const rows = await db
      .selectFrom('outcomes')
      .select(['epoch', 'reporter', 'family'])
      .where('server', '=', server)
      .where('epoch', 'in', [...new Set(some.map(one => epochOf(one.outcome.week)))])
      .where('reporter', 'in', [...new Set(some.flatMap(one => placesOf(one, codeIn).map(place => place.reporter)))])
      .execute()
    for (const row of rows) there.add(placeOf(row))
  }
  const { counted = [], fresh = [] } = Object.groupBy(waiting, one =>
    placesOf(one, codeIn).some(place => there.has(placeOf(place))) ? 'counted' : 'fresh',
  )
  for (const some of pieces(counted, most)) await noLonger(db, some)
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
  codeIn: CodeIn,
  keep: Keep,
): Promise<number> {
  const joining = db.transaction().execute(async within => {
    const taken = await noLonger(within, waiting)
    // What was deleted meanwhile, because its person wanted so, does not join; where too few are left, nobody does yet.
    if (people(taken) < minimumReporters) throw new TooFew()
    const once = new Map(taken.map(({ outcome }) => [placeOf(rowOf(outcome)), { ...outcome, week }]))
    const common = await keepCommon(within, server, [...once.values()])
    const rows = await notPooledBefore(
      within,
      common.map(one => rowOf(one)),
      codeIn,
    )
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
    for (const some of pieces(
      rows.sort((a, b) => (a.id < b.id ? -1 : 1)),
      most,
    ))
      await within.insertInto('waiting_outcomes').values(some).execute()
  })
}

/** Where an outcome stands once it is counted: under a code, or, where version 0.1.0 counted it, under the pseudonym itself. */
function placesOf({ outcome }: Waiting, codeIn: CodeIn): readonly Place[] {
  const row = rowOf(outcome)
  return [row, coded(row, codeIn)]
}

/** The rows under their codes. Whom version 0.1.0 has counted in the pool, under the pseudonym itself, the pool does not count again. */
async function notPooledBefore(
  within: Kysely<Tables>,
  rows: readonly OutcomeRow[],
  codeIn: CodeIn,
): Promise<OutcomeRow[]> {
  const pooled = rows.flatMap(row => row.pooled ?? [])
  const before =
    pooled.length === 0
      ? []
      : await within
          .selectFrom('outcomes')
          .select(['epoch', 'family', 'pooled'])
          .where('epoch', 'in', [...new Set(rows.map(row => row.epoch))])
          .where('family', 'in', [...new Set(rows.map(row => row.family))])
          .where('pooled', 'in', pooled)
          .execute()
  const there = new Set(before.map(row => `${row.epoch} ${row.family} ${row.pooled}`))
  return rows.map(row =>
    coded({ ...row, pooled: there.has(`${row.epoch} ${row.family} ${row.pooled}`) ? null : row.pooled }, codeIn),
  )
}

type Place = Pick<OutcomeRow, 'epoch' | 'reporter' | 'family'>
const placeOf = ({ epoch, reporter, family }: Place): string => `${epoch} ${reporter} ${family}`
