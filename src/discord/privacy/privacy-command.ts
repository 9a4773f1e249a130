// /privacy: what is kept of whoever asks, for how long and why, and what they can do about it.
import { ApplicationCommandType } from 'discord.js'
import { sayIn } from '../../words/say.ts'
import type { Command } from '../interaction/command.ts'
import { replyPrivately } from '../interaction/reply.ts'
import { everywhere } from '../interaction/where-offered.ts'
import { countingOf } from './counting-of.ts'
import { showPrivacy } from './show-privacy.ts'

export const privacyCommand: Command = {
  name: 'privacy',
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'privacy',
    description: say('command.privacy'),
    ...everywhere,
  }),
  async run(services, interaction) {
    await replyPrivately(interaction, showPrivacy(sayIn(interaction.locale), await countingOf(services, interaction)))
  },
}
