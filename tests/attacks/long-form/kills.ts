// kill -9 at random instants while twenty people press: what was acknowledged is stored, once; on either database.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { openStandIn } from '../../../src/practice/stand-in.ts'
import { openCheckStore } from '../../../src/stores/check-store.ts'
import { openPostgresAsIs } from '../../../src/stores/open-postgres.ts'
import { openAsIs } from '../../../src/stores/open-sqlite.ts'
import { startBot } from '../../faults/bot-process.ts'
import { freshPostgres } from '../../stores/fresh-postgres.ts'
import { testSeal } from '../../stores/test-seal.ts'
import { crowdScenario, openCrowd } from './crowd.ts'
import { openWrongs, type Result } from './result.ts'

/** From before the first press is read to after the last is answered, in ms. */
const latest = 400

export async function kills(count: number, on: 'SQLite' | 'PostgreSQL', seed = 1): Promise<Result> {
  const begun = performance.now()
  const { wrong, tell } = openWrongs()
  const random = xoroshiro128plus(seed * 1_000 + count)
  const data = await mkdtemp(join(tmpdir(), 'cellwary-kills-'))
  const postgres = on === 'PostgreSQL' ? await freshPostgres() : undefined
  const standIn = await openStandIn({ scenario: crowdScenario, validate: false })
  const env = {
    CELLWARY_FAIR_USE: 'off',
    CELLWARY_PICTURES: 'off',
    ...(postgres && { DATABASE_URL: postgres.url }),
  }
  let bot = await startBot(standIn, data, env)
  const db = postgres ? openPostgresAsIs(postgres.url) : openAsIs(join(data, 'cellwary.db'), false)
  const store = openCheckStore(db, testSeal)
  try {
    const crowd = await openCrowd(standIn)
    await crowd.compare(store, tell)
    for (let n = 0; n < count; n++) {
      await crowd.pressOn()
      await crowd.compare(store, tell)
      const lost = crowd.pressInVain()
      await after(uniformInt(random, 0, latest))
      await bot.kill()
      await crowd.compare(store, sentence => tell(`kill ${n}: ${sentence}`))
      bot = await startBot(standIn, data, env)
      await lost
      await crowd.compare(store, sentence => tell(`after kill ${n}: ${sentence}`))
    }
  } finally {
    await bot.kill()
    await db.destroy()
    await standIn.close()
    await postgres?.close()
    await rm(data, { recursive: true, force: true })
  }
  return {
    what: `kills at random instants, 20 people pressing, ${on}`,
    done: count,
    wrong,
    took: performance.now() - begun,
  }
}
