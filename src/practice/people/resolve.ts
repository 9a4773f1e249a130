// Gathers the users, members, roles, channels and files an interaction's values point at.
import type { Room } from '../room.ts'
import { channelForInteraction, memberJson, rolesJson, userJson } from '../world/describe.ts'
import { keepFile, type Upload } from '../world/files.ts'
import { attachmentJson } from '../world/message-json.ts'
import type { Json } from '../world/raw.ts'
import { personMay } from '../world/rights.ts'
import { homeOf } from '../world/world.ts'
import { CannotDo } from './cannot.ts'

export type Resolved = Record<string, Record<string, Json>>

/** Adds a person, and the member behind them. */
export function resolvePerson(room: Room, into: Resolved, id: string, channelId: string): void {
  const user = userJson(room.world, id)
  if (user === null) throw new CannotDo(`There is no person ${id} in the scenario.`)
  const channel = room.world.channels.get(channelId)
  const home = channel === undefined ? null : homeOf(room.world, channel)
  put(into, 'users', id, user)
  // Who is no member of the server is resolved as a user alone.
  if (channel === undefined || !home?.members.has(id)) return
  const permissions = personMay(room.world, id, channel).toString()
  put(into, 'members', id, { ...memberJson(room.world, home, id), permissions })
}

/** Adds a role. */
export function resolveRole(room: Room, into: Resolved, id: string): void {
  const home = [...room.world.servers.values()].find(one => one.roles.some(role => role.id === id) || one.id === id)
  const role = home && rolesJson(room.world, home).find(one => one['id'] === id)
  if (role === undefined) throw new CannotDo(`There is no role ${id} in the scenario.`)
  put(into, 'roles', id, role)
}

/** Adds a channel as `asker` sees it; a client lists channels of these kinds only, of all when none are named. */
export function resolveChannel(
  room: Room,
  into: Resolved,
  id: string,
  asker: string,
  kinds: readonly number[] = [],
): void {
  const channel = room.world.channels.get(id)
  if (channel === undefined) throw new CannotDo(`There is no channel ${id} in the scenario.`)
  if (kinds.length > 0 && !kinds.includes(channel.type))
    throw new CannotDo(`${channel.name} is not among the channels listed here.`)
  put(into, 'channels', id, channelForInteraction(room.world, channel, asker))
}

/** Keeps an uploaded file and adds it; returns its id. */
export function resolveFile(room: Room, into: Resolved, upload: Upload, channelId: string): string {
  const file = keepFile(room.world, channelId, 'ephemeral-attachments', upload)
  put(into, 'attachments', file.id, attachmentJson(room.world, { file, description: null, title: null }))
  return file.id
}

/** Refuses a file whose ending is not among those the bot allows; Discord checks the ending only. */
export function checkEnding(upload: Upload, allowed: readonly string[] | undefined): void {
  if (allowed === undefined || allowed.length === 0) return
  const ending = upload.name.split('.').at(-1)?.toLowerCase() ?? ''
  if (!allowed.some(one => one.replace(/^\./, '').toLowerCase() === ending)) {
    throw new CannotDo(`${upload.name} is not one of the allowed kinds of file: ${allowed.join(', ')}.`)
  }
}

function put(into: Resolved, kind: string, id: string, value: Json): void {
  const group = into[kind] ?? {}
  group[id] = value
  into[kind] = group
}
