// /buying: how to buy safely, the server's own links, and what to do with a suspect cell.
import { ApplicationCommandType } from 'discord.js'
import { placeOf } from '../../custom-ids/buying-id.ts'
import { sayIn } from '../../words/say.ts'
import type { Command } from '../interaction/command.ts'
import { replyPrivately } from '../interaction/reply.ts'
import { everywhere } from '../interaction/where-offered.ts'
import { viewBuying } from './buying-click.ts'

export const buyingCommand: Command = {
  name: 'buying',
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'buying',
    description: say('command.buying'),
    ...everywhere,
  }),
  async run(services, interaction) {
    await replyPrivately(
      interaction,
      await viewBuying(services, interaction, sayIn(interaction.locale), placeOf('buy')),
    )
  },
}
