// A small Discord of its own, written from the public documentation alone and sharing no line with the stand-in: a REST server and a
// gateway in which a test can set what is wrong. Source: Discord's documentation, "Gateway", "Receiving and Responding", "Opcodes".
import { once } from 'node:events'
import { createServer, type IncomingMessage } from 'node:http'
import type { AddressInfo } from 'node:net'
import { text } from 'node:stream/consumers'
import { type WebSocket, WebSocketServer } from 'ws'

export type Json = Record<string, unknown>
type Answer = { readonly status: number; readonly body?: unknown; readonly headers?: Readonly<Record<string, string>> }
export type Asked = { readonly method: string; readonly path: string; readonly body: Json }

export const applicationId = '900000000000000001'
export const serverId = '900000000000000100'
export const channelId = '900000000000000200'
export const personId = '900000000000000300'
export const botToken = `${Buffer.from(applicationId).toString('base64url')}.AbCdEf.${'x'.repeat(38)}`

export type SmallGateway = {
  readonly api: string
  /** Everything that was asked of REST so far. */
  readonly asked: Asked[]
  /** The ids of the messages that stand in channels. */
  readonly standing: ReadonlySet<string>
  /** `METHOD /path` (without /api/v10, tokens as they are) to what is answered; a function is asked each time. `cut`: the line is closed. */
  readonly answers: Map<string, Answer | ((asked: Asked) => Answer | 'cut' | undefined)>
  /** What IDENTIFY is answered with instead of READY: a close code. */
  closeWith: number | undefined
  /** Closes whoever wants to resume, again and again. */
  refuseResume: boolean
  /** Servers that READY names, each to the shard it belongs to; those that are not `coming` never come. */
  servers: readonly { readonly id: string; readonly coming: boolean }[]
  /** What comes of a server. */
  serverAs: (id: string) => Json
  session: { total: number; remaining: number; reset_after: number; max_concurrency: number }
  /** How many shards it advises. */
  shards: number
  /** Every IDENTIFY so far: for which shard of how many, and when, in ms. */
  readonly identified: { readonly shard: number; readonly of: number; readonly at: number }[]
  /** How long a group of `max_concurrency` has to wait between two of its own, in ms; earlier ones are sent away as Discord does. */
  identifyEvery: number
  application: Json
  /** The `Date` of its answers, in ms; the machine's own when undefined. */
  clock: number | undefined
  /** Resolves once a session has been resumed. */
  readonly resumed: Promise<void>
  /** Awaited before a request is answered: a test can hold an answer back. */
  before: (asked: Asked) => Promise<void> | undefined
  /** Closes the connections there are with this code. */
  drop(code: number): void
  /** To the shard that the server of `data` belongs to, and without one to the first. */
  send(name: string, data: Json): void
  /** An interaction as Discord sends it; resolves with the first answer. */
  interact(interaction: Json): Promise<Json>
  close(): Promise<void>
}

/** Of all gateways of a process: no two give the same id. */
let newId = 900_000_000_000_001_000n

export async function openSmallGateway(): Promise<SmallGateway> {
  const asked: Asked[] = []
  const sockets = new Map<WebSocket, ShardOf>()
  let commands: unknown = []
  let sequence = 0
  const nonces = new Map<string, string>()
  const standing = new Set<string>()
  const resumed = Promise.withResolvers<void>()
  const waiting = new Map<string, (body: Json) => void>()
  const http = createServer()
  const ws = new WebSocketServer({ server: http })

  const room: SmallGateway = {
    api: '',
    asked,
    standing,
    resumed: resumed.promise,
    answers: new Map(),
    closeWith: undefined,
    refuseResume: false,
    servers: [{ id: serverId, coming: true }],
    serverAs: serverOf,
    shards: 1,
    identified: [],
    identifyEvery: 0,
    clock: undefined,
    before: () => undefined,
    session: { total: 1000, remaining: 1000, reset_after: 3_600_000, max_concurrency: 1 },
    application: {
      id: applicationId,
      name: 'small',
      bot_require_code_grant: false,
      interactions_endpoint_url: null,
      integration_types_config: { 0: {}, 1: {} },
      flags: 0,
    },
    drop: code => {
      for (const one of sockets.keys()) one.close(code)
    },
    send(name, data) {
      const server = typeof data['guild_id'] === 'string' ? data['guild_id'] : undefined
      for (const [socket, shard] of sockets) if (belongs(server, shard)) dispatch(socket, name, data)
    },
    interact(interaction) {
      newId += 1n
      const [id, token] = [String(newId), `token${newId}`]
      const answered = new Promise<Json>(resolve => waiting.set(id, resolve))
      room.send('INTERACTION_CREATE', { id, token, application_id: applicationId, version: 1, ...interaction })
      return answered
    },
    async close() {
      for (const one of sockets.keys()) one.terminate()
      ws.close()
      http.closeAllConnections()
      await new Promise<void>(resolve => http.close(() => resolve()))
    },
  }

  const dispatch = (socket: WebSocket, name: string, data: Json) => {
    sequence += 1
    socket.send(JSON.stringify({ op: 0, s: sequence, t: name, d: data }))
  }
  const standard = (one: Asked): Answer => {
    const { method, path, body } = one
    const what = `${method} ${path}`
    const fine = (said: unknown): Answer => ({ status: 200, body: said })
    if (what === 'GET /gateway/bot')
      return fine({
        url: room.api.replace('http', 'ws').replace('/api', '/gw'),
        shards: room.shards,
        session_start_limit: room.session,
      })
    if (what === 'GET /applications/@me' || what === 'GET /oauth2/applications/@me') return fine(room.application)
    if (what === `GET /applications/${applicationId}/commands`) return fine(commands)
    if (what === `PUT /applications/${applicationId}/commands`) {
      commands = body
      return fine(commands)
    }
    const callback = /^\/interactions\/(\d+)\/[^/]+\/callback$/.exec(path)?.[1]
    if (callback) {
      waiting.get(callback)?.(body)
      return fine({ interaction: { id: callback, type: 2 }, resource: { type: 4 } })
    }
    if (/^POST \/channels\/\d+\/messages$/.test(what)) {
      const nonce = String(body['nonce'])
      const known = nonces.get(nonce)
      if (known === undefined) newId += 1n
      nonces.set(nonce, known ?? String(newId))
      standing.add(known ?? String(newId))
      return fine({ id: known ?? String(newId), channel_id: channelId })
    }
    const message = /^\/channels\/\d+\/messages\/(\d+)$/.exec(path)?.[1]
    if (message && method === 'PATCH') return fine({ id: message })
    if (message && method === 'DELETE') {
      standing.delete(message)
      return { status: 204 }
    }
    if (/^POST \/channels\/\d+\/typing$/.test(what)) return { status: 204 }
    // What a deferred answer comes to ("Edit Original Interaction Response").
    if (/^PATCH \/webhooks\/\d+\/[^/]+\/messages\/@original$/.test(what))
      return fine({ id: '0', channel_id: channelId })
    return { status: 404, body: { code: 0, message: '404: Not Found' } }
  }

  http.on('request', async (request, response) => {
    const path = (request.url ?? '').replace(/^\/api\/v10/, '').replace(/\?.*/, '')
    const one = { method: request.method ?? '', path: decodeURIComponent(path), body: await bodyOf(request) }
    asked.push(one)
    await room.before(one)
    const wanted = request.headers.authorization
    const set = room.answers.get(`${one.method} ${one.path}`)
    const said = typeof set === 'function' ? set(one) : set
    if (said === 'cut') return request.socket.destroy()
    const refused = wanted !== undefined && wanted !== `Bot ${botToken}`
    const answer: Answer = refused
      ? { status: 401, body: { code: 0, message: '401: Unauthorized' } }
      : (said ?? standard(one))
    response.writeHead(answer.status, {
      ...(answer.body !== undefined && { 'content-type': 'application/json' }),
      ...(room.clock !== undefined && { date: new Date(room.clock).toUTCString() }),
      ...answer.headers,
    })
    response.end(answer.body === undefined ? '' : JSON.stringify(answer.body))
  })

  ws.on('connection', socket => {
    sockets.set(socket, [0, 1])
    socket.on('close', () => sockets.delete(socket))
    socket.send(JSON.stringify({ op: 10, d: { heartbeat_interval: 41_250 }, s: null, t: null }))
    socket.on('message', raw => {
      const { op, d } = JSON.parse(String(raw)) as { op: number; d: Json }
      if (op === 1) socket.send(JSON.stringify({ op: 11 }))
      if (op === 6 && room.refuseResume) return socket.close(4000)
      if (op === 6) {
        dispatch(socket, 'RESUMED', {})
        return resumed.resolve()
      }
      if (op !== 2) return
      if (d['token'] !== botToken) return socket.close(4004)
      if (room.closeWith !== undefined) return socket.close(room.closeWith)
      const shard = (d['shard'] ?? [0, 1]) as ShardOf
      sockets.set(socket, shard)
      const group = (of: number) => of % room.session.max_concurrency
      const at = Date.now()
      const before = room.identified.findLast(one => group(one.shard) === group(shard[0]))
      room.identified.push({ shard: shard[0], of: shard[1], at })
      // "Invalid Session", which may not be resumed.
      if (before && at - before.at < room.identifyEvery) return socket.send(JSON.stringify({ op: 9, d: false }))
      const servers = room.servers.filter(({ id }) => belongs(id, shard))
      dispatch(socket, 'READY', {
        v: 10,
        user: { id: applicationId, username: 'small', discriminator: '0', avatar: null, bot: true },
        guilds: servers.map(({ id }) => ({ id, unavailable: true })),
        session_id: `session ${shard[0]}`,
        resume_gateway_url: room.api.replace('http', 'ws').replace('/api', '/gw'),
        shard,
        application: { id: applicationId, flags: 0 },
      })
      for (const { id, coming } of servers) if (coming) dispatch(socket, 'GUILD_CREATE', room.serverAs(id))
    })
  })

  http.listen(0, '127.0.0.1')
  await once(http, 'listening')
  return Object.assign(room, { api: `http://127.0.0.1:${(http.address() as AddressInfo).port}/api` })
}

/** A shard's number, and of how many. */
type ShardOf = readonly [number, number]

/** "Sharding Formula"; what is of no server comes to the first shard. */
const belongs = (server: string | undefined, [shard, of]: ShardOf): boolean =>
  (server === undefined ? 0 : Number((BigInt(server) >> 22n) % BigInt(of))) === shard

/** JSON, or the `payload_json` of a form with files. */
async function bodyOf(request: IncomingMessage): Promise<Json> {
  const raw = await text(request)
  if (raw === '') return {}
  const part = /name="payload_json"[^\n]*\n(?:[^\n]+\n)*\r?\n([\s\S]*?)\r\n--/.exec(raw)?.[1]
  try {
    return JSON.parse(part ?? raw) as Json
  } catch {
    return {}
  }
}

/** A server with one channel that everybody may write in. */
export function serverOf(id: string): Json {
  const everyone = { id, name: '@everyone', permissions: String((1n << 10n) | (1n << 11n)), position: 0, color: 0 }
  return {
    id,
    name: 'A server',
    unavailable: false,
    member_count: 2,
    owner_id: personId,
    preferred_locale: 'en-US',
    roles: [everyone],
    emojis: [],
    stickers: [],
    features: [],
    members: [
      {
        user: { id: applicationId, username: 'small', discriminator: '0', bot: true },
        roles: [],
        joined_at: '2026-01-01T00:00:00Z',
      },
    ],
    channels: [{ id: channelId, guild_id: id, type: 0, name: 'general', permission_overwrites: [], position: 0 }],
    threads: [],
    voice_states: [],
    presences: [],
    stage_instances: [],
    guild_scheduled_events: [],
    soundboard_sounds: [],
  }
}
