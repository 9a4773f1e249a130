// /trends: the latest release of the server's counted checks, for its moderators.
import { ApplicationCommandType, PermissionFlagsBits } from 'discord.js'
import { refuse, replyPrivately } from '../answer.ts'
import { viewRelease } from '../clicks/trends-click.ts'
import { findRelease } from '../find-release.ts'
import { sayIn } from '../words/say.ts'
import type { Command } from './command.ts'
import { onServers } from './where-offered.ts'

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
  async run(desk, interaction) {
    const say = sayIn(interaction.locale)
    const found = await findRelease(desk, interaction)
    if (!found.ok) return refuse(interaction, say, found.refusal)
    await replyPrivately(interaction, await viewRelease(desk, say, found, 'overview'))
  },
}
