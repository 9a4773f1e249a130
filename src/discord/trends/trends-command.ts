// /trends: the latest release of the server's counted checks, for its moderators.
import { ApplicationCommandType, PermissionFlagsBits } from 'discord.js'
import type { Command } from '../interaction/command.ts'
import { onServers } from '../interaction/where-offered.ts'

export const trendsCommand: Command = {
  name: 'trends',
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'trends',
    description: say('command.trends'),
    ...onServers,
    // Who it is offered to; who may see anything is asked again by the handler.
    default_member_permissions: String(PermissionFlagsBits.ModerateMembers),
  }),
  load: async () => (await import('./run-trends.ts')).runTrends,
}
