// Whether a channel can serve for what it is chosen for: its kind, who reads it, and what the bot may do there.
import {
  type Channel,
  ChannelType,
  DiscordAPIError,
  type Guild,
  type GuildBasedChannel,
  type GuildMember,
  PermissionFlagsBits,
  RESTJSONErrorCodes,
  type Role,
  Routes,
} from 'discord.js'
import { isSnowflake } from '../../custom-ids/id-parts.ts'
import { type Blind, needed, type PlaceState, type Surroundings, type Use } from '../../server/places.ts'
import type { ServerSettings } from '../../server/settings.ts'

const textual: readonly ChannelType[] = [ChannelType.GuildText, ChannelType.GuildAnnouncement]

/** What is known of a channel without asking Discord. */
function judgePlace(channel: GuildBasedChannel | undefined, me: GuildMember | null, use: Use): PlaceState {
  if (!channel) return { is: 'gone' }
  if (use === 'offers' ? channel.type !== ChannelType.GuildForum : !textual.includes(channel.type))
    return { is: use === 'offers' ? 'not-forum' : 'not-text' }
  const mine = me && channel.permissionsFor(me)
  const permissions = needed[use].filter(one => mine && !mine.has(PermissionFlagsBits[one]))
  if (permissions.length > 0) return { is: 'missing', permissions }
  // What members report, and photographs, are for moderators only.
  if (use !== 'offers' && everyoneReads(channel)) return { is: 'everyone-reads' }
  return { is: 'fine', tags: 'availableTags' in channel ? channel.availableTags : [] }
}

/** Whether everybody on the server can read a channel; false where nothing is known of it. */
export function everyoneReads(channel: Channel | undefined): boolean {
  if (!channel || channel.isDMBased()) return false
  return channel.permissionsFor(channel.guild.roles.everyone)?.has(PermissionFlagsBits.ViewChannel) ?? false
}

/**
 * The same asked of Discord itself. Where nothing speaks against posting, it is tried in the one way that leaves nothing behind: being
 * seen typing, which Discord allows only to those who may write (from memory).
 */
export async function testPlace(guild: Guild, id: string, use: Use): Promise<PlaceState> {
  if (!isSnowflake(id)) return { is: 'gone' }
  const me = guild.members.me ?? (await guild.members.fetchMe())
  // Discord tells the rights in a channel even to those who may not see it.
  const known = judgePlace(guild.channels.cache.get(id), me, use)
  if (known.is === 'missing') return known
  const found = await orCode(() => guild.channels.fetch(id, { force: true }))
  if (found === RESTJSONErrorCodes.MissingAccess) return { is: 'missing', permissions: ['ViewChannel'] }
  if (found === RESTJSONErrorCodes.UnknownChannel || found === null || typeof found === 'number') return { is: 'gone' }
  const state = judgePlace(found, me, use)
  if (state.is !== 'fine' || use === 'offers') return state
  const tried = await orCode(() => guild.client.rest.post(Routes.channelTyping(id)))
  if (tried === RESTJSONErrorCodes.UnknownChannel) return { is: 'gone' }
  return typeof tried === 'number' ? { is: 'refused' } : state
}

/** Discord's refusals that say something about a place; everything else is trouble and goes on its way. */
const telling: readonly (string | number)[] = [
  RESTJSONErrorCodes.UnknownChannel,
  RESTJSONErrorCodes.MissingAccess,
  RESTJSONErrorCodes.MissingPermissions,
]

async function orCode<T>(ask: () => Promise<T>): Promise<T | number> {
  try {
    return await ask()
  } catch (error) {
    if (error instanceof DiscordAPIError && telling.includes(error.code)) return Number(error.code)
    throw error
  }
}

/** Looks round without asking Discord. */
export function lookRound(guild: Guild | null, settings: ServerSettings): Surroundings {
  const { reportsChannel, reviewChannel, forumOffers, moderatorRoles, helperRoles, reminders } = settings
  const pinged = reminders?.role ?? undefined
  const judge = (id: string | null | undefined, use: Use) =>
    guild && id ? judgePlace(guild.channels.cache.get(id), guild.members.me, use) : undefined
  return {
    places: { reports: judge(reportsChannel, 'reports'), review: judge(reviewChannel, 'review') },
    forums: forumOffers.flatMap(({ forum }) => {
      const state = judge(forum, 'offers')
      return state ? [{ forum, state }] : []
    }),
    tags: guild ? tagsOf(guild) : {},
    blind: guild ? blindRoles(guild, settings) : [],
    unheard: guild !== null && pinged !== undefined && !mayPing(guild, pinged, reviewChannel),
    goneRoles: guild
      ? [...moderatorRoles, ...helperRoles, ...(pinged ? [pinged] : [])].filter(role => !guild.roles.cache.has(role))
      : [],
  }
}

/** Whether a role is pinged where the bot names it: one that everybody may mention, or where the bot may mention all. */
function mayPing({ roles, channels, members }: Guild, role: string, channel: string | null): boolean {
  const named = roles.cache.get(role)
  if (!named || named.mentionable) return named !== undefined
  const where = channel === null ? undefined : channels.cache.get(channel)
  return members.me !== null && where?.permissionsFor(members.me).has(PermissionFlagsBits.MentionEveryone) === true
}

/**
 * Roles that are named and see nothing: the channels that are for them, by their permissions there. /trends, which Discord offers to
 * whoever may time members out, and every other command, which it offers to whoever may use commands, unless the server says otherwise under
 * Integrations (from memory), so it may be a false alarm.
 */
function blindRoles(guild: Guild, settings: ServerSettings): Blind[] {
  const { moderatorRoles, helperRoles, reminders, reportsChannel, reviewChannel } = settings
  const hiddenFrom = (role: Role, of: Blind['of'], channels: readonly (string | null)[]): Blind[] =>
    [...new Set(channels)].flatMap(id => {
      const channel = id === null ? undefined : guild.channels.cache.get(id)
      return channel && !channel.permissionsFor(role).has(PermissionFlagsBits.ViewChannel)
        ? [{ role: role.id, of, is: 'channel' as const, channel: channel.id }]
        : []
    })
  const named = (ids: readonly string[]) => ids.flatMap(id => guild.roles.cache.get(id) ?? [])
  const may = (role: Role, right: bigint) => role.permissions.has(right) || guild.roles.everyone.permissions.has(right)
  return [
    ...named(moderatorRoles).flatMap((role): Blind[] => [
      ...hiddenFrom(role, 'moderators', [reportsChannel, reviewChannel]),
      ...(may(role, PermissionFlagsBits.ModerateMembers)
        ? []
        : [{ role: role.id, of: 'moderators', is: 'command', command: 'trends' } as const]),
    ]),
    ...named(helperRoles).flatMap((role): Blind[] => [
      ...hiddenFrom(role, 'helpers', [reviewChannel]),
      ...(may(role, PermissionFlagsBits.UseApplicationCommands)
        ? []
        : [{ role: role.id, of: 'helpers', is: 'command', command: 'check' } as const]),
    ]),
    // Discord tells nobody of a mention in a channel they do not see.
    ...named(reminders?.role ? [reminders.role] : []).flatMap(role => hiddenFrom(role, 'reminders', [reviewChannel])),
  ]
}

/** The tags of all forums, so that those of earlier settings are named as well. */
function tagsOf({ channels }: Guild): Record<string, string> {
  const named = [...channels.cache.values()].flatMap(one => ('availableTags' in one ? one.availableTags : []))
  return Object.fromEntries(named.map(({ id, name }) => [id, name]))
}
