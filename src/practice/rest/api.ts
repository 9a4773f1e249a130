// Answers REST requests: faults first, then the token, the route, and the journal.
import { setTimeout as wait } from 'node:timers/promises'
import type { HttpBindings } from '@hono/node-server'
import { RESPONSE_ALREADY_SENT } from '@hono/node-server/utils/response'
import type { Context, Hono } from 'hono'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import type { NextAnswer, Weather } from '../faults.ts'
import { withoutTokens } from '../journal.ts'
import type { Room } from '../room.ts'
import { type Answer, notFound, refusals, refuse } from './answer.ts'
import { type Body, readBody } from './body.ts'
import { channelRoutes } from './channel-routes.ts'
import { commandRoutes } from './command-routes.ts'
import { interactionRoutes } from './interaction-routes.ts'
import { messageRoutes } from './message-routes.ts'
import { emptyBucket, tooMany, tooManyAnywhere } from './rate-limits.ts'
import { type Route, route } from './route.ts'
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

type Asking = Context<{ Bindings: HttpBindings }>

/** Puts everything below `/api` into the door; the version is already taken out of the path. */
export function openApi(room: Room, door: Hono<{ Bindings: HttpBindings }>): void {
  for (const one of routes) door.on(one.method, `/api${one.path}`, c => answer(room, c, one))
  const unknown = route('', () => notFound.route, true)
  door.all('/api/*', c => answer(room, c, unknown))
}

const pathOf = (c: Asking) => c.req.path.slice('/api'.length)

async function answer(room: Room, c: Asking, { method, path, open, handle }: Route): Promise<Response> {
  const body = await readBody(c.env.incoming)
  const weather = room.faults.befalls(`${c.req.method} ${withoutTokens(pathOf(c))}`)
  for (const one of weather) if (one.kind === 'delay') await wait(one.ms)
  const ordered = weather.find(one => one.kind === 'answer')
  const turn = room.rateLimits.turn(`${method} ${path}`, c.req.param())
  const given = () => {
    if (ordered !== undefined) return orderedAnswer(ordered.answer)
    if (typeof body === 'string') return body === 'too-large' ? refusals.tooLarge : refusals.notJson
    if (body.files.some(file => file.bytes.length > mostFile)) return refusals.tooLarge
    const { valid, token } = room.access
    if (!open && !(valid && c.req.header('authorization') === `Bot ${token}`)) return refusals.unauthorized
    if (turn.refusal !== null) return turn.refusal
    return handle({ room, params: c.req.param(), query: new URLSearchParams(c.req.url.split('?')[1]), ...body })
  }
  const { headers, ...rest } = given()
  const answered = { ...rest, headers: { ...turn.headers, ...headers } }
  return told(room, c, answered, typeof body === 'string' ? null : body, weather)
}

/** Writes the exchange down and gives the answer out, or lets the line break before it. */
function told(room: Room, c: Asking, answer: Answer, body: Body | null, weather: readonly Weather[]): Response {
  const said = (answer.status >= 400 ? answer.body : undefined) as { code?: unknown; message?: unknown } | undefined
  room.journal.add({
    at: room.clock.now(),
    method: c.req.method,
    path: withoutTokens(pathOf(c)),
    body: body && (body.list ?? body.json),
    files: (body?.files ?? []).map(file => ({ name: file.name, size: file.bytes.length })),
    status: answer.status,
    code: typeof said?.code === 'number' ? said.code : null,
    message: typeof said?.message === 'string' ? said.message : null,
    issues: answer.issues ?? [],
    byFault: answer.status === 429 || weather.some(one => one.kind === 'answer'),
  })
  if (weather.some(one => one.kind === 'lose')) {
    c.env.incoming.socket.resetAndDestroy()
    return RESPONSE_ALREADY_SENT
  }
  if (answer.body === undefined) return c.body(null, answer.status as 204, answer.headers)
  return c.json(answer.body, answer.status as ContentfulStatusCode, answer.headers)
}

function orderedAnswer({ status, code = 0, message, retryAfter = 1, global = false }: NextAnswer): Answer {
  if (status === 429)
    return global ? tooManyAnywhere(retryAfter, message) : tooMany(retryAfter, emptyBucket(retryAfter), message)
  return refuse(status, code, message ?? (status >= 500 ? `${status}: Server Error` : 'Refused by a fault'))
}
