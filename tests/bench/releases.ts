// Bench of the weekly release: a week closed over a million outcomes, against one bare aggregate scan of the same table.
//
// The outcomes are invented (`invented-outcomes.ts` says their shape): like a server's, which is what is held, and fully at random,
// printed beside it. Times are the processor time of this process, in turns, since a shared machine lengthens any other.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { DatabaseSync, type StatementSync } from 'node:sqlite'
import type { Kysely } from 'kysely'
import { closeWeeks } from '../../src/jobs/close-weeks.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { rowOf } from '../../src/stores/outcome-row.ts'
import { openReleaseLog } from '../../src/stores/release-log.ts'
import type { Tables } from '../../src/stores/tables.ts'
import { graceMs } from '../../src/trends/closing.ts'
import { nextWeek, type Week, weekPlus, weekStart } from '../../src/trends/week.ts'
import { testCodes, testSeal } from '../stores/test-seal.ts'
import { usually } from './effort.ts'
import { inventOutcomes, type Shape } from './invented-outcomes.ts'
import { compared, type Line, ms, printTable, quantile } from './table.ts'

const server = '900000000000000100'
const scope = { kind: 'server', server } as const
const key = `server:${server}`
const week = '2026-W40'
const turns = usually(5, 3)
/** The outcomes of a large server, and a tenth of them. */
const many = usually(1_000_000, 100_000)
const few = many / 10
const bareScan = `select family, rules.value as rule, week, count(*) as checks from outcomes, json_each(fired) as rules
  group by family, rules.value, week`

/** Fills a new database as fast as it goes; what it holds is what closing checks would have left. */
export async function fillOutcomes(path: string, shape: Shape, count: number): Promise<void> {
  await (await openSqlite(path)).destroy()
  const db = new DatabaseSync(path)
  db.exec('pragma synchronous = off; pragma cache_size = -500000; begin')
  let insert: StatementSync | undefined
  for (const outcome of inventOutcomes(shape, server, week, count)) {
    const row = rowOf(outcome)
    insert ??= db.prepare(`insert into outcomes (${Object.keys(row)}) values (${Object.keys(row).map(() => '?')})`)
    insert.run(...Object.values(row))
  }
  db.exec('commit; pragma wal_checkpoint(truncate)')
  db.close()
}

/** Processor time of each turn, in ms. */
type Measured = { readonly release: readonly number[]; readonly scan: readonly number[] }

async function measure(folder: string, shape: Shape, count: number): Promise<Measured> {
  const path = join(folder, `${shape}-${count}.db`)
  await fillOutcomes(path, shape, count)
  const db = await openSqlite(path)
  const raw = new DatabaseSync(path, { readOnly: true })
  const logs = { outcomes: openOutcomeLog(db, testSeal, testCodes), releases: openReleaseLog(db) }
  const close = async (last: Week) => {
    const closing = await closeWeeks(logs, scope, weekStart(nextWeek(last)) + graceMs)
    if (!closing.ok || closing.frozen.at(-1) !== last) throw new Error(`${last} was not closed`)
  }
  // A release goes on from the one before it, with the rises of the weeks before still recent: seven are made first.
  await startAt(db, weekPlus(week, -8))
  await close(weekPlus(week, -1))
  const before = await db
    .selectFrom('releases')
    .selectAll()
    .where('scope', '=', key)
    .where('state', 'is not', null)
    .execute()
  const times: Record<keyof Measured, number[]> = { release: [], scan: [] }
  for (let turn = 0; turn <= turns; turn++) {
    await db.deleteFrom('releases').where('scope', '=', key).execute()
    await db.insertInto('releases').values(before).execute()
    const scan = await spent(async () => void raw.prepare(bareScan).all())
    const release = await spent(() => close(week))
    // The first turn warms both up.
    if (turn > 0) {
      times.scan.push(scan)
      times.release.push(release)
    }
  }
  raw.close()
  await db.destroy()
  await rm(path)
  return times
}

/** An empty release of a week to go on from, so that not all sixty need be closed. */
async function startAt(db: Kysely<Tables>, last: Week): Promise<void> {
  const state = { first: weekPlus(week, -59), families: {}, series: {}, rises: [] }
  await openReleaseLog(db).freeze(scope, last, '{}', state)
}

/** Processor time of this process, in ms. */
async function spent(work: () => Promise<void>): Promise<number> {
  const before = process.cpuUsage()
  await work()
  const { user, system } = process.cpuUsage(before)
  return (user + system) / 1000
}

export async function benchReleases(): Promise<Line[]> {
  const folder = await mkdtemp(join(tmpdir(), 'cellwary-releases-'))
  try {
    const small = await measure(folder, 'like-a-server', few)
    const large = await measure(folder, 'like-a-server', many)
    const random = await measure(folder, 'at-random', many)
    const against = ({ release, scan }: Measured) => ({
      ours: ms(quantile(release, 0.5)),
      baseline: `bare SQL aggregate ${ms(quantile(scan, 0.5))}`,
      ...compared(release, scan),
    })
    return [
      { what: 'a weekly release over many outcomes like a server’s', ...against(large), atMost: 2.5 },
      { what: 'a weekly release over many outcomes fully at random', ...against(random) },
      {
        what: 'ten times as many outcomes',
        ours: ms(quantile(large.release, 0.5)),
        baseline: ms(quantile(small.release, 0.5)),
        ...compared(large.release, small.release),
        atMost: 11,
      },
      { what: 'a weekly release over a tenth of them, like a server’s', ...against(small) },
    ]
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

if (import.meta.main) process.exitCode = printTable('Weekly releases', await benchReleases()) ? 0 : 1
