// Whether everybody on a server can read a channel: from memory where this process is connected for it, asked of Discord otherwise.
import { type APIChannel, type APIRole, type Client, DiscordAPIError, PermissionFlagsBits, Routes } from 'discord.js'
import { everyoneReads } from '../setup/places.ts'
import type { Posts } from './post.ts'

/** False of a channel that is not there, or that the bot does not see: nothing can be posted in it. */
export const openToAll =
  ({ channels, rest }: Pick<Client, 'channels' | 'rest'>): Posts['isOpenToAll'] =>
  async id => {
    const known = channels.cache.get(id)
    if (known) return everyoneReads(known)
    const ask = <T>(route: `/${string}`) =>
      rest
        .get(route)
        .catch(error => (error instanceof DiscordAPIError && error.status < 500 ? undefined : Promise.reject(error)))
        .then(answer => answer as T | undefined)
    const found = await ask<APIChannel>(Routes.channel(id))
    const channel =
      found && 'thread_metadata' in found && found.parent_id
        ? await ask<APIChannel>(Routes.channel(found.parent_id))
        : found
    if (!channel || !('guild_id' in channel) || !channel.guild_id) return false
    const server = channel.guild_id
    const everybody = (await ask<APIRole[]>(Routes.guildRoles(server)))?.find(role => role.id === server)
    if (!everybody) return false
    const overwrites = 'permission_overwrites' in channel ? channel.permission_overwrites : undefined
    const own = overwrites?.find(one => one.id === server)
    const may = (BigInt(everybody.permissions) & ~BigInt(own?.deny ?? 0)) | BigInt(own?.allow ?? 0)
    return (may & (PermissionFlagsBits.ViewChannel | PermissionFlagsBits.Administrator)) !== 0n
  }
