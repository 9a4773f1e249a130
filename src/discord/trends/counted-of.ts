// What is counted of a person in the epoch that runs: of earlier ones nobody can say any more what was theirs.
import type { Outcome } from '../../trends/outcome.ts'
import { weekOf } from '../../trends/week.ts'
import type { Services } from '../services.ts'

export async function countedOf(services: Services, user: string): Promise<readonly Outcome[]> {
  const found: Outcome[] = []
  for (const some of await pseudonymsOf(services, user)) found.push(...(await services.trends.outcomes.of(some)))
  return found
}

/** Deletes it; says how many records it was. */
export async function forgetCountedOf(services: Services, user: string): Promise<number> {
  let gone = 0
  for (const some of await pseudonymsOf(services, user)) gone += await services.trends.outcomes.forget(some)
  return gone
}

/** As many as one statement may well hold: SQLite takes 32,766 values, PostgreSQL 65,535. */
const atOnce = 1000

/** A person's pseudonyms on every server that has decided something, and in the pool, so many at a time. */
async function pseudonymsOf(services: Services, user: string): Promise<string[][]> {
  const week = weekOf(services.now())
  const servers = await services.servers.all()
  const borne = await Promise.all(
    servers.map(({ server }) => services.trends.reporterOf({ server, user, week, pooling: true })),
  )
  const all = [...new Set(borne.flatMap(one => [one.reporter, one.pooled ?? one.reporter]))]
  return Array.from({ length: Math.ceil(all.length / atOnce) }, (_, i) => all.slice(i * atOnce, (i + 1) * atOnce))
}
