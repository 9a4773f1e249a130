// The bot's commands: read, write one, write them all, for everyone or for one server.
import type { Room } from '../room.ts'
import { type Issue, issue } from '../rules/issue.ts'
import type { Json } from '../world/raw.ts'
import { type Command, tell } from '../world/world.ts'
import { type Answer, badBody, noContent, notFound, ok, refusals, refuse } from './answer.ts'
import { type Asked, type Route, route } from './route.ts'

/** A command as Discord gives it back. */
function commandJson(room: Room, command: Command): Json {
  const { body } = command
  return {
    id: command.id,
    application_id: room.world.scenario.application.id,
    version: command.version,
    default_member_permissions: null,
    nsfw: false,
    contexts: null,
    integration_types: [0],
    name_localizations: null,
    description_localizations: null,
    ...body,
    description: body['description'] ?? '',
    type: command.type,
    ...(command.guildId === null ? {} : { guild_id: command.guildId }),
  }
}

function homeOf({ room, params }: Asked): { ok: true; guildId: string | null } | { ok: false; answer: Answer } {
  if (params['app'] !== room.world.scenario.application.id)
    return {
      ok: false,
      answer: refuse(403, 20012, 'You are not authorized to perform this action on this application'),
    }
  const guildId = params['server'] ?? null
  const server = room.world.servers.get(guildId ?? '')
  // From memory: commands of a server take the scope of commands there, not the bot.
  if (guildId !== null && (server === undefined || server.install === 'none'))
    return { ok: false, answer: refusals.access }
  return { ok: true, guildId }
}

function inHome(room: Room, guildId: string | null): Command[] {
  return [...room.world.commands.values()].filter(one => one.guildId === guildId)
}

function write(room: Room, guildId: string | null, body: Json): Command {
  const type = Number(body['type'] ?? 1)
  const name = String(body['name'])
  const before = inHome(room, guildId).find(one => one.type === type && one.name === name)
  const command: Command = {
    id: before?.id ?? room.world.newId(),
    type,
    name,
    guildId,
    version: room.world.newId(),
    body,
  }
  room.world.commands.set(command.id, command)
  room.world.commandsWritten = true
  return command
}

/** Discord takes an installation context only where the application can be installed so. The code of this issue is from memory. */
function wrongWith(room: Room, list: readonly Json[]): Issue[] {
  const { installs = ['server', 'person'] } = room.world.scenario.application
  const outside = list.flatMap((body, at) =>
    ((body['integration_types'] as unknown[] | null | undefined) ?? []).flatMap((type, index) =>
      installs.includes(type === 1 ? 'person' : 'server')
        ? []
        : issue(
            [at, 'integration_types', index],
            'APPLICATION_COMMAND_INVALID_INTEGRATION_TYPE',
            'The application cannot be installed in this way.',
          ),
    ),
  )
  return [...room.rules.commands(list), ...outside]
}

function writeAll(asked: Asked): Answer {
  const home = homeOf(asked)
  if (!home.ok) return home.answer
  const { room } = asked
  const list = (asked.list ?? []) as Json[]
  const wrong = wrongWith(room, list)
  if (wrong.length > 0) return badBody(wrong)
  const kept = new Set(list.map(body => write(room, home.guildId, body).id))
  for (const old of inHome(room, home.guildId)) if (!kept.has(old.id)) room.world.commands.delete(old.id)
  room.world.commandsWritten = true
  tell(room.world, { kind: 'commands' })
  return ok(inHome(room, home.guildId).map(one => commandJson(room, one)))
}

function writeOne(asked: Asked): Answer {
  const home = homeOf(asked)
  if (!home.ok) return home.answer
  const { room, json } = asked
  const wrong = wrongWith(room, [json]).map(one => ({ ...one, path: one.path.slice(1) }))
  if (wrong.length > 0) return badBody(wrong)
  const command = write(room, home.guildId, json)
  tell(room.world, { kind: 'commands' })
  return { status: 201, body: commandJson(room, command) }
}

function withCommand(asked: Asked, act: (command: Command) => Answer): Answer {
  const home = homeOf(asked)
  if (!home.ok) return home.answer
  const command = asked.room.world.commands.get(asked.params['command'] ?? '')
  return command === undefined || command.guildId !== home.guildId ? notFound.command : act(command)
}

const change = (asked: Asked) =>
  withCommand(asked, command => {
    const body = { ...command.body, ...asked.json }
    const wrong = wrongWith(asked.room, [body]).map(one => ({ ...one, path: one.path.slice(1) }))
    if (wrong.length > 0) return badBody(wrong)
    const after = { ...command, name: String(body['name']), version: asked.room.world.newId(), body }
    asked.room.world.commands.set(command.id, after)
    tell(asked.room.world, { kind: 'commands' })
    return ok(commandJson(asked.room, after))
  })

const remove = (asked: Asked) =>
  withCommand(asked, command => {
    asked.room.world.commands.delete(command.id)
    tell(asked.room.world, { kind: 'commands' })
    return noContent
  })

const list = (asked: Asked) => {
  const home = homeOf(asked)
  return home.ok ? ok(inHome(asked.room, home.guildId).map(one => commandJson(asked.room, one))) : home.answer
}

const one = (asked: Asked) => withCommand(asked, command => ok(commandJson(asked.room, command)))

export const commandRoutes: readonly Route[] = ['/applications/:app', '/applications/:app/guilds/:server'].flatMap(
  base => [
    route(`GET ${base}/commands`, list),
    route(`PUT ${base}/commands`, writeAll),
    route(`POST ${base}/commands`, writeOne),
    route(`GET ${base}/commands/:command`, one),
    route(`PATCH ${base}/commands/:command`, change),
    route(`DELETE ${base}/commands/:command`, remove),
  ],
)
