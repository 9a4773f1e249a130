// /setup as it runs: for those who may manage the server.
import { sayIn } from '../../words/say.ts'
import type { Runs } from '../interaction/command.ts'
import { refuse, replyPrivately } from '../interaction/reply.ts'
import { managing, refusalOf } from '../interaction/rights.ts'
import { lookRound } from './places.ts'
import { showOverview } from './show/show-overview.ts'

export const runSetup: Runs = {
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const settings = await managing(services, interaction)
    if (!settings) return refuse(interaction, say, refusalOf(interaction, 'not-manager'))
    await replyPrivately(interaction, showOverview(say, settings, lookRound(interaction.guild, settings)))
  },
}
