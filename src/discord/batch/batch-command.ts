// /batch: whether cells bought together can be one lot, by what each weighs or holds.
import { ApplicationCommandOptionType, ApplicationCommandType } from 'discord.js'
import { batchQuantities, longestBatch } from '../../readings/batch/lot-spread.ts'
import type { Command } from '../interaction/command.ts'
import { everywhere } from '../interaction/where-offered.ts'

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
  load: async () => (await import('./run-batch.ts')).runBatch,
}
