// Builds a slash command's `data` from a path and values, refusing what a client would not let a person send.
import type { Room } from '../room.ts'
import type { WireOption } from '../wire.ts'
import { isUpload, type Upload } from '../world/files.ts'
import type { Json } from '../world/raw.ts'
import type { Channel, Command } from '../world/world.ts'
import { CannotDo } from './cannot.ts'
import { flat } from './command-listing.ts'
import { checkEnding, type Resolved, resolveChannel, resolveFile, resolvePerson, resolveRole } from './resolve.ts'

export type Value = string | number | boolean | Upload

/** The command and the options of a path such as `check start`. */
export function findCommand(room: Room, path: string): { command: Command; options: readonly WireOption[] } {
  const name = path.split(' ')[0]
  const found = [...room.world.commands.values()].filter(one => one.type === 1 && one.name === name)
  for (const command of found) {
    const listing = flat(command, 'en-US').find(one => one.path === path)
    if (listing !== undefined) return { command, options: listing.options }
  }
  const known = [...room.world.commands.values()].flatMap(one => flat(one, 'en-US').map(entry => entry.path))
  throw new CannotDo(`There is no command "${path}". There are: ${known.join(', ') || 'none yet'}.`)
}

/** `data` of a run; `focused` names the option being typed in for autocomplete, where nothing is required yet. */
export function commandData(
  room: Room,
  given: {
    path: string
    values: Readonly<Record<string, Value>>
    personId: string
    channel: Channel
    focused?: string
  },
): Json {
  const { path, values, personId, channel, focused } = given
  const { command, options } = findCommand(room, path)
  for (const name of Object.keys(values)) {
    if (!options.some(option => option.name === name)) {
      throw new CannotDo(
        `"${path}" has no option "${name}". It has: ${options.map(one => one.name).join(', ') || 'none'}.`,
      )
    }
  }
  const resolved: Resolved = {}
  const filled = options.flatMap(option => {
    const value = values[option.name]
    if (value === undefined) {
      if (option.required && focused === undefined) throw new CannotDo(`"${path}" needs the option "${option.name}".`)
      return []
    }
    if (option.name === focused) return [{ name: option.name, type: option.type, value, focused: true }]
    return [{ name: option.name, type: option.type, value: checked(room, resolved, option, value, personId, channel) }]
  })
  const steps = path.split(' ').slice(1)
  const nested = steps.reduceRight<unknown[]>((inner, name, at) => {
    const type = at === 0 && steps.length === 2 ? 2 : 1
    return [{ name, type, options: inner }]
  }, filled)
  return {
    id: command.id,
    name: command.name,
    type: 1,
    ...(nested.length > 0 ? { options: nested } : {}),
    ...(Object.keys(resolved).length > 0 ? { resolved } : {}),
    ...(command.guildId === null ? {} : { guild_id: command.guildId }),
  }
}

function checked(
  room: Room,
  into: Resolved,
  option: WireOption,
  value: Value,
  personId: string,
  channel: Channel,
): unknown {
  const no = (words: string) => new CannotDo(`The option "${option.name}" ${words}`)
  if (option.type === 11) {
    if (!isUpload(value)) throw no('takes a file.')
    checkEnding(value, option.fileTypes)
    return resolveFile(room, into, value, channel.id)
  }
  if (option.type === 5) {
    if (typeof value !== 'boolean') throw no('takes true or false.')
    return value
  }
  if (option.type === 4 || option.type === 10) {
    if (typeof value !== 'number' || (option.type === 4 && !Number.isInteger(value))) throw no('takes a number.')
    if (value < (option.min ?? -Infinity) || value > (option.max ?? Infinity)) {
      throw no(`takes a number from ${option.min ?? 'any'} to ${option.max ?? 'any'}.`)
    }
  } else if (typeof value !== 'string') {
    throw no('takes text.')
  }
  if (option.type === 3) {
    const size = String(value).length
    if (size < (option.min ?? 0) || size > (option.max ?? 6000))
      throw no(`takes ${option.min ?? 0} to ${option.max ?? 6000} characters.`)
  }
  if (option.choices.length > 0 && !option.choices.some(one => one.value === value)) {
    throw no(`takes one of: ${option.choices.map(one => one.value).join(', ')}.`)
  }
  const id = String(value)
  if (option.type === 6) resolvePerson(room, into, id, channel.id)
  if (option.type === 7) resolveChannel(room, into, id, personId)
  if (option.type === 8) resolveRole(room, into, id)
  if (option.type === 9) {
    if (room.world.people.has(id)) resolvePerson(room, into, id, channel.id)
    else resolveRole(room, into, id)
  }
  return value
}
