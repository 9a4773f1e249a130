// /claim: what a listing or a label claims, and which of it is impossible; the same in the menu of a message.
import { ApplicationCommandOptionType, ApplicationCommandType } from 'discord.js'
import { longestClaim } from '../../../readings/claims/facts.ts'
import type { Command, MessageCommand } from '../../interaction/command.ts'
import { everywhere } from '../../interaction/where-offered.ts'

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
  load: async () => (await import('./run-claim.ts')).runClaim,
}

export const readClaimsCommand: MessageCommand = {
  name: 'Read the claims',
  describe: say => ({ type: ApplicationCommandType.Message, name: say('command.read-claims'), ...everywhere }),
  load: async () => (await import('./run-claim.ts')).runReadClaims,
}
