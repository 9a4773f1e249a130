// Serves files that people and the bot have sent, as Discord's CDN does, with links that end after a day.
import type { ServerResponse } from 'node:http'
import type { Room } from '../room.ts'

/** Kinds a browser may show in place; anything else is offered as a download. */
const shownTypes: ReadonlySet<string> = new Set(['image/png', 'image/jpeg', 'image/gif', 'image/webp', 'image/svg+xml'])

/** Answers `GET /cdn/<folder>/<channel>/<id>/<name>?ex=<end in hexadecimal seconds>`. */
export function answerCdn(room: Room, url: URL, response: ServerResponse): void {
  const [, , folder, channelId, id] = url.pathname.split('/')
  const file = room.world.files.get(id ?? '')
  const ends = url.searchParams.get('ex')
  const over = ends !== null && Number.parseInt(ends, 16) * 1000 < room.clock.now()
  if (file === undefined || file.folder !== folder || file.channelId !== channelId || over) {
    response.writeHead(404, { 'content-type': 'text/plain' }).end('This content is no longer available.')
    return
  }
  response
    .writeHead(200, {
      'content-type': file.contentType,
      'content-length': file.bytes.length,
      'x-content-type-options': 'nosniff',
      'content-security-policy': "default-src 'none'; style-src 'unsafe-inline'; sandbox",
      'cache-control': 'private, max-age=3600',
      ...(shownTypes.has(file.contentType) ? {} : { 'content-disposition': 'attachment' }),
    })
    .end(file.bytes)
}
