// /buying: how to buy safely, the server's own links, and what to do with a suspect cell.
import { ApplicationCommandType, ApplicationIntegrationType, InteractionContextType } from 'discord.js'
import { replyPrivately } from '../answer.ts'
import { placeOf } from '../buying-id.ts'
import { viewBuying } from '../clicks/buying-click.ts'
import { sayIn } from '../words/say.ts'
import type { Command } from './command.ts'

export const buyingCommand: Command = {
  name: 'buying',
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'buying',
    description: say('command.buying'),
    contexts: [InteractionContextType.Guild, InteractionContextType.BotDM, InteractionContextType.PrivateChannel],
    integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
  }),
  async run(desk, interaction) {
    await replyPrivately(interaction, await viewBuying(desk, interaction, sayIn(interaction.locale), placeOf('buy')))
  },
}
