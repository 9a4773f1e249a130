// Who may do what where: permissions of people and of the bot in any channel, thread or direct conversation.
import { BOT_DEFAULT, EVERYONE_DEFAULT, MAY, permissionsOf } from './permissions.ts'
import { CHANNEL, type Channel, isThread, type World } from './world.ts'

/** The channel whose overwrites count: a thread's parent, or the channel itself. */
function ruling(world: World, channel: Channel): Channel {
  return (channel.parentId !== null ? world.channels.get(channel.parentId) : undefined) ?? channel
}

/** A person's permissions in a channel, as Discord's bitfield. */
export function personMay(world: World, personId: string, channel: Channel): bigint {
  const person = world.people.get(personId)
  if (person === undefined) return 0n
  if (channel.elsewhere) return elsewhereMay(world, personId)
  if (channel.type === CHANNEL.direct) return channel.personId === personId ? MAY.view | MAY.send | MAY.attach : 0n
  const bits = permissionsOf(world.scenario, person, ruling(world, channel).overwrites)
  const shut = channel.type === CHANNEL.privateThread && !channel.members.has(personId)
  return shut && (bits & MAY.manageThreads) === 0n ? 0n : bits
}

function elsewhereMay({ scenario }: World, personId: string): bigint {
  const { people = [], managers = [] } = scenario.elsewhere ?? {}
  if (!people.includes(personId)) return 0n
  return EVERYONE_DEFAULT | (managers.includes(personId) ? MAY.manageServer : 0n)
}

/** The bot's permissions in a channel, as Discord's bitfield. */
export function botMay(world: World, channel: Channel): bigint {
  if (channel.elsewhere) return 0n
  if (channel.type === CHANNEL.direct) return MAY.view | MAY.send | MAY.embed | MAY.attach | MAY.history
  const { id, permissions } = world.scenario.application
  const extra = permissions === undefined ? BOT_DEFAULT : BigInt(permissions)
  return permissionsOf(world.scenario, { id, roles: [], extra }, ruling(world, channel).overwrites)
}

/** Whether these permissions allow speaking in this channel. */
export function maySpeak(bits: bigint, channel: Channel): boolean {
  return (bits & (isThread(channel) ? MAY.sendInThreads : MAY.send)) !== 0n
}

/** Whether the person sees the channel at all. */
export function sees(world: World, personId: string, channel: Channel): boolean {
  return (personMay(world, personId, channel) & MAY.view) !== 0n
}
