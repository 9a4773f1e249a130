// /privacy as it runs.
import { sayIn } from '../../words/say.ts'
import type { Runs } from '../interaction/command.ts'
import { replyPrivately } from '../interaction/reply.ts'
import { countingOf } from './counting-of.ts'
import { showPrivacy } from './show-privacy.ts'

export const runPrivacy: Runs = {
  async run(services, interaction) {
    await replyPrivately(interaction, showPrivacy(sayIn(interaction.locale), await countingOf(services, interaction)))
  },
}
