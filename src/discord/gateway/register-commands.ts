// Registers the commands with Discord: only where they differ from those it has, and only for the ways in that the application allows.
import {
  type APIApplication,
  ApplicationIntegrationType,
  InteractionContextType,
  type REST,
  type RESTPostAPIApplicationCommandsJSONBody,
  Routes,
} from 'discord.js'

type Body = RESTPostAPIApplicationCommandsJSONBody

/** `application`: its id. Says whether anything had to be sent. Rejects with what Discord answers. */
export async function registerCommands(
  rest: REST,
  application: string,
  bodies: readonly Body[],
): Promise<'written' | 'same'> {
  const [{ integration_types_config }, there] = (await Promise.all([
    rest.get(Routes.currentApplication()),
    rest.get(Routes.applicationCommands(application), {
      query: new URLSearchParams({ with_localizations: 'true' }),
    }),
  ])) as [APIApplication, Body[]]
  const allowed = integration_types_config && Object.keys(integration_types_config).map(Number)
  const wanted = allowed ? bodies.flatMap(body => limited(body, allowed)) : [...bodies]
  if (differing(there, wanted).length === 0) return 'same'
  await rest.put(Routes.applicationCommands(application), { body: wanted })
  return 'written'
}

/** A command for the ways in that are allowed; none where there is no such way. Private channels are only reached by user install. */
export function limited(body: Body, allowed: readonly number[]): Body[] {
  const types = body.integration_types?.filter(type => allowed.includes(type))
  if (types?.length === 0) return []
  const { UserInstall } = ApplicationIntegrationType
  const elsewhere = !types || types.includes(UserInstall)
  const contexts = body.contexts?.filter(one => elsewhere || one !== InteractionContextType.PrivateChannel)
  return [{ ...body, ...(types && { integration_types: types }), ...(contexts && { contexts }) }]
}

/** The names of commands that are only here, only there, or not the same in both. */
export function differing(there: readonly Body[], here: readonly Body[]): string[] {
  const [known, wanted] = [there, here].map(list => new Map(list.map(one => [keyOf(one), essence(one)]))) as [
    Map<string, string>,
    Map<string, string>,
  ]
  const keys = new Set([...known.keys(), ...wanted.keys()])
  return [...keys].filter(key => known.get(key) !== wanted.get(key)).map(key => key.slice(key.indexOf(' ') + 1))
}

const keyOf = ({ type, name }: Body): string => `${type ?? 1} ${name}`

/** What Discord adds to a command, and is no part of what was sent. */
const added = ['id', 'application_id', 'guild_id', 'version', 'nsfw', 'dm_permission', 'handler']

/** A command as text that is the same however Discord spells out what was left out. */
function essence(body: Body): string {
  const known = Object.entries(body).filter(
    ([key]) => !added.includes(key) && !/^(name|description)_localized$/.test(key),
  )
  return JSON.stringify(plain({ ...Object.fromEntries(known), type: body.type ?? 1 }))
}

function plain(value: unknown, key = ''): unknown {
  if (Array.isArray(value)) {
    const list = value.map(one => plain(one))
    return key === 'contexts' || key === 'integration_types' || key === 'channel_types' ? list.sort() : list
  }
  if (typeof value !== 'object' || value === null) return value
  const said = Object.entries(value).filter(([, one]) => !isNothing(one))
  return Object.fromEntries(said.sort(([a], [b]) => (a < b ? -1 : 1)).map(([name, one]) => [name, plain(one, name)]))
}

const isNothing = (value: unknown): boolean =>
  value === undefined ||
  value === null ||
  value === '' ||
  value === false ||
  (typeof value === 'object' && Object.keys(value).length === 0)
