// The button under a claim or a log that starts a check with what was found out.
import type { MessageComponentInteraction } from 'discord.js'
import type { Answers } from '../../../engine/answers.ts'
import { sayIn } from '../../../words/say.ts'
import { onClick } from '../../interaction/click-handler.ts'
import { refuse, replyPrivately } from '../../interaction/reply.ts'
import type { Services } from '../../services.ts'
import { beginCheck } from '../begin-check.ts'
import { showScreen } from '../show/screen.ts'
import { factsIds } from './facts-codec.ts'

export const factsClick = onClick(factsIds, (services, interaction, { facts }) =>
  interaction.isMessageComponent() ? begin(services, interaction, facts as Answers) : undefined,
)

async function begin(services: Services, interaction: MessageComponentInteraction, known: Answers): Promise<void> {
  const say = sayIn(interaction.locale)
  const begun = await beginCheck(services, interaction, { family: null, cells: 1, known })
  if (begun.is === 'seen') return
  if (begun.is === 'refused') return refuse(interaction, say, begun.refusal)
  await replyPrivately(interaction, await showScreen(say, begun.program, begun.screen, services))
}
