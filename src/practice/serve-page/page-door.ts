// Answers everything that is not the API or a file: the page, its scripts, its news and its acts.
import type { IncomingMessage, ServerResponse } from 'node:http'
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

/** Answers one request of the page. */
export async function answerPage(
  room: Room,
  patience: Patience,
  url: URL,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const plain = (status: number, words: string) => {
    response.writeHead(status, { ...pageHeaders, 'content-type': 'text/plain; charset=utf-8' }).end(words)
  }
  if (request.method === 'POST' && url.pathname === '/act') {
    if (!isOwnAct(request)) return plain(403, 'Only the page itself may do this.')
    const bytes = await readBytes(request, mostAct)
    if (bytes === null) return plain(413, 'That is too large: files may have 10 MiB.')
    const outcome = await carryOut(room, parse(bytes), id => personOf(room, id, patience))
    response.writeHead(200, { ...pageHeaders, 'content-type': 'application/json' }).end(JSON.stringify(outcome))
    return
  }
  if (request.method !== 'GET') return plain(405, 'Only GET is answered here.')
  if (url.pathname === '/live') {
    if (!fromOwnPage(request)) return plain(403, 'Only the page itself may read this.')
    return streamNews(room, url, request, response)
  }
  const name = url.pathname === '/' ? 'index.html' : url.pathname.startsWith('/page/') ? url.pathname.slice(6) : ''
  const file = await pageFile(name)
  if (file === null) return plain(404, 'Nothing is here.')
  response.writeHead(200, { ...pageHeaders, 'content-type': file.kind }).end(file.text)
}

function parse(bytes: Buffer): unknown {
  try {
    return JSON.parse(bytes.toString('utf8'))
  } catch {
    return null
  }
}
