// /claim: what a listing or a label claims, and which of it is impossible; the same in the menu of a message.
import {
  ApplicationCommandOptionType,
  ApplicationCommandType,
  type ChatInputCommandInteraction,
  type MessageContextMenuCommandInteraction,
} from 'discord.js'
import { dayOf } from '../../engine/day-of.ts'
import { longestClaim, readClaims } from '../../readings/read-claims.ts'
import { weighClaims } from '../../readings/weigh-claims.ts'
import { replyPrivately } from '../answer.ts'
import type { Desk } from '../desk.ts'
import { showClaim } from '../show/claim.ts'
import { sayIn } from '../words/say.ts'
import type { Command, MessageCommand } from './command.ts'
import { everywhere } from './where-offered.ts'
import { latestOpen } from './which-check.ts'

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
  run: (desk, interaction) => weigh(desk, interaction, interaction.options.getString('text', true)),
}

export const readClaimsCommand: MessageCommand = {
  name: 'Read the claims',
  describe: say => ({ type: ApplicationCommandType.Message, name: say('command.read-claims'), ...everywhere }),
  run: (desk, interaction) => weigh(desk, interaction, interaction.targetMessage.content),
}

async function weigh(
  desk: Desk,
  interaction: ChatInputCommandInteraction | MessageContextMenuCommandInteraction,
  text: string,
): Promise<void> {
  const say = sayIn(interaction.locale)
  const now = desk.now()
  const facts = readClaims(text, interaction.locale)
  const findings = weighClaims(facts, dayOf(now))
  await replyPrivately(
    interaction,
    showClaim(say, { text, facts, findings }, await latestOpen(desk, interaction.user.id)),
  )
}
