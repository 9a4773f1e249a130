// Sends the page what changes for one person in one place, as server-sent events.
import type { Context } from 'hono'
import { streamSSE } from 'hono/streaming'
import type { Exchange } from '../journal.ts'
import type { Room } from '../room.ts'
import type { WireNews } from '../wire.ts'
import type { WorldEvent } from '../world/world.ts'
import { frameFor, isFor, messagesFor, placeOf, toWire, whoIs } from './frame.ts'

/** Keeps the line open until the page leaves. */
export function streamNews(room: Room, c: Context): Response {
  const you = whoIs(room, c.req.query('you') ?? null)
  let place = placeOf(room, you, c.req.query('place') ?? null)
  return streamSSE(c, async stream => {
    const say = (news: WireNews) => void stream.write(`data: ${JSON.stringify(news)}\n\n`)

    // Many changes may come at once; the frame is sent once for all of them.
    let framed = false
    const sayFrame = () => {
      if (framed) return
      framed = true
      setImmediate(() => {
        framed = false
        // Whoever has left, or may not see it any more, is somewhere else now.
        const now = placeOf(room, you, place.id)
        if (now.id !== place.id) {
          place = now
          return sayAll()
        }
        say({ kind: 'frame', frame: frameFor(room, you, place) })
      })
    }
    const sayAll = () =>
      say({ kind: 'view', frame: frameFor(room, you, place), messages: messagesFor(room, you, place.id) })
    const onWorld = (event: WorldEvent) => {
      if (event.kind === 'restored') return sayAll()
      if (!('message' in event)) return sayFrame()
      const { message } = event
      if (event.kind === 'message' && message.onlyFor === null && message.channelId !== place.id) return sayFrame()
      if (event.kind === 'message-gone') return say({ kind: 'gone', id: message.id })
      if (isFor(room, you, place.id, message))
        say({ kind: 'message', message: toWire(room, message), fresh: event.kind === 'message' })
    }
    const onComplaint = (exchange: Exchange) => say({ kind: 'complaint', words: complaintWords(exchange) })

    sayAll()
    room.world.listeners.add(onWorld)
    room.gateway.listeners.add(sayFrame)
    room.journal.listeners.add(onComplaint)
    const beat = setInterval(() => void stream.write(': still here\n\n'), 20_000)
    beat.unref()
    await new Promise<void>(resolve => stream.onAbort(resolve))
    clearInterval(beat)
    room.world.listeners.delete(onWorld)
    room.gateway.listeners.delete(sayFrame)
    room.journal.listeners.delete(onComplaint)
  })
}

/** A refused request in plain words. */
function complaintWords(exchange: Exchange): string {
  const first = exchange.issues[0]
  const where = first === undefined ? '' : ` At ${first.path.join('.') || 'the top'}: ${first.message}`
  const more = exchange.issues.length > 1 ? ` (and ${exchange.issues.length - 1} more)` : ''
  return `Discord would refuse ${exchange.method} ${exchange.path} with ${exchange.code ?? exchange.status}: ${exchange.message ?? ''}.${where}${more}`
}
