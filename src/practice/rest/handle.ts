// The door of the stand-in: only requests that name this machine get in, and each goes to the API, the files or the page.
import type { IncomingMessage, ServerResponse } from 'node:http'
import type { Patience } from '../people/reply.ts'
import type { Room } from '../room.ts'
import { answerPage } from '../serve-page/page-door.ts'
import { answerApi } from './api.ts'
import { answerCdn } from './cdn.ts'

/** The request listener of a room's server. */
export function handle(room: Room, patience: Patience): (request: IncomingMessage, response: ServerResponse) => void {
  return (request, response) => {
    // A page elsewhere could point its own name at 127.0.0.1; only our own names are answered.
    if (!/^(127\.0\.0\.1|localhost):\d+$/.test(request.headers.host ?? '')) {
      response.writeHead(421, { 'content-type': 'text/plain' }).end('This is not my name.')
      return
    }
    answer(room, patience, request, response).catch(error => {
      console.error('practice room:', error)
      if (!response.headersSent) response.writeHead(500, { 'content-type': 'application/json' })
      response.end(JSON.stringify({ message: 'The stand-in itself has a fault', code: 0 }))
    })
  }
}

async function answer(
  room: Room,
  patience: Patience,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const path = request.url ?? '/'
  if (path.startsWith('/api/')) return await answerApi(room, request, response)
  const url = new URL(path, room.world.origin)
  if (path.startsWith('/cdn/')) return answerCdn(room, url, response)
  return await answerPage(room, patience, url, request, response)
}
