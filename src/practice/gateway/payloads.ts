// The large gateway payloads: READY, GUILD_CREATE and member chunks.
import { channelJson, memberJson, serverJson, userJson } from '../world/describe.ts'
import type { Json } from '../world/raw.ts'
import { isThread, type Server, type World } from '../world/world.ts'
import { concerns, type Session } from './session.ts'

/** READY for a new session. */
export function readyPayload(world: World, session: Session): Json {
  const { application } = world.scenario
  const servers = [...world.servers.values()].filter(one => one.install === 'bot' && concerns(session, one.id))
  return {
    v: 10,
    user: { ...userJson(world, application.id), email: null, mfa_enabled: true, verified: true },
    guilds: servers.map(({ id }) => ({ id, unavailable: true })),
    session_id: session.id,
    session_type: 'normal',
    resume_gateway_url: `${world.origin.replace(/^http/, 'ws')}/gateway`,
    shard: session.shard,
    application: { id: application.id, flags: 0 },
    private_channels: [],
    relationships: [],
    user_settings: {},
  }
}

/** GUILD_CREATE: the server with its channels, threads and the bot's own member. */
export function guildCreate(world: World, server: Server): Json {
  const channels = [...world.channels.values()].filter(one => one.serverId === server.id)
  const botId = world.scenario.application.id
  return {
    ...serverJson(world, server),
    joined_at: '2024-01-01T00:00:00.000000+00:00',
    large: false,
    unavailable: false,
    member_count: server.members.size + 1,
    voice_states: [],
    members: [{ ...memberJson(world, server, botId), user: userJson(world, botId) }],
    channels: channels.filter(one => !isThread(one)).map(one => channelJson(world, one)),
    threads: channels.filter(one => isThread(one) && !one.archived).map(one => channelJson(world, one)),
    presences: [],
    stage_instances: [],
    guild_scheduled_events: [],
    soundboard_sounds: [],
  }
}

/** GUILD_MEMBERS_CHUNK for op 8. */
export function membersChunk(world: World, asked: Json): Json {
  const server = world.servers.get(String(asked['guild_id']))
  const wanted = asked['user_ids'] === undefined ? null : [asked['user_ids']].flat().map(String)
  const query = String(asked['query'] ?? '').toLowerCase()
  const members = [...world.people.values()].filter(person => server?.members.has(person.id))
  const found = members.filter(person =>
    wanted === null ? person.name.toLowerCase().startsWith(query) : wanted.includes(person.id),
  )
  return {
    guild_id: server?.id ?? asked['guild_id'],
    members: found.map(person => ({
      ...memberJson(world, server ?? null, person.id),
      user: userJson(world, person.id),
    })),
    chunk_index: 0,
    chunk_count: 1,
    not_found: (wanted ?? []).filter(id => !server?.members.has(id)),
    ...(asked['nonce'] === undefined ? {} : { nonce: asked['nonce'] }),
  }
}
