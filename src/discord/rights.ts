// Whether the person behind an interaction is a moderator of the server it came from; asked in every handler that needs it.
import type { BaseInteraction } from 'discord.js'
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
