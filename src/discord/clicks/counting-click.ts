// A person's decisions about their own checks: counted or not, and what was counted deleted.
import { type Clicked, turnPrivately } from '../answer.ts'
import { forgetCountedOf } from '../counted-of.ts'
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
  const note = choice === 'forget' ? say('counting.forgotten', { count: await forgetCountedOf(desk, id) }) : undefined
  await turnPrivately(interaction, showCounting(say, await optOuts.has(id), note))
}
