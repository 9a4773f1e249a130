// The gateway's address, users, the application, and the server's members, roles and channels.
import { applicationJson, channelJson, memberJson, rolesJson, serverJson, userJson } from '../world/describe.ts'
import { channelKind, isThread } from '../world/world.ts'
import { type Answer, notFound, ok } from './answer.ts'
import { type Asked, type Route, route } from './route.ts'

const gatewayUrl = ({ room }: Asked) => `${room.world.origin.replace(/^http/, 'ws')}/gateway`

function onServer(asked: Asked, answer: () => Answer): Answer {
  return asked.params['server'] === asked.room.world.scenario.server.id ? answer() : notFound.server
}

function user({ room, params }: Asked): Answer {
  const given = params['user'] ?? ''
  const found = userJson(room.world, given === '@me' ? room.world.scenario.application.id : given)
  return found === null ? notFound.user : ok(found)
}

function member(asked: Asked): Answer {
  const { world } = asked.room
  const given = asked.params['user'] ?? ''
  const id = given === '@me' ? world.scenario.application.id : given
  const found = userJson(world, id)
  return onServer(asked, () => (found === null ? notFound.member : ok({ ...memberJson(world, id), user: found })))
}

function members(asked: Asked): Answer {
  const { world } = asked.room
  const begins = asked.query.get('query')?.toLowerCase() ?? ''
  const found = [...world.people.values()].filter(person => person.name.toLowerCase().startsWith(begins))
  const most = Number(asked.query.get('limit') ?? 1)
  return onServer(asked, () =>
    ok(found.slice(0, most).map(({ id }) => ({ ...memberJson(world, id), user: userJson(world, id) }))),
  )
}

function channels(asked: Asked): Answer {
  const { world } = asked.room
  const plain = [...world.channels.values()].filter(
    one => !isThread(one) && one.type !== channelKind.direct && !one.elsewhere,
  )
  return onServer(asked, () => ok(plain.map(one => channelJson(world, one))))
}

export const serverRoutes: readonly Route[] = [
  route('GET /gateway', asked => ok({ url: gatewayUrl(asked) }), true),
  route('GET /gateway/bot', asked =>
    ok({
      url: gatewayUrl(asked),
      shards: 1,
      session_start_limit: { total: 1000, remaining: 1000, reset_after: 86_400_000, max_concurrency: 16 },
    }),
  ),
  route('GET /users/:user', user),
  route('GET /applications/@me', ({ room }) => ok(applicationJson(room.world))),
  route('GET /oauth2/applications/@me', ({ room }) => ok(applicationJson(room.world))),
  route('GET /users/@me/guilds', ({ room }) => ok([serverJson(room.world)])),
  route('GET /guilds/:server', asked => onServer(asked, () => ok(serverJson(asked.room.world)))),
  route('GET /guilds/:server/channels', channels),
  route('GET /guilds/:server/roles', asked => onServer(asked, () => ok(rolesJson(asked.room.world)))),
  route('GET /guilds/:server/roles/:role', asked =>
    onServer(asked, () => {
      const found = rolesJson(asked.room.world).find(role => role['id'] === asked.params['role'])
      return found === undefined ? notFound.role : ok(found)
    }),
  ),
  route('GET /guilds/:server/members', members),
  route('GET /guilds/:server/members/search', members),
  route('GET /guilds/:server/members/:user', member),
]
