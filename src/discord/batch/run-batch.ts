// /batch as it runs: what was typed is read and weighed, and the answer says what came of it.
import type { BatchQuantity } from '../../readings/batch/lot-spread.ts'
import { readBatch } from '../../readings/batch/read-batch.ts'
import { weighBatch } from '../../readings/batch/weigh-batch.ts'
import { sayIn } from '../../words/say.ts'
import type { Runs } from '../interaction/command.ts'
import { replyPrivately } from '../interaction/reply.ts'
import { showBatch, showUnreadBatch } from './show-batch.ts'

export const runBatch: Runs = {
  async run(_services, interaction) {
    const say = sayIn(interaction.locale)
    const typed = interaction.options.getString('figures', true)
    const quantity = (interaction.options.getString('quantity') ?? 'mass') as BatchQuantity
    const read = readBatch(typed, quantity, interaction.locale)
    const finding = read.ok ? weighBatch({ quantity, ...read }) : null
    await replyPrivately(
      interaction,
      read.ok && finding ? showBatch(say, finding, read.values) : showUnreadBatch(say, typed, read),
    )
  },
}
