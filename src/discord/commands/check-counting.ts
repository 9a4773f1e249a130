// /check counting: what is counted of a person's checks, and their say in it.
import { ApplicationCommandOptionType } from 'discord.js'
import { replyPrivately } from '../answer.ts'
import { showCounting } from '../show/counting.ts'
import { sayIn } from '../words/say.ts'
import type { Subcommand } from './command.ts'

export const checkCounting: Subcommand = {
  name: 'counting',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'counting',
    description: say('command.check.counting'),
  }),
  async run(desk, interaction) {
    const out = await desk.trends.optOuts.has(interaction.user.id)
    await replyPrivately(interaction, showCounting(sayIn(interaction.locale), out))
  },
}
