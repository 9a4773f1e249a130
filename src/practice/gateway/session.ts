// One gateway session: its numbered events, kept for a replay while its socket is away.
import type { WebSocket } from 'ws'

export type Session = {
  readonly id: string
  readonly intents: number
  readonly shard: readonly [number, number]
  seq: number
  /** The last events, for RESUME. */
  readonly sent: { readonly seq: number; readonly frame: string }[]
  socket: WebSocket | null
  /** When its socket went away (milliseconds), or null while connected. */
  awaySince: number | null
}

/** Events kept for a replay; a session further behind is told to start anew. */
const keptEvents = 2000

/** Minutes a session without a socket can be resumed. Discord says "minutes"; the figure is from memory. */
export const resumableMs = 5 * 60_000

export const intentBit = {
  guilds: 1 << 0,
  members: 1 << 1,
  guildMessages: 1 << 9,
  directMessages: 1 << 12,
  content: 1 << 15,
} as const

/** Whether a session's shard gets the events of this server; conversations (null) belong to shard 0. */
export function concerns(session: Session, serverId: string | null): boolean {
  const [id, count] = session.shard
  return serverId === null ? id === 0 : Number((BigInt(serverId) >> 22n) % BigInt(count)) === id
}

/** Numbers an event, keeps it and sends it if a socket is there. */
export function dispatch(session: Session, name: string, data: unknown): void {
  session.seq += 1
  const frame = JSON.stringify({ op: 0, s: session.seq, t: name, d: data })
  session.sent.push({ seq: session.seq, frame })
  if (session.sent.length > keptEvents) session.sent.splice(0, session.sent.length - keptEvents)
  if (session.socket?.readyState === 1) session.socket.send(frame)
}

/** Sends again everything after `seq`; false when it is no longer kept or was never sent. */
export function replay(session: Session, seq: number): boolean {
  const oldest = session.sent[0]?.seq ?? session.seq + 1
  if (seq > session.seq || seq < oldest - 1) return false
  for (const one of session.sent) if (one.seq > seq) session.socket?.send(one.frame)
  return true
}
