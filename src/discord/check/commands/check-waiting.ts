// /check waiting: for moderators and helpers, who of their server is stuck or waits for somebody, the longest waiting first.
import { ApplicationCommandOptionType } from 'discord.js'
import type { Subcommand } from '../../interaction/command.ts'

export const checkWaiting: Subcommand = {
  name: 'waiting',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'waiting',
    description: say('command.check.waiting'),
  }),
  load: async () => (await import('../waiting/run-waiting.ts')).runWaiting,
}
