// /buying as it runs.
import { placeOf } from '../../custom-ids/buying-id.ts'
import { sayIn } from '../../words/say.ts'
import type { Runs } from '../interaction/command.ts'
import { replyPrivately } from '../interaction/reply.ts'
import { viewBuying } from './buying-click.ts'

export const runBuying: Runs = {
  async run(services, interaction) {
    await replyPrivately(
      interaction,
      await viewBuying(services, interaction, sayIn(interaction.locale), placeOf('buy')),
    )
  },
}
