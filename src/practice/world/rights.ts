// Who may do what where: permissions of people and of the bot in any channel, thread or direct conversation.
import { botDefault, permissionsOf, rights } from './permissions.ts'
import { type Channel, channelKind, homeOf, isThread, type Server, type World } from './world.ts'

/** The channel whose overwrites count: a thread's parent, or the channel itself. */
function ruling(world: World, channel: Channel): Channel {
  return (channel.parentId !== null ? world.channels.get(channel.parentId) : undefined) ?? channel
}

/** A person's permissions in a channel, as Discord's bitfield. */
export function personMay(world: World, personId: string, channel: Channel): bigint {
  if (channel.personId !== null || channel.among.length > 0) {
    const inside = channel.personId === personId || channel.among.includes(personId)
    return inside ? rights.view | rights.send | rights.attach : 0n
  }
  const server = homeOf(world, channel)
  const roles = server?.members.get(personId)
  if (server === null || roles === undefined) return 0n
  const bits = permissionsOf(server, { id: personId, roles }, ruling(world, channel).overwrites)
  const shut = channel.type === channelKind.privateThread && !channel.members.has(personId)
  return shut && (bits & rights.manageThreads) === 0n ? 0n : bits
}

/** The bot's permissions in a channel, as Discord's bitfield. */
export function botMay(world: World, channel: Channel): bigint {
  if (channel.personId !== null) return rights.view | rights.send | rights.embed | rights.attach | rights.history
  const server = homeOf(world, channel)
  if (server?.install !== 'bot') return 0n
  const { id, permissions } = world.scenario.application
  const extra = permissions === undefined ? botDefault : BigInt(permissions)
  return permissionsOf(server, { id, roles: botRoles(server), extra }, ruling(world, channel).overwrites)
}

/** The bot's own roles on a server: the one that Discord made for it, if the scenario has it. */
export function botRoles(server: Server): string[] {
  return server.roles.filter(role => role.ofBot).map(role => role.id)
}

/** Whether these permissions allow speaking in this channel. */
export function maySpeak(bits: bigint, channel: Channel): boolean {
  return (bits & (isThread(channel) ? rights.sendInThreads : rights.send)) !== 0n
}

/** Whether the person sees the channel at all. */
export function sees(world: World, personId: string, channel: Channel): boolean {
  return (personMay(world, personId, channel) & rights.view) !== 0n
}
