// /buying: how to buy safely, the server's own links, and what to do with a suspect cell.
import { ApplicationCommandType } from 'discord.js'
import { replyPrivately } from '../answer.ts'
import { placeOf } from '../buying-id.ts'
import { viewBuying } from '../clicks/buying-click.ts'
import { sayIn } from '../words/say.ts'
import type { Command } from './command.ts'
import { everywhere } from './where-offered.ts'

export const buyingCommand: Command = {
  name: 'buying',
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'buying',
    description: say('command.buying'),
    ...everywhere,
  }),
  async run(desk, interaction) {
    await replyPrivately(interaction, await viewBuying(desk, interaction, sayIn(interaction.locale), placeOf('buy')))
  },
}
