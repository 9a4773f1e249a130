// A person's decisions about their own checks: counted or not, and what was counted deleted.

import type { CountingChoice } from '../../custom-ids/trends-id.ts'
import { sayIn } from '../../words/say.ts'
import { type Clicked, updateOrReply } from '../interaction/reply.ts'
import { moderating } from '../interaction/rights.ts'
import type { Services } from '../services.ts'
import { forgetCountedOf } from './counted-of.ts'
import { showCounting } from './show/counting.ts'

export async function countingClick(services: Services, interaction: Clicked, choice: CountingChoice): Promise<void> {
  const say = sayIn(interaction.locale)
  const { optOuts } = services.trends
  const { id } = interaction.user
  if (choice === 'out') await optOuts.add(id)
  if (choice === 'in') await optOuts.remove(id)
  const moderates = (await moderating(services, interaction)) !== undefined
  const note =
    choice === 'forget' ? say('counting.forgotten', { count: await forgetCountedOf(services, id) }) : undefined
  await updateOrReply(interaction, showCounting(say, await optOuts.has(id), moderates, note))
}
