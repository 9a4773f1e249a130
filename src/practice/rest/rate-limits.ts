// Discord's limits by route: a bucket for each route and each channel, server or token in it, told in headers, refused with 429.
// Source: Discord's documentation, "Rate Limits": headers, major parameters and the answer's shape.
import type { Answer } from './answer.ts'

/** So many requests in so many seconds, for a route as it is written, such as `POST /channels/:channel/messages`. */
export type RouteLimit = {
  readonly route: string
  readonly limit: number
  readonly seconds: number
}

/** What a request finds: headers for its answer, and the refusal when its bucket is empty. */
export type Turn = {
  readonly headers: Readonly<Record<string, string>>
  readonly refusal: Answer | null
}

type Bucket = {
  endsAt: number
  left: number
}

const noTurn: Turn = { headers: {}, refusal: null }

/** The major parameters: each value has a bucket of its own. */
const majors = ['channel', 'server', 'app', 'token'] as const

export type RateLimits = {
  set(limits: readonly RouteLimit[]): void
  turn(route: string, params: Readonly<Record<string, string>>): Turn
}

/** No limits yet; `now` in milliseconds since 1970. */
export function openRateLimits(now: () => number): RateLimits {
  let limits: readonly RouteLimit[] = []
  let buckets = new Map<string, Bucket>()
  return {
    set(next) {
      limits = next
      buckets = new Map()
    },
    turn(route, params) {
      const limit = limits.find(one => one.route === route)
      if (limit === undefined) return noTurn
      const key = [route, ...majors.map(name => params[name] ?? '')].join(' ')
      const known = buckets.get(key)
      const bucket =
        known !== undefined && known.endsAt > now()
          ? known
          : { endsAt: now() + limit.seconds * 1000, left: limit.limit }
      buckets.set(key, bucket)
      const resetAfter = (bucket.endsAt - now()) / 1000
      const empty = bucket.left === 0
      if (!empty) bucket.left -= 1
      const headers = limitHeaders(route, limit.limit, bucket.left, bucket.endsAt / 1000, resetAfter)
      return { headers, refusal: empty ? tooMany(resetAfter, headers) : null }
    },
  }
}

const limitHeaders = (route: string, limit: number, left: number, reset: number, resetAfter: number) => ({
  'x-ratelimit-limit': String(limit),
  'x-ratelimit-remaining': String(left),
  'x-ratelimit-reset': reset.toFixed(3),
  'x-ratelimit-reset-after': resetAfter.toFixed(3),
  'x-ratelimit-bucket': Buffer.from(route).toString('base64url'),
})

/** The 429 of one route, in seconds from now. */
export function tooMany(
  retryAfter: number,
  headers: Readonly<Record<string, string>>,
  message = 'You are being rate limited.',
): Answer {
  return {
    status: 429,
    body: { message, retry_after: retryAfter, global: false },
    headers: { ...headers, 'retry-after': String(Math.ceil(retryAfter)), 'x-ratelimit-scope': 'user' },
  }
}

/** The 429 of everything at once. */
export function tooManyAnywhere(retryAfter: number, message = 'You are being rate limited.'): Answer {
  return {
    status: 429,
    body: { message, retry_after: retryAfter, global: true },
    headers: {
      'retry-after': String(Math.ceil(retryAfter)),
      'x-ratelimit-scope': 'global',
      'x-ratelimit-global': 'true',
    },
  }
}

/** The headers of a bucket that is empty for so many seconds. */
export const emptyBucket = (retryAfter: number) =>
  limitHeaders('practice', 5, 0, Date.now() / 1000 + retryAfter, retryAfter)
