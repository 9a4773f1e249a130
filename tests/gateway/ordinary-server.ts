// A server as most are: channels with rights of their own, roles, emojis, stickers and a few threads, as GUILD_CREATE has them.
import { channelId, type Json, personId, serverId, serverOf } from './small-gateway.ts'

/** How many of each. */
const has = { channels: 50, roles: 30, emojis: 50, stickers: 5, threads: 10 }

/** Ids of servers as they are made over the years: apart by more than one tick of Discord's clock, so that shards share them out. */
export const serverIds = (length: number): string[] =>
  Array.from({ length }, (_, i) => String(BigInt(serverId) + BigInt(i) * (1n << 22n)))

const list = (length: number, make: (i: number) => Json): Json[] => Array.from({ length }, (_, i) => make(i))

/** The ids of what is in it follow its own, so that no two servers share one. */
export function ordinaryServer(server: string): Json {
  const id = (kind: number, i: number) => String(BigInt(server) + BigInt(kind * 100 + i))
  const channels = list(has.channels, i => ({
    id: i === 0 && server === serverId ? channelId : id(1, i),
    guild_id: server,
    type: i % 7 === 6 ? 4 : i % 7 === 5 ? 2 : 0,
    name: `channel-${i}`,
    topic: i % 3 === 0 ? `What channel ${i} is for, in a sentence of a usual length, and a word on its rules.` : null,
    position: i,
    parent_id: null,
    nsfw: false,
    rate_limit_per_user: 0,
    last_message_id: id(9, i),
    flags: 0,
    permission_overwrites: [server, id(2, 1), id(2, 2)]
      .slice(0, i % 4)
      .map(role => ({ id: role, type: 0, allow: '1024', deny: '2048' })),
  }))
  const roles = list(has.roles, i => ({
    id: id(2, i),
    name: `role ${i}`,
    color: i * 1000,
    colors: { primary_color: i * 1000, secondary_color: null, tertiary_color: null },
    hoist: i < 5,
    icon: null,
    unicode_emoji: null,
    position: i + 1,
    permissions: '1071698660929',
    managed: false,
    mentionable: false,
    flags: 0,
  }))
  const base = serverOf(server)
  return {
    ...base,
    icon: 'a_0123456789abcdef0123456789abcdef',
    description: 'An ordinary server of people who build and mend things.',
    features: ['COMMUNITY', 'NEWS', 'SOUNDBOARD', 'AUTO_MODERATION'],
    roles: [...(base['roles'] as Json[]), ...roles],
    channels,
    emojis: list(has.emojis, i => ({
      id: id(3, i),
      name: `emoji${i}`,
      roles: [],
      require_colons: true,
      managed: false,
      animated: false,
      available: true,
    })),
    stickers: list(has.stickers, i => ({
      id: id(4, i),
      name: `sticker ${i}`,
      description: 'x',
      tags: 'x',
      type: 2,
      format_type: 1,
      available: true,
      guild_id: server,
    })),
    threads: list(has.threads, i => ({
      id: id(5, i),
      guild_id: server,
      parent_id: id(1, 1),
      owner_id: personId,
      type: 11,
      name: `A thread about something, number ${i}`,
      last_message_id: id(9, i),
      message_count: 12,
      member_count: 5,
      rate_limit_per_user: 0,
      thread_metadata: {
        archived: false,
        archive_timestamp: '2026-11-29T00:00:00Z',
        auto_archive_duration: 4320,
        locked: false,
        create_timestamp: '2026-11-29T00:00:00Z',
      },
      total_message_sent: 12,
      flags: 0,
    })),
  }
}
