// Who may do what where: permissions of people and of the bot in any channel, thread or direct conversation.
import { botDefault, everyoneDefault, permissionsOf, rights } from './permissions.ts'
import { type Channel, channelKind, isThread, type World } from './world.ts'

/** The channel whose overwrites count: a thread's parent, or the channel itself. */
function ruling(world: World, channel: Channel): Channel {
  return (channel.parentId !== null ? world.channels.get(channel.parentId) : undefined) ?? channel
}

/** A person's permissions in a channel, as Discord's bitfield. */
export function personMay(world: World, personId: string, channel: Channel): bigint {
  const person = world.people.get(personId)
  if (person === undefined) return 0n
  if (channel.elsewhere) return elsewhereMay(world, personId)
  if (channel.type === channelKind.direct)
    return channel.personId === personId ? rights.view | rights.send | rights.attach : 0n
  const bits = permissionsOf(world.scenario, person, ruling(world, channel).overwrites)
  const shut = channel.type === channelKind.privateThread && !channel.members.has(personId)
  return shut && (bits & rights.manageThreads) === 0n ? 0n : bits
}

function elsewhereMay({ scenario }: World, personId: string): bigint {
  const { people = [], managers = [] } = scenario.elsewhere ?? {}
  if (!people.includes(personId)) return 0n
  return everyoneDefault | (managers.includes(personId) ? rights.manageServer : 0n)
}

/** The bot's permissions in a channel, as Discord's bitfield. */
export function botMay(world: World, channel: Channel): bigint {
  if (channel.elsewhere) return 0n
  if (channel.type === channelKind.direct)
    return rights.view | rights.send | rights.embed | rights.attach | rights.history
  const { id, permissions } = world.scenario.application
  const extra = permissions === undefined ? botDefault : BigInt(permissions)
  return permissionsOf(world.scenario, { id, roles: [], extra }, ruling(world, channel).overwrites)
}

/** Whether these permissions allow speaking in this channel. */
export function maySpeak(bits: bigint, channel: Channel): boolean {
  return (bits & (isThread(channel) ? rights.sendInThreads : rights.send)) !== 0n
}

/** Whether the person sees the channel at all. */
export function sees(world: World, personId: string, channel: Channel): boolean {
  return (personMay(world, personId, channel) & rights.view) !== 0n
}
