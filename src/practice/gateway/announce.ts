// Turns changes of the world into gateway events, with message content only where the intents allow it.
import { channelJson, memberJson, userJson } from '../world/describe.ts'
import { messageJson } from '../world/message-json.ts'
import { rights } from '../world/permissions.ts'
import type { Json } from '../world/raw.ts'
import { botMay } from '../world/rights.ts'
import {
  botIsIn,
  type Channel,
  isThread,
  type Message,
  type Server,
  type World,
  type WorldEvent,
} from '../world/world.ts'
import type { Gateway } from './gateway.ts'
import { guildCreate } from './payloads.ts'
import { intentBit, type Session } from './session.ts'

/** Sends every change of the world the bot would hear of. */
export function announce(world: World, gateway: Gateway): void {
  world.listeners.add(event => {
    if (gateway.sessions.size === 0) return
    if ('server' in event) return announceServer(world, gateway, event)
    if ('channel' in event) return announceChannel(world, gateway, event.kind, event.channel)
    // Commands and languages are the bot's own doing, or none of its business.
    if ('message' in event) announceMessage(world, gateway, event.kind, event.message)
  })
}

type ServerEvent = Extract<WorldEvent, { server: Server }>

function announceServer(world: World, gateway: Gateway, event: ServerEvent): void {
  const { server } = event
  if (server.install !== 'bot' && event.kind !== 'bot-removed') return
  const [name, data, intent = intentBit.guilds] = serverEvent(world, event)
  gateway.send(name, data, intent, server.id)
}

/** Source: Discord's documentation, "Guild Create" and "Guild Delete": without `unavailable`, the bot is on the server no longer. */
function serverEvent(world: World, event: ServerEvent): [name: string, data: Json, intent?: number] {
  const { server } = event
  const { id } = server
  const guild = { guild_id: id }
  switch (event.kind) {
    case 'role-gone':
      return ['GUILD_ROLE_DELETE', { ...guild, role_id: event.roleId }]
    case 'person-left':
      return ['GUILD_MEMBER_REMOVE', { ...guild, user: userJson(world, event.personId) }, intentBit.members]
    case 'person-came': {
      const user = userJson(world, event.personId)
      return ['GUILD_MEMBER_ADD', { ...guild, ...memberJson(world, server, event.personId), user }, intentBit.members]
    }
    case 'server-arrived':
      return ['GUILD_CREATE', guildCreate(world, server)]
    case 'server-unavailable':
      return ['GUILD_DELETE', { id, unavailable: true }]
    case 'bot-removed':
      return ['GUILD_DELETE', { id }]
  }
}

function announceChannel(world: World, gateway: Gateway, kind: WorldEvent['kind'], channel: Channel): void {
  if (channel.serverId === null || !botIsIn(world, channel)) return
  const subject = isThread(channel) ? 'THREAD' : 'CHANNEL'
  // Threads are only told to those who may see them.
  if (isThread(channel) && kind !== 'channel-gone' && (botMay(world, channel) & rights.view) === 0n) return
  const verb = kind === 'channel' || kind === 'thread-joined' ? 'CREATE' : kind === 'channel-gone' ? 'DELETE' : 'UPDATE'
  const data = {
    ...channelJson(world, channel),
    ...(kind === 'channel' && isThread(channel) ? { newly_created: true } : {}),
  }
  gateway.send(`${subject}_${verb}`, data, intentBit.guilds, channel.serverId)
}

function announceMessage(world: World, gateway: Gateway, kind: WorldEvent['kind'], message: Message): void {
  const channel = world.channels.get(message.channelId)
  // Private replies never reach the gateway.
  if (channel === undefined || message.onlyFor !== null || (botMay(world, channel) & rights.view) === 0n) return
  const direct = channel.personId !== null
  const needs = direct ? intentBit.directMessages : intentBit.guildMessages
  if (![...gateway.sessions].some(session => (session.intents & needs) !== 0)) return
  const home = channel.serverId
  if (kind === 'message-gone') {
    const where = direct ? {} : { guild_id: home }
    gateway.send('MESSAGE_DELETE', { id: message.id, channel_id: channel.id, ...where }, needs, home)
    return
  }
  const full = messageJson(world, message, true)
  const bare = { ...full, content: '', embeds: [], components: [], attachments: [] }
  const open = direct || message.author === 'bot' || message.content.includes(`<@${world.scenario.application.id}>`)
  const forSession = (session: Session) => (open || (session.intents & intentBit.content) !== 0 ? full : bare)
  gateway.send(kind === 'message' ? 'MESSAGE_CREATE' : 'MESSAGE_UPDATE', full, needs, home, forSession)
}
