// /check waiting: for moderators and helpers, who of their server is stuck or waits for somebody, the longest waiting first.
import { ApplicationCommandOptionType } from 'discord.js'
import { sayIn } from '../../../words/say.ts'
import { noteWaiting } from '../../families/waiting-families.ts'
import type { Subcommand } from '../../interaction/command.ts'
import { refuse, replyPrivately } from '../../interaction/reply.ts'
import { refusalOf } from '../../interaction/rights.ts'
import { viewWaiting } from '../waiting/view-waiting.ts'

export const checkWaiting: Subcommand = {
  name: 'waiting',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'waiting',
    description: say('command.check.waiting'),
  }),
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const shown = await viewWaiting(services, interaction, say, 'all', 0)
    if (!shown) return refuse(interaction, say, refusalOf(interaction, 'not-moderator'))
    const above = await noteWaiting(services, interaction, say)
    await replyPrivately(interaction, { ...shown, components: [...above, ...shown.components] })
  },
}
