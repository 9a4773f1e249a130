// /setup: how this server is set up, for those who may manage it, and the way to change it.
import { ApplicationCommandType, PermissionFlagsBits } from 'discord.js'
import { refuse, replyPrivately } from '../answer.ts'
import { managing } from '../rights.ts'
import { lookRound } from '../setup/places.ts'
import { showOverview } from '../show/setup/show-overview.ts'
import { sayIn } from '../words/say.ts'
import type { Command } from './command.ts'
import { onServers } from './where-offered.ts'

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
  async run(desk, interaction) {
    const say = sayIn(interaction.locale)
    const settings = await managing(desk, interaction)
    if (!settings) return refuse(interaction, say, { code: 'not-manager' })
    await replyPrivately(interaction, showOverview(say, settings, lookRound(interaction.guild, settings)))
  },
}
