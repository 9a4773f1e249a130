// /buying: how to buy safely, the server's own links, and what to do with a suspect cell.
import { ApplicationCommandType } from 'discord.js'
import type { Command } from '../interaction/command.ts'
import { everywhere } from '../interaction/where-offered.ts'

export const buyingCommand: Command = {
  name: 'buying',
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'buying',
    description: say('command.buying'),
    ...everywhere,
  }),
  load: async () => (await import('./run-buying.ts')).runBuying,
}
