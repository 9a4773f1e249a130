// What is counted of a person in the epoch that runs: of earlier ones nobody can say any more what was theirs.
import type { Outcome } from '../trends/outcome.ts'
import { weekOf } from '../trends/week.ts'
import type { Desk } from './desk.ts'

export const countedOf = async (desk: Desk, user: string): Promise<readonly Outcome[]> =>
  desk.trends.outcomes.of(await pseudonymsOf(desk, user))

/** Deletes it; says how many records it was. */
export const forgetCountedOf = async (desk: Desk, user: string): Promise<number> =>
  desk.trends.outcomes.forget(await pseudonymsOf(desk, user))

/** A person's pseudonyms on every server that has decided something, and in the pool. */
async function pseudonymsOf(desk: Desk, user: string): Promise<string[]> {
  const week = weekOf(desk.now())
  const servers = await desk.servers.all()
  const borne = await Promise.all(
    servers.map(({ server }) => desk.trends.reporterOf({ server, user, week, pooling: true })),
  )
  return [...new Set(borne.flatMap(one => [one.reporter, one.pooled ?? one.reporter]))]
}
