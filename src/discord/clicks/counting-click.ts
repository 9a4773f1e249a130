// A person's decisions about their own checks: counted or not, and what was counted deleted.

import { weekOf } from '../../trends/week.ts'
import { type Clicked, redraw } from '../answer.ts'
import type { Desk } from '../desk.ts'
import { showCounting } from '../show/counting.ts'
import { type CountingChoice, decodeTrends } from '../trends-id.ts'
import { sayIn } from '../words/say.ts'
import type { ClickHandler } from './manifest.ts'

export const countingClick: ClickHandler = (desk, interaction) => {
  const act = decodeTrends(interaction.customId)
  return act?.is === 'counting' ? decide(desk, interaction, act.choice) : undefined
}

async function decide(desk: Desk, interaction: Clicked, choice: CountingChoice): Promise<void> {
  const say = sayIn(interaction.locale)
  const { optOuts } = desk.trends
  const { id } = interaction.user
  if (choice === 'out') await optOuts.add(id)
  if (choice === 'in') await optOuts.remove(id)
  const note = choice === 'forget' ? say('counting.forgotten', { count: await forget(desk, id) }) : undefined
  await redraw(interaction, showCounting(say, await optOuts.has(id), note))
}

/** Deletes what a person has left on any server in this epoch; of earlier ones nobody can say any more what was theirs. */
async function forget(desk: Desk, user: string): Promise<number> {
  const week = weekOf(desk.now())
  const servers = await desk.servers.all()
  const borne = await Promise.all(
    servers.map(({ server }) => desk.trends.reporterOf({ server, user, week, pooling: true })),
  )
  return desk.trends.outcomes.forget([...new Set(borne.flatMap(one => [one.reporter, one.pooled ?? one.reporter]))])
}
