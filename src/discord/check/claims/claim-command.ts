// /claim: what a listing or a label claims, and which of it is impossible; the same in the menu of a message.
import {
  ApplicationCommandOptionType,
  ApplicationCommandType,
  type ChatInputCommandInteraction,
  type MessageContextMenuCommandInteraction,
} from 'discord.js'
import { dayOf } from '../../../engine/day-of.ts'
import { longestClaim, readClaims } from '../../../readings/read-claims.ts'
import { weighClaims } from '../../../readings/weigh-claims.ts'
import { sayIn } from '../../../words/say.ts'
import type { Command, MessageCommand } from '../../interaction/command.ts'
import { replyPrivately } from '../../interaction/reply.ts'
import { everywhere } from '../../interaction/where-offered.ts'
import type { Services } from '../../services.ts'
import { latestOpen } from '../commands/which-check.ts'
import { showClaim } from './show-claim.ts'

export const claimCommand: Command = {
  name: 'claim',
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'claim',
    description: say('command.claim'),
    ...everywhere,
    options: [
      {
        type: ApplicationCommandOptionType.String,
        name: 'text',
        description: say('command.claim.text'),
        required: true,
        max_length: longestClaim,
      },
    ],
  }),
  run: (services, interaction) => weigh(services, interaction, interaction.options.getString('text', true)),
}

export const readClaimsCommand: MessageCommand = {
  name: 'Read the claims',
  describe: say => ({ type: ApplicationCommandType.Message, name: say('command.read-claims'), ...everywhere }),
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
