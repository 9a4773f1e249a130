// PostgreSQL itself ends as in a crash and starts again under a running bot, while twenty people press: nothing acknowledged is lost.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { openStandIn } from '../../../src/practice/stand-in.ts'
import { openCheckStore } from '../../../src/stores/check-store.ts'
import { openPostgresAsIs } from '../../../src/stores/open-postgres.ts'
import { startBot } from '../../faults/bot-process.ts'
import { openOwnPostgres, ownPostgres } from '../../stores/own-postgres.ts'
import { testSeal } from '../../stores/test-seal.ts'
import { crowdScenario, openCrowd } from './crowd.ts'
import { openWrongs, type Result } from './result.ts'

/** From before the first press is read to after the last is answered, in ms. */
const latest = 400

export const ownPostgresMissing = ownPostgres.missing

/** The bot is one and the same process all along. */
export async function serverRestarts(count: number, seed = 1): Promise<Result> {
  const begun = performance.now()
  const { wrong, tell } = openWrongs()
  const random = xoroshiro128plus(seed * 1_000 + count)
  const data = await mkdtemp(join(tmpdir(), 'cellwary-restarts-'))
  const server = await openOwnPostgres()
  const standIn = await openStandIn({ scenario: crowdScenario, validate: false })
  const env = { CELLWARY_FAIR_USE: 'off', CELLWARY_PICTURES: 'off', DATABASE_URL: server.url }
  const bot = await startBot(standIn, data, env)
  try {
    const crowd = await openCrowd(standIn)
    for (let n = 0; n < count; n++) {
      await crowd.pressOn()
      const answered = crowd.pressInVain()
      await after(uniformInt(random, 0, latest))
      await server.restart()
      await answered
      // Whoever got no answer presses again, and the bot has its database back.
      await crowd.pressOn()
      const db = openPostgresAsIs(server.url)
      await crowd.compare(openCheckStore(db, testSeal), sentence => tell(`restart ${n}: ${sentence}`))
      await db.destroy()
    }
  } finally {
    await bot.kill()
    await standIn.close()
    await server.close()
    await rm(data, { recursive: true, force: true })
  }
  return { what: 'crashes of PostgreSQL, 20 people pressing', done: count, wrong, took: performance.now() - begun }
}
