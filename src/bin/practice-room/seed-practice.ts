// Gives a new practice room its past: a server that is set up, and sixty weeks of invented outcomes, once.
import { setImmediate as turn } from 'node:timers/promises'
import type { Services } from '../../discord/services.ts'
import { dayOf } from '../../engine/day-of.ts'
import { unsettled } from '../../server/settings.ts'
import { demoOutcomes } from '../../trends/demo.ts'
import { weekOf, weekPlus } from '../../trends/week.ts'
import { demoCastOf } from './demo-cast.ts'
import { seedFamilies } from './demo-families.ts'
import { demoLinks } from './demo-links.ts'
import { demoReportsChannel, demoServer, demoWardens } from './demo-server.ts'

/** The same room for everybody. */
const seed = 2026

/** Does nothing where the server has been set up before. What it leaves is closed by the weekly job. */
export async function seedPractice(services: Services): Promise<void> {
  const server = demoServer.server.id
  const { revision } = await services.servers.load(server)
  if (revision > 0) return
  const now = services.now()
  const cast = demoCastOf(server, services.programs, dayOf(now))
  for (const [i, outcome] of demoOutcomes(seed, cast, weekPlus(weekOf(now), -1)).entries()) {
    await services.trends.outcomes.record(outcome)
    // Whoever clicks meanwhile is answered.
    if (i % 50 === 0) await turn()
  }
  await seedFamilies(services, server)
  await services.servers.save({
    ...unsettled(server),
    revision: 1,
    outcomes: true,
    moderatorRoles: [demoWardens],
    reportsChannel: demoReportsChannel,
    reviewChannel: demoReportsChannel,
    links: demoLinks(now),
  })
}
