// The gateway: HELLO, IDENTIFY, RESUME, heartbeats, and events to every session whose shard and intents they concern.
// Source: Discord's documentation, "Gateway" and "Opcodes and Status Codes".
import { randomBytes } from 'node:crypto'
import type { Server } from 'node:http'
import { type WebSocket, WebSocketServer } from 'ws'
import type { Access } from '../access.ts'
import type { World } from '../world/world.ts'
import { guildCreate, membersChunk, readyPayload } from './payloads.ts'
import { concerns, dispatch, intentBit, replay, resumableMs, type Session } from './session.ts'

export type Gateway = {
  readonly sessions: ReadonlySet<Session>
  /** Sessions with an open socket. */
  live(): number
  /** Sends an event to all sessions concerned: `needs` is an intent bit or 0, `home` the server id or null for directs. */
  send(
    name: string,
    data: unknown,
    needs: number,
    home: string | null,
    forSession?: (session: Session) => unknown,
  ): void
  drop(code: number): void
  askReconnect(): void
  invalidate(resumable: boolean): void
  readonly listeners: Set<() => void>
  close(): void
}

const heartbeatMs = 41_250
const sendsPerMinute = 120

/** Serves the gateway at `/gateway` of the given server. */
export function openGateway(server: Server, world: World, access: Access): Gateway {
  const sockets = new WebSocketServer({ noServer: true, maxPayload: 1 << 20 })
  const sessions = new Set<Session>()
  const listeners = new Set<() => void>()
  const notify = () => {
    for (const listener of listeners) listener()
  }

  server.on('upgrade', (request, socket, head) => {
    const local = /^(127\.0\.0\.1|localhost):\d+$/.test(request.headers.host ?? '')
    if (!local || request.headers.origin !== undefined || !request.url?.startsWith('/gateway')) {
      socket.destroy()
      return
    }
    sockets.handleUpgrade(request, socket, head, one => greet(one))
  })

  function greet(socket: WebSocket): void {
    let session: Session | null = null
    let minute = { from: Date.now(), sends: 0 }
    const say = (op: number, d: unknown) => socket.send(JSON.stringify({ op, d, s: null, t: null }))

    const known = (token: unknown) => access.valid && token === access.token

    const identify = (d: Record<string, unknown>) => {
      if (session !== null) return socket.close(4005, 'Already authenticated.')
      if (!known(d['token'])) return socket.close(4004, 'Authentication failed.')
      if (access.refuses !== null) return socket.close(access.refuses, 'Refused by a fault.')
      const [id, count] = (d['shard'] as [number, number] | undefined) ?? [0, 1]
      if (!(id >= 0 && id < count)) return socket.close(4010, 'Invalid shard.')
      if (typeof d['intents'] !== 'number' || d['intents'] < 0) return socket.close(4013, 'Invalid intent(s).')
      const begun = access.beginSession(id)
      if (begun === 'too-soon') return say(9, false)
      if (begun === 'used-up') {
        // Discord ends every session then, and resets the token.
        access.valid = false
        gateway.drop(4004)
        return socket.close(4004, 'Authentication failed.')
      }
      session = {
        id: randomBytes(16).toString('hex'),
        intents: d['intents'],
        shard: [id, count],
        seq: 0,
        sent: [],
        socket,
        awaySince: null,
      }
      sessions.add(session)
      dispatch(session, 'READY', readyPayload(world, session))
      for (const server of world.servers.values()) {
        const told = server.install === 'bot' && server.available && concerns(session, server.id)
        if (told && (session.intents & intentBit.guilds) !== 0)
          dispatch(session, 'GUILD_CREATE', guildCreate(world, server))
      }
      notify()
    }

    const resume = (d: Record<string, unknown>) => {
      if (!known(d['token'])) return socket.close(4004, 'Authentication failed.')
      const left = [...sessions].find(one => one.id === d['session_id'])
      if (left === undefined) return say(9, false)
      // After op 9 "resumable" the bot resumes on the line it already has.
      if (left.socket !== socket) left.socket?.terminate()
      left.socket = socket
      left.awaySince = null
      session = left
      if (!replay(left, Number(d['seq']))) {
        sessions.delete(left)
        session = null
        return socket.close(4007, 'Invalid seq.')
      }
      dispatch(left, 'RESUMED', { _trace: [] })
      notify()
    }

    socket.on('message', data => {
      const now = Date.now()
      if (now - minute.from > 60_000) minute = { from: now, sends: 0 }
      minute.sends += 1
      if (minute.sends > sendsPerMinute) return socket.close(4008, 'Rate limited.')
      let frame: { op?: number; d?: Record<string, unknown> }
      try {
        frame = JSON.parse(String(data))
      } catch {
        return socket.close(4002, 'Decode error.')
      }
      const d = frame.d ?? {}
      if (frame.op === 1) return say(11, null)
      if (frame.op === 2) return identify(d)
      if (frame.op === 6) return resume(d)
      if (session === null) return socket.close(4003, 'Not authenticated.')
      if (frame.op === 8) return dispatch(session, 'GUILD_MEMBERS_CHUNK', membersChunk(world, d))
      if (frame.op === 3 || frame.op === 4 || frame.op === 31) return
      socket.close(4001, 'Unknown opcode.')
    })

    socket.on('error', () => socket.terminate())
    socket.on('close', code => {
      const mine = session
      if (mine === null || mine.socket !== socket) return
      mine.socket = null
      mine.awaySince = world.clock.now()
      // The client's own 1000 and 1001 end the session; any other code leaves it to be resumed.
      if (code === 1000 || code === 1001) sessions.delete(mine)
      notify()
    })

    say(10, { heartbeat_interval: heartbeatMs, _trace: [] })
  }

  function sweep(): void {
    const now = world.clock.now()
    for (const one of sessions) if (one.awaySince !== null && now - one.awaySince > resumableMs) sessions.delete(one)
  }

  const eachOpen = (act: (session: Session, socket: WebSocket) => void) => {
    for (const one of [...sessions]) if (one.socket !== null) act(one, one.socket)
  }

  const send: Gateway['send'] = (name, data, needs, home, forSession) => {
    sweep()
    for (const one of sessions) {
      if (needs !== 0 && (one.intents & needs) === 0) continue
      if (concerns(one, home)) dispatch(one, name, forSession === undefined ? data : forSession(one))
    }
  }

  const gateway: Gateway = {
    sessions,
    listeners,
    live: () => [...sessions].filter(one => one.socket?.readyState === 1).length,
    send,
    drop(code) {
      eachOpen((_, socket) => (code === 1006 ? socket.terminate() : socket.close(code)))
    },
    askReconnect: () => eachOpen((_, socket) => socket.send(JSON.stringify({ op: 7, d: null, s: null, t: null }))),
    invalidate(resumable) {
      eachOpen((session, socket) => {
        if (!resumable) {
          session.socket = null
          sessions.delete(session)
        }
        socket.send(JSON.stringify({ op: 9, d: resumable, s: null, t: null }))
      })
    },
    close() {
      for (const client of sockets.clients) client.terminate()
      sockets.close()
      sessions.clear()
    },
  }
  return gateway
}
