// /privacy: what is kept of whoever asks, for how long and why, and what they can do about it.
import { ApplicationCommandType } from 'discord.js'
import { replyPrivately } from '../answer.ts'
import { showPrivacy } from '../show/privacy.ts'
import { sayIn } from '../words/say.ts'
import type { Command } from './command.ts'
import { everywhere } from './where-offered.ts'

export const privacyCommand: Command = {
  name: 'privacy',
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'privacy',
    description: say('command.privacy'),
    ...everywhere,
  }),
  async run(desk, interaction) {
    const out = await desk.trends.optOuts.has(interaction.user.id)
    await replyPrivately(interaction, showPrivacy(sayIn(interaction.locale), out))
  },
}
