// /setup: how this server is set up, for those who may manage it, and the way to change it.
import { ApplicationCommandType, PermissionFlagsBits } from 'discord.js'
import type { Command } from '../interaction/command.ts'
import { onServers } from '../interaction/where-offered.ts'

export const setupCommand: Command = {
  name: 'setup',
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'setup',
    description: say('command.setup'),
    ...onServers,
    // Who it is offered to; who may change anything is asked again by every handler.
    default_member_permissions: String(PermissionFlagsBits.ManageGuild),
  }),
  load: async () => (await import('./run-setup.ts')).runSetup,
}
