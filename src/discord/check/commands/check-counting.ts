// /check counting: what is counted of a person's checks, and their say in it.
import { ApplicationCommandOptionType } from 'discord.js'
import { sayIn } from '../../../words/say.ts'
import type { Runs, Subcommand } from '../../interaction/command.ts'
import { replyPrivately } from '../../interaction/reply.ts'
import { moderating } from '../../interaction/rights.ts'
import { showCounting } from '../../trends/show/counting.ts'

const runs: Runs = {
  async run(services, interaction) {
    const out = await services.trends.optOuts.has(interaction.user.id)
    const moderates = (await moderating(services, interaction)) !== undefined
    await replyPrivately(interaction, showCounting(sayIn(interaction.locale), out, moderates))
  },
}

export const checkCounting: Subcommand = {
  name: 'counting',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'counting',
    description: say('command.check.counting'),
  }),
  load: async () => runs,
}
