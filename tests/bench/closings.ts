// Bench of closing a check: what it adds that the check leaves an outcome, through the same bot, in turns.
//
// A closing is the whole click: from the press to Discord's answer, through the stand-in, with a hundred thousand outcomes in the
// database. Half of the people say, after their verdict, that theirs are not counted: their clicks do everything but leave one. Where
// the machine is shared, run it at a raised priority (nice): what is compared takes turns, so the ratio is steadier than the times.
import { mkdir, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import type { SeenMessage } from '../../src/practice/seen.ts'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { unsettled } from '../../src/server/settings.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { openOptOuts } from '../../src/stores/opt-outs.ts'
import { openSettingsStore } from '../../src/stores/settings-store.ts'
import { answer, idOf, pressed, startCheck } from '../flows/hands.ts'
import { open } from './clicks.ts'
import { usually } from './effort.ts'
import { fillOutcomes } from './releases.ts'
import { compared, type Line, ms, printTable, quantile } from './table.ts'

/** Fresh processes on fresh databases, all measured together: where a process lands in memory moves its figures. */
const stores = usually(3, 1)
const each = usually(300, 60)
/** So many that the code is as warm as in a bot that has run for a day. */
const warmUp = usually(150, 20)
const stored = usually(100_000, 20_000)

const people = Array.from({ length: 2 * (each + warmUp) }, (_, i) => ({
  id: `9000000000000${String(60_000 + i)}`,
  name: `P${i}`,
  locale: 'en-GB',
  roles: [],
}))
const saidNo = people.filter((_, i) => i % 2 === 1)

async function prepare(data: string): Promise<void> {
  await mkdir(data, { recursive: true })
  const path = join(data, 'cellwary.db')
  await fillOutcomes(path, 'like-a-server', stored)
  const db = await openSqlite(path)
  await openSettingsStore(db).save({ ...unsettled(demoServer.server.id), revision: 1, outcomes: true })
  // Nobody closes weeks meanwhile.
  await db
    .insertInto('leases')
    .values({ name: 'weekly', holder: 'the bench', until: Number.MAX_SAFE_INTEGER })
    .execute()
  await db.destroy()
}

/** A check of each person, at its verdict. */
async function finish(standIn: StandIn, id: string): Promise<SeenMessage> {
  const person = standIn.as(id)
  return pressed(person, await answer(person, await startCheck(person), 'A · '), '.finish')
}

async function measure(data: string): Promise<{ counted: number[]; left: number[] }> {
  await prepare(data)
  const standIn = await openStandIn({ scenario: { ...demoServer, people }, validate: false })
  const bot = await open('drawn', standIn, data)
  const finished = []
  for (const { id } of people) finished.push(await finish(standIn, id))
  const db = await openSqlite(join(data, 'cellwary.db'))
  for (const { id } of saidNo) await openOptOuts(db).add(id)
  await db.destroy()
  const times: { counted: number[]; left: number[] } = { counted: [], left: [] }
  for (const [i, { id }] of people.entries()) {
    const message = finished[i] as SeenMessage
    const begun = performance.now()
    const reply = await standIn.as(id).click(message, idOf(message, '.close'))
    const took = performance.now() - begun
    if (reply.kind !== 'updated') throw new Error(`no update but ${reply.kind}`)
    if (i >= 2 * warmUp) times[i % 2 === 0 ? 'counted' : 'left'].push(took)
  }
  await bot.stop()
  await standIn.close()
  await holdCount(data)
  return times
}

/** That is what was measured: those who did not say no left one each, the others none. */
async function holdCount(data: string): Promise<void> {
  const db = await openSqlite(join(data, 'cellwary.db'))
  const { count } = await db
    .selectFrom('checks')
    .select(({ fn }) => fn.countAll<number>().as('count'))
    // There it waits until weeks are closed.
    .where('outcome', 'is not', null)
    .executeTakeFirstOrThrow()
  await db.destroy()
  if (count !== people.length / 2) throw new Error(`${count} outcomes were left, not ${people.length / 2}`)
}

export async function benchClosings(): Promise<Line[]> {
  const folder = await mkdtemp(join(tmpdir(), 'cellwary-closings-'))
  try {
    const counted: number[] = []
    const left: number[] = []
    for (let i = 0; i < stores; i++) {
      const found = await measure(join(folder, String(i)))
      counted.push(...found.counted)
      left.push(...found.left)
    }
    const [ours, without] = [quantile(counted, 0.5), quantile(left, 0.5)]
    return [
      {
        what: `closing a check that leaves an outcome, median of ${counted.length} in ${stores} stores`,
        ours: ms(ours),
        baseline: `one that leaves none ${ms(without)}`,
        ...compared(counted, left),
        atMost: 1.2,
      },
    ]
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

if (import.meta.main) process.exitCode = printTable('Closing checks', await benchClosings()) ? 0 : 1
