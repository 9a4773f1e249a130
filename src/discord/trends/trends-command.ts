// /trends: the latest release of the server's counted checks, for its moderators.
import { ApplicationCommandType, PermissionFlagsBits } from 'discord.js'
import { sayIn } from '../../words/say.ts'
import { noteWaiting } from '../families/waiting-families.ts'
import type { Command } from '../interaction/command.ts'
import { refusalParts, replyPrivately } from '../interaction/reply.ts'
import { onServers } from '../interaction/where-offered.ts'
import { message } from '../message/parts.ts'
import { findRelease } from './find-release.ts'
import { viewRelease } from './release-click.ts'

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
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const found = await findRelease(services, interaction)
    const above = await noteWaiting(services, interaction, say)
    const shown = found.ok
      ? await viewRelease(services, say, found, 'overview', above)
      : message([...above, ...refusalParts(say, found.refusal)])
    await replyPrivately(interaction, shown)
  },
}
