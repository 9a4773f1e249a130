// The commands a person is offered, laid flat: one entry for each path that can be run.
import type { Room } from '../room.ts'
import type { WireCommand, WireOption } from '../wire.ts'
import { installersOf } from '../world/describe.ts'
import { rights } from '../world/permissions.ts'
import type { Json } from '../world/raw.ts'
import { personMay } from '../world/rights.ts'
import { type Channel, type Command, contextOf, homeOf } from '../world/world.ts'

type Spec = {
  type: number
  name: string
  description?: string
  required?: boolean
  autocomplete?: boolean
  choices?: { name: string; value: string | number; name_localizations?: Record<string, string> | null }[]
  options?: Spec[]
  min_value?: number
  max_value?: number
  min_length?: number
  max_length?: number
  file_types?: string[]
  name_localizations?: Record<string, string> | null
  description_localizations?: Record<string, string> | null
}

const commandKinds = { 1: 'slash', 2: 'person', 3: 'message' } as const

/** Whether the command's own default and its places let this person use it in this channel. */
export function offered(room: Room, personId: string, command: Command, channel: Channel): boolean {
  const context = contextOf(channel)
  const contexts = command.body['contexts'] as number[] | null | undefined
  if (contexts ? !contexts.includes(context) : context !== 0 && command.body['dm_permission'] === false) return false
  if (command.guildId !== null && command.guildId !== channel.serverId) return false
  // Discord's default is installation on a server.
  const types = (command.body['integration_types'] as number[] | null | undefined) ?? [0]
  const home = homeOf(room.world, channel)
  const there = context === 1 || (home !== null && home.install !== 'none')
  const own = types.includes(1) && installersOf(room.world).includes(personId)
  if (!own && !(there && types.includes(0))) return false
  if (context !== 0) return true
  const needs = command.body['default_member_permissions']
  const bits = personMay(room.world, personId, channel)
  if ((bits & rights.commands) === 0n) return false
  if (needs === null || needs === undefined) return true
  const wanted = BigInt(needs as string)
  const all = (bits & rights.administrator) !== 0n
  // "0" means administrators only.
  return all || (wanted !== 0n && (bits & wanted) === wanted)
}

/** Every path the person may run in this channel, with wording in their language. */
export function listCommands(room: Room, personId: string, channel: Channel): WireCommand[] {
  const locale = room.world.people.get(personId)?.locale ?? 'en-US'
  return [...room.world.commands.values()]
    .filter(command => offered(room, personId, command, channel))
    .flatMap(command => flat(command, locale))
}

/** All runnable paths of one command. */
export function flat(command: Command, locale: string): WireCommand[] {
  const kind = commandKinds[command.type as 1 | 2 | 3]
  if (kind === undefined) return []
  const walk = (spec: Spec, path: string, shownPath: string): WireCommand[] => {
    const nested = (spec.options ?? []).filter(one => one.type <= 2)
    if (nested.length > 0) {
      return nested.flatMap(one =>
        walk(one, `${path} ${one.name}`, `${shownPath} ${said(one.name, one.name_localizations, locale)}`),
      )
    }
    const description = said(spec.description ?? '', spec.description_localizations, locale)
    const options = (spec.options ?? []).map(one => listed(one, locale))
    return [{ kind, path, shownPath, description, options, id: command.id }]
  }
  const spec = command.body as Json & Spec
  return walk(spec, command.name, said(command.name, spec.name_localizations, locale))
}

function said(base: string, localized: Record<string, string> | null | undefined, locale: string): string {
  return localized?.[locale] ?? base
}

function listed(spec: Spec, locale: string): WireOption {
  return {
    name: spec.name,
    shownName: said(spec.name, spec.name_localizations, locale),
    description: said(spec.description ?? '', spec.description_localizations, locale),
    type: spec.type,
    required: spec.required ?? false,
    autocomplete: spec.autocomplete ?? false,
    choices: (spec.choices ?? []).map(one => ({
      name: said(one.name, one.name_localizations, locale),
      value: one.value,
    })),
    min: spec.min_value ?? spec.min_length ?? null,
    max: spec.max_value ?? spec.max_length ?? null,
    fileTypes: spec.file_types ?? [],
  }
}
