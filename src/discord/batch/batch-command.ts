// /batch: whether cells bought together can be one lot, by what each weighs or holds.
import { ApplicationCommandOptionType, ApplicationCommandType } from 'discord.js'
import { type BatchQuantity, batchQuantities } from '../../readings/batch/lot-spread.ts'
import { longestBatch, readBatch } from '../../readings/batch/read-batch.ts'
import { weighBatch } from '../../readings/batch/weigh-batch.ts'
import { sayIn } from '../../words/say.ts'
import type { Command } from '../interaction/command.ts'
import { replyPrivately } from '../interaction/reply.ts'
import { everywhere } from '../interaction/where-offered.ts'
import { showBatch, showUnreadBatch } from './show-batch.ts'

export const batchCommand: Command = {
  name: 'batch',
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'batch',
    description: say('command.batch'),
    ...everywhere,
    options: [
      {
        type: ApplicationCommandOptionType.String,
        name: 'figures',
        description: say('command.batch.figures'),
        required: true,
        max_length: longestBatch,
      },
      {
        type: ApplicationCommandOptionType.String,
        name: 'quantity',
        description: say('command.batch.quantity'),
        choices: batchQuantities.map(quantity => ({ name: say(`batch.of.${quantity}`), value: quantity })),
      },
    ],
  }),
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
