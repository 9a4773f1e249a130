// Gives a new practice room its past: a server that is set up, and sixty weeks of invented outcomes, once.
import type { Desk } from '../discord/desk.ts'
import { unsettled } from '../server/settings.ts'
import { demoOutcomes } from '../trends/demo.ts'
import { weekOf, weekPlus } from '../trends/week.ts'
import { demoCastOf } from './demo-cast.ts'
import { demoReportsChannel, demoServer, demoWardens } from './demo-server.ts'

/** The same room for everybody. */
const seed = 2026

/** Does nothing where the server has been set up before. What it leaves is closed by the weekly job. */
export async function seedPractice(desk: Desk): Promise<void> {
  const server = demoServer.server.id
  const { revision } = await desk.servers.load(server)
  if (revision > 0) return
  const now = desk.now()
  const program = desk.programs.programFor('brindlewick-rook', new Date(now).toISOString().slice(0, 10))
  if (!program) return
  const last = weekPlus(weekOf(now), -1)
  for (const outcome of demoOutcomes(seed, demoCastOf(server, program), last))
    await desk.trends.outcomes.record(outcome)
  await desk.servers.save({
    ...unsettled(server),
    revision: 1,
    outcomes: true,
    moderatorRoles: [demoWardens],
    reportsChannel: demoReportsChannel,
    reviewChannel: demoReportsChannel,
  })
}
