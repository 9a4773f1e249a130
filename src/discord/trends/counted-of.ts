// What is counted of a person in the epoch that runs: of earlier ones nobody can say any more what was theirs.
import { type Epoch, epochOf } from '../../trends/epoch.ts'
import type { Reporter } from '../../trends/make-outcome.ts'
import type { Outcome } from '../../trends/outcome.ts'
import { weekOf } from '../../trends/week.ts'
import type { Services } from '../services.ts'

type Counts = Pick<Services, 'now' | 'servers' | 'trends'>

export async function countedOf(services: Counts, user: string): Promise<readonly Outcome[]> {
  const { epoch, everywhere } = await inThisEpoch(services, user)
  return services.trends.outcomes.of(await namesOf(services, epoch, everywhere))
}

/** Deletes it; says how many records it was. */
export async function forgetCountedOf(services: Counts, user: string): Promise<number> {
  const { epoch, everywhere } = await inThisEpoch(services, user)
  let gone = 0
  const known = new Set<string>()
  // What waited may be counted meanwhile, of a family that was not there before: then there are more codes to look under.
  for (;;) {
    const more = (await namesOf(services, epoch, everywhere)).filter(one => !known.has(one))
    if (more.length === 0) return gone
    for (const one of more) known.add(one)
    gone += await services.trends.outcomes.forget(more)
  }
}

/** A person's pseudonyms on every server that has decided something, and in the pool. */
async function inThisEpoch(
  services: Counts,
  user: string,
): Promise<{ readonly epoch: Epoch; readonly everywhere: readonly Reporter[] }> {
  const week = weekOf(services.now())
  const servers = await services.servers.all()
  const everywhere = await Promise.all(
    servers.map(({ server }) => services.trends.reporterOf({ server, user, week, pooling: true })),
  )
  return { epoch: epochOf(week), everywhere }
}

/** Under what theirs wait, and under which codes they are counted. */
async function namesOf(services: Counts, epoch: Epoch, everywhere: readonly Reporter[]): Promise<string[]> {
  const pseudonyms = everywhere.flatMap(one => [one.reporter, one.pooled ?? one.reporter])
  return [...new Set([...pseudonyms, ...(await services.trends.outcomes.codesOf(epoch, everywhere))])]
}
