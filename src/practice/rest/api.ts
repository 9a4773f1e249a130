// Answers one REST request: faults first, then the token, the route, and the journal.
import type { IncomingMessage, ServerResponse } from 'node:http'
import { setTimeout as wait } from 'node:timers/promises'
import type { NextAnswer } from '../faults.ts'
import { withoutTokens } from '../journal.ts'
import type { Room } from '../room.ts'
import { type Answer, notFound, refusals } from './answer.ts'
import { readBody } from './body.ts'
import { channelRoutes } from './channel-routes.ts'
import { commandRoutes } from './command-routes.ts'
import { interactionRoutes } from './interaction-routes.ts'
import { messageRoutes } from './message-routes.ts'
import { findRoute, type Route } from './route.ts'
import { serverRoutes } from './server-routes.ts'
import { threadRoutes } from './thread-routes.ts'
import { webhookRoutes } from './webhook-routes.ts'

const routes: readonly Route[] = [
  ...interactionRoutes,
  ...webhookRoutes,
  ...messageRoutes,
  ...channelRoutes,
  ...threadRoutes,
  ...serverRoutes,
  ...commandRoutes,
]

/** Discord's limit for one file on a server without boosts. */
const mostFile = 10 * 1024 * 1024

/** Answers a request whose path starts with `/api`. */
export async function answerApi(room: Room, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const url = new URL(request.url ?? '/', 'http://stand-in')
  const method = request.method ?? 'GET'
  const path = url.pathname.replace(/^\/api(\/v\d+)?/, '')
  const shown = withoutTokens(path)
  const body = await readBody(request)
  const weather = room.faults.befalls(`${method} ${shown}`)
  for (const one of weather) if (one.kind === 'delay') await wait(one.ms)
  const ordered = weather.find(one => one.kind === 'answer')
  let answer: Answer
  if (ordered !== undefined) answer = orderedAnswer(ordered.answer)
  else if (body.ok && body.files.some(file => file.bytes.length > mostFile)) answer = refusals.tooLarge
  else if (!body.ok) answer = body.why === 'too-large' ? refusals.tooLarge : refusals.notJson
  else {
    const found = findRoute(routes, method, path)
    if (found === null) answer = notFound.route
    else if (!found.route.open && request.headers.authorization !== `Bot ${room.botToken}`)
      answer = refusals.unauthorized
    else answer = found.route.handle({ room, params: found.params, query: url.searchParams, ...body })
  }
  const told = answer.body as { code?: unknown; message?: unknown } | undefined
  room.journal.add({
    at: room.clock.now(),
    method,
    path: shown,
    body: body.ok ? (body.list ?? body.json) : null,
    files: body.ok ? body.files.map(file => ({ name: file.name, size: file.bytes.length })) : [],
    status: answer.status,
    code: answer.status >= 400 && typeof told?.code === 'number' ? told.code : null,
    message: answer.status >= 400 && typeof told?.message === 'string' ? told.message : null,
    issues: answer.issues ?? [],
    byFault: ordered !== undefined,
  })
  if (weather.some(one => one.kind === 'lose')) {
    request.socket.resetAndDestroy()
    return
  }
  send(response, answer)
}

function send(response: ServerResponse, answer: Answer): void {
  if (answer.body === undefined) {
    response.writeHead(answer.status, answer.headers).end()
    return
  }
  const text = JSON.stringify(answer.body)
  response
    .writeHead(answer.status, {
      'content-type': 'application/json',
      'content-length': Buffer.byteLength(text),
      ...answer.headers,
    })
    .end(text)
}

/** Source of the 429 shape: Discord's documentation, "Rate Limits". */
function orderedAnswer(order: NextAnswer): Answer {
  const { status, retryAfter = 1, global = false } = order
  if (status === 429) {
    return {
      status,
      body: { message: order.message ?? 'You are being rate limited.', retry_after: retryAfter, global },
      headers: {
        'retry-after': String(Math.ceil(retryAfter)),
        'x-ratelimit-scope': global ? 'global' : 'user',
        ...(global
          ? { 'x-ratelimit-global': 'true' }
          : {
              'x-ratelimit-limit': '5',
              'x-ratelimit-remaining': '0',
              'x-ratelimit-reset': String(Date.now() / 1000 + retryAfter),
              'x-ratelimit-reset-after': String(retryAfter),
              'x-ratelimit-bucket': 'practice-bucket',
            }),
      },
    }
  }
  if (status >= 500)
    return { status, body: { message: order.message ?? `${status}: Server Error`, code: order.code ?? 0 } }
  return { status, body: { message: order.message ?? 'Refused by a fault', code: order.code ?? 0 } }
}
