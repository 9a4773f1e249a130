// /check waiting as it runs: for moderators and helpers.
import { sayIn } from '../../../words/say.ts'
import { noteWaiting } from '../../families/waiting-families.ts'
import type { Runs } from '../../interaction/command.ts'
import { refuse, replyPrivately } from '../../interaction/reply.ts'
import { refusalOf } from '../../interaction/rights.ts'
import { viewWaiting } from './view-waiting.ts'

export const runWaiting: Runs = {
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const shown = await viewWaiting(services, interaction, say, 'all', 0)
    if (!shown) return refuse(interaction, say, refusalOf(interaction, 'not-moderator'))
    const above = await noteWaiting(services, interaction, say)
    await replyPrivately(interaction, { ...shown, components: [...above, ...shown.components] })
  },
}
