// A simulated counterfeit wave: sixty weeks of invented outcomes in which one family begins to fail three checks at once, recorded week by week.
import { demoCastOf } from '../../src/bin/practice-room/demo-cast.ts'
import { demoReportsChannel, demoServer, demoWardens } from '../../src/bin/practice-room/demo-server.ts'
import { option } from '../../src/engine/answers.ts'
import { dayOf } from '../../src/engine/day-of.ts'
import { judge } from '../../src/engine/judge.ts'
import { unsettled } from '../../src/server/settings.ts'
import { findingsCounted } from '../../src/services/finished-check.ts'
import { demoOutcomes } from '../../src/trends/demo.ts'
import { type Week, weekOf, weekPlus } from '../../src/trends/week.ts'
import type { TestRoom } from './open-room.ts'

export const waveFamily = 'brindlewick-rook'
/** The three checks that every counterfeit of the wave fails. */
export const tells = ['brindlewick-code-on-the-can', 'rook-and-bittern-legs', 'rook-vent'] as const
/** So many weeks of it come only when they are asked for. */
const held = 2

export type Wave = {
  /** Records the next week of it, and gives back which. */
  next(): Promise<Week>
}

/** Sets the demo server up and records everything up to the week that is over. */
export async function beginWave({ services }: Pick<TestRoom, 'services'>): Promise<Wave> {
  const server = demoServer.server.id
  const day = dayOf(services.now())
  const cast = demoCastOf(server, services.programs, day)
  const program = services.programs.programFor(waveFamily, day)
  if (!program) throw new Error(`no ${waveFamily}`)
  const look = { 'lettering-place': 'can', 'code-place': 'can', legs: 'four', 'vent-disc': 'raised-button' }
  const judged = judge(program, Object.fromEntries(Object.entries(look).map(([id, one]) => [id, option(one)])))
  const fired = findingsCounted(judged)
  if ([...fired].sort().join() !== [...tells].sort().join()) throw new Error(`the wave fails ${fired}`)
  const planted = { ...cast.planted, course: { verdict: judged.verdict, fired, options: look } }
  const over = weekPlus(weekOf(services.now()), -1)
  const outcomes = demoOutcomes(2026, { ...cast, planted }, weekPlus(over, held))
  const record = async (holds: (week: Week) => boolean) => {
    for (const outcome of outcomes) if (holds(outcome.week)) await services.trends.outcomes.record(outcome)
  }
  await record(week => week <= over)
  await services.servers.save({
    ...unsettled(server),
    revision: 1,
    language: 'en',
    outcomes: true,
    moderatorRoles: [demoWardens],
    reportsChannel: demoReportsChannel,
  })
  let last = over
  return {
    async next() {
      last = weekPlus(last, 1)
      const now = last
      await record(week => week === now)
      return now
    },
  }
}
