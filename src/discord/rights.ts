// What the person behind an interaction may do where it came from; asked in every handler that needs it.
import { type BaseInteraction, PermissionFlagsBits } from 'discord.js'
import { isModerator } from '../server/rights.ts'
import type { ServerSettings } from '../server/settings.ts'
import type { Desk } from './desk.ts'

/** The settings of the server if the person may moderate there; undefined for everybody else and outside servers. */
export async function moderating(desk: Desk, interaction: BaseInteraction): Promise<ServerSettings | undefined> {
  const { guildId, member, memberPermissions } = interaction
  if (guildId === null || member === null || memberPermissions === null) return undefined
  const settings = await desk.servers.load(guildId)
  const roles = Array.isArray(member.roles) ? member.roles : [...member.roles.cache.keys()]
  return isModerator({ permissions: memberPermissions.bitfield, roles }, settings) ? settings : undefined
}

/** Whether the person may write in the channel the interaction came from; false outside servers, and where the bot is not a member. */
export function mayWriteHere(interaction: BaseInteraction): boolean {
  if (!interaction.inCachedGuild()) return false
  const { SendMessages, SendMessagesInThreads } = PermissionFlagsBits
  return interaction.memberPermissions.has(interaction.channel?.isThread() ? SendMessagesInThreads : SendMessages)
}
