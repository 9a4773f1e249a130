// The gateway's address, users, the application, and the server's members, roles and channels.
import { applicationJson, channelJson, memberJson, rolesJson, serverJson, userJson } from '../world/describe.ts'
import { isThread, type Server } from '../world/world.ts'
import { type Answer, notFound, ok } from './answer.ts'
import { type Asked, type Route, route } from './route.ts'

const gatewayUrl = ({ room }: Asked) => `${room.world.origin.replace(/^http/, 'ws')}/gateway`

function onServer(answer: (asked: Asked, server: Server) => Answer): (asked: Asked) => Answer {
  return asked => {
    const server = asked.room.world.servers.get(asked.params['server'] ?? '')
    return server?.install === 'bot' ? answer(asked, server) : notFound.server
  }
}

function user({ room, params }: Asked): Answer {
  const given = params['user'] ?? ''
  const found = userJson(room.world, given === '@me' ? room.world.scenario.application.id : given)
  return found === null ? notFound.user : ok(found)
}

function member({ room: { world }, params }: Asked, server: Server): Answer {
  const given = params['user'] ?? ''
  const id = given === '@me' ? world.scenario.application.id : given
  const there = id === world.scenario.application.id || server.members.has(id)
  return there ? ok({ ...memberJson(world, server, id), user: userJson(world, id) }) : notFound.member
}

function members({ room: { world }, query }: Asked, server: Server): Answer {
  const begins = query.get('query')?.toLowerCase() ?? ''
  const found = [...world.people.values()].filter(
    person => server.members.has(person.id) && person.name.toLowerCase().startsWith(begins),
  )
  const most = Number(query.get('limit') ?? 1)
  return ok(found.slice(0, most).map(({ id }) => ({ ...memberJson(world, server, id), user: userJson(world, id) })))
}

function channels({ room: { world } }: Asked, server: Server): Answer {
  const plain = [...world.channels.values()].filter(one => !isThread(one) && one.serverId === server.id)
  return ok(plain.map(one => channelJson(world, one)))
}

function role({ room: { world }, params }: Asked, server: Server): Answer {
  const found = rolesJson(world, server).find(one => one['id'] === params['role'])
  return found === undefined ? notFound.role : ok(found)
}

export const serverRoutes: readonly Route[] = [
  route('GET /gateway', asked => ok({ url: gatewayUrl(asked) }), true),
  route('GET /gateway/bot', asked =>
    ok({
      url: gatewayUrl(asked),
      shards: asked.room.access.shards,
      session_start_limit: asked.room.access.sessionStartLimit(),
    }),
  ),
  route('GET /users/:user', user),
  route('GET /applications/@me', ({ room }) => ok(applicationJson(room.world, room.endpoint))),
  route('GET /oauth2/applications/@me', ({ room }) => ok(applicationJson(room.world, room.endpoint))),
  route('GET /users/@me/guilds', ({ room: { world } }) =>
    ok([...world.servers.values()].filter(one => one.install === 'bot').map(one => serverJson(world, one))),
  ),
  route(
    'GET /guilds/:server',
    onServer(({ room }, server) => ok(serverJson(room.world, server))),
  ),
  route('GET /guilds/:server/channels', onServer(channels)),
  route(
    'GET /guilds/:server/roles',
    onServer(({ room }, server) => ok(rolesJson(room.world, server))),
  ),
  route('GET /guilds/:server/roles/:role', onServer(role)),
  route('GET /guilds/:server/members', onServer(members)),
  route('GET /guilds/:server/members/search', onServer(members)),
  route('GET /guilds/:server/members/:user', onServer(member)),
]
