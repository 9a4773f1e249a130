// Serves files that people and the bot have sent, as Discord's CDN does, with links that end after a day.
import type { Context } from 'hono'
import type { Room } from '../room.ts'

/** Kinds a browser may show in place; anything else is offered as a download. */
const shownTypes: ReadonlySet<string> = new Set(['image/png', 'image/jpeg', 'image/gif', 'image/webp', 'image/svg+xml'])

/** Answers `GET /cdn/:folder/:channel/:file/:name?ex=<end in hexadecimal seconds>`. */
export function answerCdn(room: Room, c: Context): Response {
  const file = room.world.files.get(c.req.param('file') ?? '')
  const ends = c.req.query('ex')
  const over = ends !== undefined && Number.parseInt(ends, 16) * 1000 < room.clock.now()
  if (file === undefined || file.folder !== c.req.param('folder') || file.channelId !== c.req.param('channel') || over)
    return c.text('This content is no longer available.', 404)
  return c.body(new Uint8Array(file.bytes), 200, {
    'content-type': file.contentType,
    'x-content-type-options': 'nosniff',
    'content-security-policy': "default-src 'none'; style-src 'unsafe-inline'; sandbox",
    'cache-control': 'private, max-age=3600',
    ...(shownTypes.has(file.contentType) ? {} : { 'content-disposition': 'attachment' }),
  })
}
