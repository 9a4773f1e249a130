// What the pool may tell of a family: only what so many servers have brought together that none can be worked out by the others.
import type { FamilyId } from '../../engine/answers.ts'
import { type ByWeek, minimumReporters, reportersIn } from '../fives.ts'
import type { Week } from '../week.ts'

/** Of two servers each could take its own counts off the pool's and see the other's. */
export const minimumServers = 3

/** Distinct reporters of a family on a server in a week, among those that the pool counts. */
export type PoolContribution = {
  readonly week: Week
  readonly family: FamilyId
  readonly server: string
  readonly reporters: number
}

/** Whether enough servers have brought enough of a family after a week (null: from the start) up to a week. */
export type EnoughServers = (family: FamilyId, after: Week | null, upTo: Week) => boolean

/** A server counts once as many of its people are in it as any shown number stands for. */
export function enoughServers(contributions: readonly PoolContribution[]): EnoughServers {
  const servers = new Map<FamilyId, Map<string, Map<Week, number>>>()
  for (const { week, family, server, reporters } of contributions) {
    const ofFamily = servers.get(family) ?? new Map<string, Map<Week, number>>()
    servers.set(family, ofFamily)
    const weeks = ofFamily.get(server) ?? new Map<Week, number>()
    ofFamily.set(server, weeks)
    weeks.set(week, (weeks.get(week) ?? 0) + reporters)
  }
  return (family, after, upTo) => {
    const contributes = (byWeek: ByWeek) => reportersIn(byWeek, after, upTo).distinct >= minimumReporters
    return [...(servers.get(family)?.values() ?? [])].filter(contributes).length >= minimumServers
  }
}

/** A server's own release tells of its own people alone. */
export const anyServers: EnoughServers = () => true
