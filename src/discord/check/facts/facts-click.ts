// The button under a claim or a log that starts a check with what was found out.
import type { MessageComponentInteraction } from 'discord.js'
import type { Answers } from '../../../engine/answers.ts'
import { sayIn } from '../../../words/say.ts'
import type { ClickHandler } from '../../interaction/click-handler.ts'
import { refuse, replyPrivately } from '../../interaction/reply.ts'
import type { Services } from '../../services.ts'
import { beginCheck } from '../begin-check.ts'
import { showScreen } from '../show/screen.ts'
import { decodeStartWithFacts } from './facts-codec.ts'

export const factsClick: ClickHandler = (services, interaction) => {
  const known = decodeStartWithFacts(interaction.customId)
  return known && interaction.isMessageComponent() ? begin(services, interaction, known) : undefined
}

async function begin(services: Services, interaction: MessageComponentInteraction, known: Answers): Promise<void> {
  const say = sayIn(interaction.locale)
  const begun = await beginCheck(services, interaction, { family: null, cells: 1, known })
  if (begun.is === 'seen') return
  if (begun.is === 'refused') return refuse(interaction, say, begun.refusal)
  await replyPrivately(interaction, await showScreen(say, begun.program, begun.screen, services))
}
