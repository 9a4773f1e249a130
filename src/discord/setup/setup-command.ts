// /setup: how this server is set up, for those who may manage it, and the way to change it.
import { ApplicationCommandType, PermissionFlagsBits } from 'discord.js'
import { sayIn } from '../../words/say.ts'
import type { Command } from '../interaction/command.ts'
import { refuse, replyPrivately } from '../interaction/reply.ts'
import { managing, refusalOf } from '../interaction/rights.ts'
import { onServers } from '../interaction/where-offered.ts'
import { lookRound } from './places.ts'
import { showOverview } from './show/show-overview.ts'

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
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const settings = await managing(services, interaction)
    if (!settings) return refuse(interaction, say, refusalOf(interaction, 'not-manager'))
    await replyPrivately(interaction, showOverview(say, settings, lookRound(interaction.guild, settings)))
  },
}
