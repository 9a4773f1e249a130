// PostgreSQL is gone and comes back, again and again, while three people click: whoever is told that it is stored finds it stored.
import { setTimeout as after } from 'node:timers/promises'
import { sql } from 'kysely'
import { failingOf } from '../../../src/discord/interaction/failures.ts'
import { openCheckStore } from '../../../src/stores/check-store.ts'
import { openPostgres } from '../../../src/stores/open-postgres.ts'
import { openWay } from '../../faults/way.ts'
import { databases, postgresUrl } from '../../stores/databases.ts'
import { pausedCheck } from '../../stores/paused-check.ts'
import { testSeal } from '../../stores/test-seal.ts'
import { openWrongs, type Result } from './result.ts'

const clickers = 3
/** A save that is tried so often in vain, with the database back for a second, is one that does not come back. */
const longestAway = 10_000

const kind = databases.find(one => one.name === 'PostgreSQL')
export const postgresMissing = kind?.missing

/** The way to the server is shut and opened: to whoever is connected that is a restart, and other tests keep their database. */
export async function databaseRestarts(count: number): Promise<Result> {
  const begun = performance.now()
  const { wrong, tell } = openWrongs()
  if (!kind || kind.missing) return { what: 'database restarts (no PostgreSQL here)', done: 0, wrong, took: 0 }
  const opened = await kind.open()
  const way = await openWay()
  const url = new URL(postgresUrl)
  url.port = String(way.port)
  const { rows } = await sql<{ here: string }>`select current_schema() as here`.execute(opened.db)
  const db = await openPostgres(url.href, rows[0]?.here, () => undefined)
  const [store, beside] = [openCheckStore(db, testSeal), openCheckStore(opened.db, testSeal)]
  let over = false
  let saves = 0
  const clicking = async (who: number) => {
    const id = `c${who}`
    await beside.create(pausedCheck(id, { holder: `p${who}` }), `i-${id}`)
    let revision = 0
    let since = performance.now()
    while (!over) {
      try {
        const saved = await store.save(
          pausedCheck(id, { holder: `p${who}`, revision: revision + 1 }),
          revision,
          `i-${id}-${revision}`,
        )
        // Cut off between writing and answering, the second try finds that it was there already.
        if (saved !== 'saved' && saved !== 'seen') tell(`${id}: ${saved} at ${revision}`)
        revision += 1
        saves += 1
        since = performance.now()
        const there = (await beside.load(id))?.check.revision
        if (there !== revision) tell(`${id}: told ${revision}, stored ${there}`)
      } catch (error) {
        if (failingOf(error) !== 'trouble') tell(`${id}: ${String(error)}`)
        if (performance.now() - since > longestAway) {
          tell(`${id}: the database is back, and saves still fail`)
          since = performance.now()
        }
        await after(5)
      }
    }
  }
  try {
    const clicks = Array.from({ length: clickers }, (_, who) => clicking(who))
    for (let n = 0; n < count; n++) {
      const before = saves
      await way.shut()
      await after(n % 30)
      await way.open()
      for (let waited = 0; saves < before + clickers && waited < longestAway; waited += 5) await after(5)
      if (saves < before + clickers) tell(`restart ${n}: nothing was saved afterwards`)
    }
    over = true
    await Promise.all(clicks)
  } finally {
    over = true
    await db.destroy()
    await way.shut()
    await opened.close()
  }
  return { what: `database restarts, with ${saves} saves between`, done: count, wrong, took: performance.now() - begun }
}
