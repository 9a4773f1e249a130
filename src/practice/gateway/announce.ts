// Turns changes of the world into gateway events, with message content only where the intents allow it.
import { channelJson } from '../world/describe.ts'
import { messageJson } from '../world/message-json.ts'
import { rights } from '../world/permissions.ts'
import { botMay } from '../world/rights.ts'
import { type Channel, isThread, type Message, type World, type WorldEvent } from '../world/world.ts'
import type { Gateway } from './gateway.ts'
import { intentBit, type Session } from './session.ts'

/** Sends every change of the world the bot would hear of. */
export function announce(world: World, gateway: Gateway): void {
  world.listeners.add(event => {
    if (gateway.sessions.size === 0) return
    if (event.kind === 'commands') return
    if (event.kind === 'role-gone') {
      const { id } = world.scenario.server
      return gateway.send('GUILD_ROLE_DELETE', { guild_id: id, role_id: event.roleId }, intentBit.guilds, id)
    }
    if ('channel' in event) return announceChannel(world, gateway, event.kind, event.channel)
    announceMessage(world, gateway, event.kind, event.message)
  })
}

function announceChannel(world: World, gateway: Gateway, kind: WorldEvent['kind'], channel: Channel): void {
  if (channel.personId !== null || channel.elsewhere) return
  const subject = isThread(channel) ? 'THREAD' : 'CHANNEL'
  // Threads are only told to those who may see them.
  if (isThread(channel) && kind !== 'channel-gone' && (botMay(world, channel) & rights.view) === 0n) return
  const verb = kind === 'channel' || kind === 'thread-joined' ? 'CREATE' : kind === 'channel-gone' ? 'DELETE' : 'UPDATE'
  const data = {
    ...channelJson(world, channel),
    ...(kind === 'channel' && isThread(channel) ? { newly_created: true } : {}),
  }
  gateway.send(`${subject}_${verb}`, data, intentBit.guilds, world.scenario.server.id)
}

function announceMessage(world: World, gateway: Gateway, kind: WorldEvent['kind'], message: Message): void {
  const channel = world.channels.get(message.channelId)
  // Private replies never reach the gateway.
  if (channel === undefined || message.onlyFor !== null || (botMay(world, channel) & rights.view) === 0n) return
  const direct = channel.personId !== null
  const needs = direct ? intentBit.directMessages : intentBit.guildMessages
  if (![...gateway.sessions].some(session => (session.intents & needs) !== 0)) return
  const home = direct ? null : world.scenario.server.id
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
