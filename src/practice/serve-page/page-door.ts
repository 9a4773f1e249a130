// Answers everything that is not the API or a file: the page, its scripts, its news and its acts.
import type { HttpBindings } from '@hono/node-server'
import { type Context, Hono } from 'hono'
import { personOf } from '../people/person.ts'
import type { Patience } from '../people/reply.ts'
import { readBytes } from '../rest/body.ts'
import type { Room } from '../room.ts'
import { carryOut } from './acts.ts'
import { fromOwnPage, isOwnAct, pageHeaders } from './guard.ts'
import { streamNews } from './live.ts'
import { pageFile } from './page-files.ts'

/** Room for one file of 10 MiB in base64 and some words; more is refused. */
const mostAct = 15 * 1024 * 1024

/** The page's routes. */
export function openPage(room: Room, patience: Patience): Hono<{ Bindings: HttpBindings }> {
  const page = new Hono<{ Bindings: HttpBindings }>()
  page.use(async (c, next) => {
    for (const [name, value] of Object.entries(pageHeaders)) c.header(name, value)
    await next()
  })
  page.post('/act', async c => {
    if (!isOwnAct(c.req.header())) return c.text('Only the page itself may do this.', 403)
    const bytes = await readBytes(c.env.incoming, mostAct)
    if (bytes === null) return c.text('That is too large: files may have 10 MiB.', 413)
    return c.json(await carryOut(room, parse(bytes), id => personOf(room, id, patience)))
  })
  page.get('/live', c =>
    fromOwnPage(c.req.header()) ? streamNews(room, c) : c.text('Only the page itself may read this.', 403),
  )
  const send = async (c: Context, name: string) => {
    const file = await pageFile(name)
    return file === null ? c.text('Nothing is here.', 404) : c.body(file.text, 200, { 'content-type': file.kind })
  }
  page.get('/', c => send(c, 'index.html'))
  page.get('/page/:name{[a-z-]+\\.(?:css|ts|svg)}', c => send(c, c.req.param('name')))
  page.get('*', c => c.text('Nothing is here.', 404))
  page.all('*', c => c.text('Only GET is answered here.', 405))
  return page
}

function parse(bytes: Buffer): unknown {
  try {
    return JSON.parse(bytes.toString('utf8'))
  } catch {
    return null
  }
}
