// /claim as it runs: a text is read, what it claims is weighed, and the answer says which of it is impossible.
import type { ChatInputCommandInteraction, MessageContextMenuCommandInteraction } from 'discord.js'
import { dayOf } from '../../../engine/day-of.ts'
import { readClaims } from '../../../readings/read-claims.ts'
import { weighClaims } from '../../../readings/weigh-claims.ts'
import { sayIn } from '../../../words/say.ts'
import type { Runs, RunsOnMessage } from '../../interaction/command.ts'
import { replyPrivately } from '../../interaction/reply.ts'
import type { Services } from '../../services.ts'
import { latestOpen } from '../commands/which-check.ts'
import { showClaim } from './show-claim.ts'

export const runClaim: Runs = {
  run: (services, interaction) => weigh(services, interaction, interaction.options.getString('text', true)),
}

export const runReadClaims: RunsOnMessage = {
  run: (services, interaction) => weigh(services, interaction, interaction.targetMessage.content),
}

async function weigh(
  services: Services,
  interaction: ChatInputCommandInteraction | MessageContextMenuCommandInteraction,
  text: string,
): Promise<void> {
  const say = sayIn(interaction.locale)
  const now = services.now()
  const facts = readClaims(text, interaction.locale)
  const weighed = weighClaims(facts, dayOf(now))
  await replyPrivately(
    interaction,
    showClaim(say, { text, facts, ...weighed }, await latestOpen(services, say, interaction.user.id)),
  )
}
