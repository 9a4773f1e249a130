// /privacy: what is kept of whoever asks, for how long and why, and what they can do about it.
import { ApplicationCommandType } from 'discord.js'
import type { Command } from '../interaction/command.ts'
import { everywhere } from '../interaction/where-offered.ts'

export const privacyCommand: Command = {
  name: 'privacy',
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'privacy',
    description: say('command.privacy'),
    ...everywhere,
  }),
  load: async () => (await import('./run-privacy.ts')).runPrivacy,
}
