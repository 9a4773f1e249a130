// Writes users, members, roles, channels and the server the way Discord's API writes them.
import type { ScenarioRole } from '../scenario.ts'
import { botDefault, everyoneDefault, rights } from './permissions.ts'
import type { Json } from './raw.ts'
import { botMay, botRoles, personMay } from './rights.ts'
import { botIsIn, type Channel, channelKind, homeOf, isThread, type Server, type World } from './world.ts'

const joinedAt = '2024-01-01T00:00:00.000000+00:00'

/** A user object; the application's id gives the bot's. */
export function userJson(world: World, id: string): Json | null {
  const { application } = world.scenario
  const person = world.people.get(id)
  const bot = id === application.id
  if (person === undefined && !bot) return null
  const name = bot ? application.name : (person?.name ?? '')
  return {
    id,
    username: name.toLowerCase().replace(/[^a-z0-9_.]+/g, '_'),
    discriminator: bot ? '0001' : '0',
    global_name: bot ? null : name,
    avatar: null,
    banner: null,
    accent_color: null,
    bot,
    system: false,
    public_flags: 0,
    flags: 0,
  }
}

/** A guild member object without the user. */
export function memberJson(world: World, server: Server | null, id: string): Json {
  return {
    avatar: null,
    banner: null,
    communication_disabled_until: null,
    deaf: false,
    flags: 0,
    joined_at: joinedAt,
    mute: false,
    nick: null,
    pending: false,
    premium_since: null,
    roles:
      server === null ? [] : id === world.scenario.application.id ? botRoles(server) : (server.members.get(id) ?? []),
  }
}

/** A member object as an interaction carries it: with the user and the permissions in the channel. */
export function memberWithRights(world: World, personId: string, channel: Channel): Json {
  return {
    ...memberJson(world, homeOf(world, channel), personId),
    user: userJson(world, personId),
    permissions: personMay(world, personId, channel).toString(),
  }
}

function roleJson(world: World, role: ScenarioRole, position: number, permissions: string): Json {
  const { id } = world.scenario.application
  return {
    id: role.id,
    name: role.name,
    color: 0,
    colors: { primary_color: 0, secondary_color: null, tertiary_color: null },
    hoist: false,
    icon: null,
    unicode_emoji: null,
    position,
    permissions,
    managed: role.managed ?? role.ofBot ?? false,
    ...(role.ofBot ? { tags: { bot_id: id } } : {}),
    mentionable: false,
    flags: 0,
  }
}

/** All roles, everyone's first. */
export function rolesJson(world: World, { id, roles }: Server): Json[] {
  const everyone = roles.find(role => role.id === id)?.permissions ?? everyoneDefault.toString()
  const first = roleJson(world, { id, name: '@everyone' }, 0, everyone)
  const others = roles.filter(role => role.id !== id)
  const given = world.scenario.application.permissions ?? botDefault.toString()
  return [
    first,
    ...others.map((role, at) => roleJson(world, role, at + 1, role.permissions ?? (role.ofBot ? given : '0'))),
  ]
}

/** A channel object. */
export function channelJson(world: World, channel: Channel): Json {
  const last = channel.messageIds.at(-1) ?? null
  if (channel.type === channelKind.direct || channel.type === channelKind.group) {
    const people = channel.personId === null ? channel.among : [channel.personId]
    const recipients = people.map(id => userJson(world, id))
    return { id: channel.id, type: channel.type, last_message_id: last, flags: 0, recipients }
  }
  const common = {
    id: channel.id,
    type: channel.type,
    name: channel.name,
    guild_id: homeOf(world, channel)?.id,
    parent_id: channel.parentId,
    last_message_id: last,
    rate_limit_per_user: 0,
    flags: 0,
  }
  if (isThread(channel)) return { ...common, ...threadParts(world, channel) }
  return {
    ...common,
    position: [...world.channels.values()].filter(one => one.serverId === channel.serverId).indexOf(channel),
    topic: channel.topic,
    nsfw: false,
    permission_overwrites: channel.overwrites.map(({ id, type, deny, allow }) => ({
      id,
      type,
      allow: allow.toString(),
      deny: deny.toString(),
    })),
    ...(channel.type === channelKind.forum
      ? {
          available_tags: channel.tags.map(tag => ({ ...tag, moderated: false, emoji_id: null, emoji_name: null })),
          default_reaction_emoji: null,
          default_sort_order: null,
          default_forum_layout: 0,
        }
      : {}),
  }
}

function threadParts(world: World, channel: Channel): Json {
  return {
    owner_id: channel.ownerId,
    message_count: channel.messageIds.length,
    total_message_sent: channel.messageIds.length,
    member_count: channel.members.size,
    applied_tags: channel.appliedTags,
    thread_metadata: {
      archived: channel.archived,
      locked: channel.locked,
      auto_archive_duration: channel.autoArchive,
      archive_timestamp: new Date(channel.madeAt).toISOString(),
      create_timestamp: new Date(channel.madeAt).toISOString(),
      ...(channel.type === channelKind.privateThread ? { invitable: false } : {}),
    },
    ...(channel.members.has(world.scenario.application.id)
      ? {
          member: {
            id: channel.id,
            user_id: world.scenario.application.id,
            join_timestamp: new Date(channel.madeAt).toISOString(),
            flags: 0,
          },
        }
      : {}),
  }
}

/** A channel as an interaction carries it: with the person's permissions in it. */
export function channelForInteraction(world: World, channel: Channel, personId: string): Json {
  return { ...channelJson(world, channel), permissions: personMay(world, personId, channel).toString() }
}

/** The bot's permissions in a channel as an interaction carries them. */
export function appPermissions(world: World, channel: Channel): string {
  // Where it is no member it may do what an answer needs (from memory).
  if (!botIsIn(world, channel)) return (rights.embed | rights.attach | rights.externalEmoji).toString()
  return channel.type === channelKind.direct ? botDefault.toString() : botMay(world, channel).toString()
}

/** The server, as `GET /guilds/:id` answers. */
export function serverJson(world: World, server: Server): Json {
  const people = [...server.members.keys()]
  return {
    id: server.id,
    name: server.name,
    icon: null,
    splash: null,
    discovery_splash: null,
    owner_id: people.at(-1) ?? world.scenario.application.id,
    afk_channel_id: null,
    afk_timeout: 300,
    verification_level: 0,
    default_message_notifications: 1,
    explicit_content_filter: 0,
    roles: rolesJson(world, server),
    emojis: [],
    stickers: [],
    features: ['COMMUNITY'],
    mfa_level: 0,
    application_id: null,
    system_channel_id: null,
    system_channel_flags: 0,
    rules_channel_id: null,
    public_updates_channel_id: null,
    safety_alerts_channel_id: null,
    vanity_url_code: null,
    description: null,
    banner: null,
    premium_tier: 0,
    premium_subscription_count: 0,
    premium_progress_bar_enabled: false,
    preferred_locale: server.locale,
    max_members: 500_000,
    max_presences: null,
    nsfw_level: 0,
    approximate_member_count: people.length + 1,
    approximate_presence_count: people.length + 1,
  }
}

/** The application, as `GET /applications/@me` answers. */
export function applicationJson(
  world: World,
  { publicKey, url }: { readonly publicKey: string; readonly url: string | null },
): Json {
  const { id, name, installs = ['server', 'person'] } = world.scenario.application
  const parts = { scopes: ['applications.commands', 'bot'], permissions: '0' }
  return {
    id,
    name,
    icon: null,
    description: '',
    bot_public: false,
    bot_require_code_grant: false,
    verify_key: publicKey,
    flags: 0,
    hook: true,
    team: null,
    owner: userJson(world, world.scenario.people[0]?.id ?? id),
    approximate_guild_count: [...world.servers.values()].filter(one => one.install === 'bot').length,
    approximate_user_install_count: installersOf(world).length,
    integration_types_config: {
      ...(installs.includes('server') ? { '0': { oauth2_install_params: parts } } : {}),
      ...(installs.includes('person')
        ? { '1': { oauth2_install_params: { ...parts, scopes: ['applications.commands'] } } }
        : {}),
    },
    interactions_endpoint_url: url,
    redirect_uris: [],
    tags: [],
  }
}

/** Ids of those who have installed the application for themselves. */
export function installersOf({ scenario }: World): string[] {
  return [...(scenario.application.installedBy ?? []), ...(scenario.elsewhere?.people ?? [])]
}
