// The menu and the pages of what waits.
import { type QueueFilter, queueFilters } from '../../../check/waiting.ts'
import { type WaitingId, waitingIds } from '../../../custom-ids/waiting-id.ts'
import { sayIn } from '../../../words/say.ts'
import { onClick } from '../../interaction/click-handler.ts'
import { type Clicked, refuse, updateOrReply } from '../../interaction/reply.ts'
import { refusalOf } from '../../interaction/rights.ts'
import type { Services } from '../../services.ts'
import { viewWaiting } from './view-waiting.ts'

export const waitingClick = onClick(waitingIds, click)

async function click(services: Services, interaction: Clicked, { filter, page }: WaitingId): Promise<void> {
  const say = sayIn(interaction.locale)
  const shown = await viewWaiting(
    services,
    interaction,
    say,
    filter === 'chosen' ? chosenIn(interaction) : filter,
    page,
  )
  if (!shown) return refuse(interaction, say, refusalOf(interaction, 'not-moderator'))
  await updateOrReply(interaction, shown)
}

function chosenIn(interaction: Clicked): QueueFilter {
  const [chosen] = interaction.isStringSelectMenu() ? interaction.values : []
  return queueFilters.find(one => one === chosen) ?? 'all'
}
