// The button under a claim or a log that starts a check with what was found out.
import type { MessageComponentInteraction } from 'discord.js'
import type { Answers } from '../../engine/answers.ts'
import { refuse, replyPrivately } from '../answer.ts'
import { beginCheck } from '../begin-check.ts'
import type { Desk } from '../desk.ts'
import { decodeStartWithFacts } from '../facts/facts-codec.ts'
import { showScreen } from '../show/screen.ts'
import { sayIn } from '../words/say.ts'
import type { ClickHandler } from './manifest.ts'

export const factsClick: ClickHandler = (desk, interaction) => {
  const known = decodeStartWithFacts(interaction.customId)
  return known && interaction.isMessageComponent() ? begin(desk, interaction, known) : undefined
}

async function begin(desk: Desk, interaction: MessageComponentInteraction, known: Answers): Promise<void> {
  const say = sayIn(interaction.locale)
  const begun = await beginCheck(desk, interaction, { family: null, mode: 'full', cells: 1, known })
  if (begun.is === 'seen') return
  if (begun.is === 'refused') return refuse(interaction, say, begun.refusal)
  await replyPrivately(interaction, await showScreen(say, begun.program, begun.screen, desk.pictures))
}
