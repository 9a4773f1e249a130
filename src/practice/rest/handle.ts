// The door of the stand-in: only requests that name this machine get in, and each goes to the API, the files or the page.
import type { IncomingMessage, ServerResponse } from 'node:http'
import { getRequestListener, type HttpBindings } from '@hono/node-server'
import { Hono } from 'hono'
import { getPath } from 'hono/utils/url'
import type { Patience } from '../people/reply.ts'
import type { Room } from '../room.ts'
import { openPage } from '../serve-page/page-door.ts'
import { openApi } from './api.ts'
import { answerCdn } from './cdn.ts'

/** The request listener of a room's server. */
export function handle(room: Room, patience: Patience): (request: IncomingMessage, response: ServerResponse) => void {
  const door = new Hono<{ Bindings: HttpBindings }>({
    // Discord serves the same routes under each version.
    getPath: request => getPath(request).replace(/^\/api\/v\d+\//, '/api/'),
  })
  door.use(async (c, next) => {
    // A page elsewhere could point its own name at 127.0.0.1; only our own names are answered.
    const local = /^(127\.0\.0\.1|localhost):\d+$/.test(c.req.header('host') ?? '')
    return local ? await next() : c.text('This is not my name.', 421)
  })
  openApi(room, door)
  door.get('/cdn/:folder/:channel/:file/:name', c => answerCdn(room, c))
  door.route('/', openPage(room, patience))
  door.onError((error, c) => {
    console.error('practice room:', error)
    return c.json({ message: 'The stand-in itself has a fault', code: 0 }, 500)
  })
  return getRequestListener(door.fetch, { overrideGlobalObjects: false })
}
