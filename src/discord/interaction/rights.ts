// What the person behind an interaction may do where it came from; asked in every handler that needs it.
import { type BaseInteraction, PermissionFlagsBits } from 'discord.js'
import { isHelper, isModerator, mayManage } from '../../server/rights.ts'
import type { ServerSettings } from '../../server/settings.ts'
import { invitationOf } from '../gateway/invitation.ts'
import type { Services } from '../services.ts'
import type { Refusal } from './refusal.ts'

/**
 * The server an interaction came from, if the bot is a member there; null in direct messages, on servers where somebody has only
 * brought it along, and on those that have taken its commands without the bot: these have decided nothing about it.
 */
export function serverOf({ guildId, authorizingIntegrationOwners, client }: BaseInteraction): string | null {
  if (guildId === null || authorizingIntegrationOwners.guildId !== guildId) return null
  // Discord names the server as the owner for its commands alone, too.
  return client.guilds.cache.has(guildId) ? guildId : null
}

/** Why somebody may not do what takes a right on the server: where the bot is no member nobody may, and the link is told. */
export function refusalOf(interaction: BaseInteraction, code: 'not-moderator' | 'not-manager'): Refusal {
  if (interaction.guildId === null || serverOf(interaction) !== null) return { code }
  return { code: 'bot-not-here', link: invitationOf(interaction.applicationId) }
}

/** The settings of the server if the person may moderate there; undefined for everybody else and outside servers. */
export async function moderating(
  services: Services,
  interaction: BaseInteraction,
): Promise<ServerSettings | undefined> {
  const server = serverOf(interaction)
  if (server === null || interaction.member === null) return undefined
  const settings = await services.servers.load(server)
  return moderatesUnder(settings, interaction) ? settings : undefined
}

/** Whether the person may moderate on the server of these settings, if the interaction came from there. */
export function moderatesUnder(settings: ServerSettings, interaction: BaseInteraction): boolean {
  const { member, memberPermissions } = interaction
  if (serverOf(interaction) !== settings.server || member === null || memberPermissions === null) return false
  return isModerator({ permissions: memberPermissions.bitfield, roles: rolesOf(member) }, settings)
}

/** Whether the person may answer for people who are stuck there. */
export function helpsUnder(settings: ServerSettings, interaction: BaseInteraction): boolean {
  const { member, memberPermissions } = interaction
  if (serverOf(interaction) !== settings.server || member === null || memberPermissions === null) return false
  return isHelper({ permissions: memberPermissions.bitfield, roles: rolesOf(member) }, settings)
}

/** The ids of somebody's roles, whether or not discord.js knows the server. */
export const rolesOf = ({ roles }: NonNullable<BaseInteraction['member']>): readonly string[] =>
  Array.isArray(roles) ? roles : [...roles.cache.keys()]

/** Whether the person may write in the channel the interaction came from; false outside servers, and where the bot is not a member. */
export function mayWriteHere(interaction: BaseInteraction): boolean {
  if (!interaction.inCachedGuild()) return false
  const { SendMessages, SendMessagesInThreads } = PermissionFlagsBits
  return interaction.memberPermissions.has(interaction.channel?.isThread() ? SendMessagesInThreads : SendMessages)
}

/** The settings of the server if the person may change them. */
export async function managing(services: Services, interaction: BaseInteraction): Promise<ServerSettings | undefined> {
  const server = serverOf(interaction)
  if (server === null || interaction.memberPermissions === null) return undefined
  return mayManage({ permissions: interaction.memberPermissions.bitfield })
    ? await services.servers.load(server)
    : undefined
}
