// kill -9 while weeks are closed and while findings are posted: nothing lost, nothing twice, and the same bytes as without.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setImmediate as turn } from 'node:timers/promises'
import type { Kysely } from 'kysely'
import { expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { text } from '../../src/practice/seen.ts'
import { openStandIn } from '../../src/practice/stand-in.ts'
import { unsettled } from '../../src/server/settings.ts'
import { openFindingLog } from '../../src/stores/finding-log.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { openReleaseLog } from '../../src/stores/release-log.ts'
import { openSettingsStore } from '../../src/stores/settings-store.ts'
import type { Tables } from '../../src/stores/tables.ts'
import { graceMs } from '../../src/trends/closing.ts'
import { demoOutcomes } from '../../src/trends/demo.ts'
import { type Week, weekOf, weekPlus } from '../../src/trends/week.ts'
import { testCodes, testSeal } from '../stores/test-seal.ts'
import { closeDue } from '../trends/close-due.ts'
import { demoCast } from '../trends/demo-cast.ts'
import { startBot } from './bot-process.ts'

const server = demoServer.server.id
const scope = { kind: 'server', server } as const
/** Less than a year, since no bot closes more than that without somebody looking at its clock. */
const weeks = 40
/** The last week that is over. */
const last = weekPlus(weekOf(Date.now() - graceMs), -1)
const outcomes = demoOutcomes(11, { ...demoCast, server }, last).filter(one => one.week > weekPlus(last, -weeks))

async function fill(db: Kysely<Tables>): Promise<void> {
  const log = openOutcomeLog(db, testSeal, testCodes)
  for (const outcome of outcomes) await log.record(outcome)
  const settings = { ...unsettled(server), revision: 1, outcomes: true, reportsChannel: demoReportsChannel }
  await openSettingsStore(db).save(settings)
}

/** Looks again and again until it holds. */
async function until(holds: () => Promise<boolean>): Promise<void> {
  while (!(await holds())) await turn()
}

test('killed again and again, the job comes to the end it would have come to', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'cellwary-kill-'))
  const standIn = await openStandIn({ scenario: demoServer })
  const db = await openSqlite(join(folder, 'cellwary.db'))
  const undisturbed = await openSqlite(join(folder, 'undisturbed.db'))
  const releases = openReleaseLog(db)
  const posts = () => standIn.as('Tomas').sees(demoReportsChannel).map(text)
  const frozen = async () => (await releases.weeks(scope)).length
  const untold = async () => (await openFindingLog(db).due(server, '2000-W01')).length
  /** What the others wait for when a process has died, in ten minutes of its own accord. */
  const freeLease = () => db.deleteFrom('leases').execute()
  try {
    await fill(db)
    await fill(undisturbed)
    await closeDue(openOutcomeLog(undisturbed, testSeal, testCodes), openReleaseLog(undisturbed), scope, last)
    let kills = 0
    // First while weeks are being closed, each time a few further on, then as soon as something has been posted.
    for (; (await frozen()) < weeks; kills++) {
      await freeLease()
      const goal = Math.min(weeks, (await frozen()) + 1 + 3 * kills)
      const bot = await startBot(standIn, folder)
      await until(async () => (await frozen()) >= goal)
      await bot.kill()
    }
    expect(kills).toBeGreaterThan(3)
    for (let before = posts().length; ; before = posts().length, kills++) {
      await freeLease()
      const bot = await startBot(standIn, folder)
      await until(async () => posts().length > before || ((await untold()) === 0 && before > 0))
      await bot.kill()
      if ((await untold()) === 0 && posts().length === before) break
    }
    const same = openReleaseLog(undisturbed)
    const all = await releases.weeks(scope)
    expect(all).toEqual(await same.weeks(scope))
    for (const week of all as Week[]) expect(await releases.bytes(scope, week)).toBe(await same.bytes(scope, week))
    // One wave is one finding.
    expect(posts().length).toBe(1)
    expect(new Set(posts()).size).toBe(posts().length)
  } finally {
    await db.destroy()
    await undisturbed.destroy()
    await standIn.close()
    await rm(folder, { recursive: true, force: true })
  }
}, 120_000)
