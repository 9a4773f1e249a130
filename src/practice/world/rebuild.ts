// What a server's owner changes while people are about: a role or a channel goes, a channel's rights become others.
import type { ScenarioChannel } from '../scenario.ts'
import { overwritesOf } from './permissions.ts'
import { type Channel, tell, type World } from './world.ts'

/** Takes a role away from the server and from everybody who has it. */
export function removeRole(world: World, id: string): void {
  const { roles, people } = world.scenario
  world.scenario = {
    ...world.scenario,
    roles: roles.filter(role => role.id !== id),
    people: people.map(person => ({ ...person, roles: person.roles.filter(role => role !== id) })),
  }
  for (const person of world.scenario.people) world.people.set(person.id, person)
  tell(world, { kind: 'role-gone', roleId: id })
}

/** Takes a channel or thread away, with its threads and with everything said there. */
export function removeChannel(world: World, channel: Channel): void {
  for (const thread of [...world.channels.values()])
    if (thread.parentId === channel.id && thread.id !== channel.id) removeChannel(world, thread)
  for (const id of channel.messageIds) world.messages.delete(id)
  world.channels.delete(channel.id)
  tell(world, { kind: 'channel-gone', channel })
}

/** Gives a channel other rights than it had, in the scenario's words. */
export function changeRights(world: World, channel: Channel, rights: Pick<ScenarioChannel, 'forbid' | 'permit'>): void {
  channel.overwrites = overwritesOf(world.scenario, rights)
  tell(world, { kind: 'channel-changed', channel })
}

/** Archives or locks a thread, or opens it again, as a moderator or time does. */
export function changeThread(
  world: World,
  thread: Channel,
  state: { readonly archived?: boolean; readonly locked?: boolean },
): void {
  Object.assign(thread, state)
  tell(world, { kind: 'channel-changed', channel: thread })
}
