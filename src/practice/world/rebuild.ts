// What a server's owner changes while people are about: a role or a channel goes, a channel's rights become others.
import type { ScenarioChannel } from '../scenario.ts'
import { overwritesOf } from './permissions.ts'
import { type Channel, homeOf, type Server, tell, type World } from './world.ts'

/** Takes a role away from the server and from everybody who has it. */
export function removeRole(world: World, id: string): void {
  for (const server of world.servers.values()) {
    if (!server.roles.some(role => role.id === id)) continue
    server.roles = server.roles.filter(role => role.id !== id)
    for (const [person, roles] of server.members)
      server.members.set(
        person,
        roles.filter(role => role !== id),
      )
    tell(world, { kind: 'role-gone', roleId: id, server })
  }
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
  const server = homeOf(world, channel)
  if (server === null) return
  channel.overwrites = overwritesOf(world.scenario.application.id, server, rights)
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

/** A person leaves a server: they see nothing of it any more, and what they said stays. */
export function leaveServer(world: World, server: Server, personId: string): void {
  if (server.members.delete(personId)) tell(world, { kind: 'person-left', personId, server })
}

/** A person joins a server, or comes back, without any role. */
export function joinServer(world: World, server: Server, personId: string): void {
  if (server.members.has(personId)) return
  server.members.set(personId, [])
  tell(world, { kind: 'person-came', personId, server })
}

/** A person chooses another language for what Discord and the bot say to them. */
export function changeLanguage(world: World, personId: string, locale: string): void {
  const person = world.people.get(personId)
  if (person === undefined) return
  world.people.set(personId, { ...person, locale })
  tell(world, { kind: 'person-changed', personId })
}

/** The bot is taken off a server; people who have installed it for themselves still bring it along. */
export function removeBotFrom(world: World, server: Server): void {
  server.install = 'none'
  tell(world, { kind: 'bot-removed', server })
}

/** A server comes within the bot's reach, or goes out of it. */
export function reachServer(world: World, server: Server, available: boolean): void {
  server.available = available
  tell(world, { kind: available ? 'server-arrived' : 'server-unavailable', server })
}
