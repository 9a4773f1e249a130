// Bad weather on order: events twice, dropped sockets, a revoked token, 429, 5xx, slow and lost answers, blocked words.
import type { Access } from './access.ts'
import type { Gateway } from './gateway/gateway.ts'
import type { RateLimits, RouteLimit } from './rest/rate-limits.ts'
import { reachServer } from './world/rebuild.ts'
import type { World } from './world/world.ts'

/** Which requests: text that `METHOD /path` must contain, a pattern, or every request when left out. */
export type Match = string | RegExp

export type NextAnswer = {
  readonly match?: Match
  readonly status: number
  readonly code?: number
  readonly message?: string
  /** Seconds; for 429. */
  readonly retryAfter?: number
  readonly global?: boolean
  /** How many requests; 1 when left out. */
  readonly times?: number
}

export type Faults = {
  /** While on, every interaction reaches every connection twice. */
  deliverTwice(on: boolean): void
  /** Closes the bot's connections with this code; 1006 cuts them without a word. */
  dropSocket(closeCode?: number): void
  /** Gateway op 7. */
  askReconnect(): void
  /** A server is out of reach, or back: GUILD_DELETE that says `unavailable`, GUILD_CREATE. The first server when none is named. */
  outage(on: boolean, serverId?: string): void
  /** The token is good no longer: 401 for what needs it, 4004 on every connection and at every identify. */
  revokeToken(): void
  /** Every identify meets this close code (4011, 4013, 4014 …) until null takes it back. */
  refuseSessions(closeCode: number | null): void
  /** Limits by route, told in headers and kept with 429; none until they are set. */
  limitRoutes(limits: readonly RouteLimit[]): void
  /** Text that automatic moderation blocks (200000), and links that its filter does (240000). */
  block(texts: Blocked): void
  /** Gateway op 9. */
  invalidateSession(resumable: boolean): void
  /** The next matching requests get this answer and change nothing. */
  answerNext(answer: NextAnswer): void
  /** The next matching requests wait this many real milliseconds before anything is done with them. */
  delayNext(delay: { readonly match?: Match; readonly ms: number; readonly times?: number }): void
  /** The next matching requests take effect, but the line breaks before the answer. */
  loseAnswer(which?: { readonly match?: Match; readonly times?: number }): void
  /** Fair weather again. */
  clear(): void
}

export type Weather =
  | { readonly kind: 'answer'; readonly answer: NextAnswer }
  | { readonly kind: 'delay'; readonly ms: number }
  | { readonly kind: 'lose' }

export type Blocked = {
  readonly words?: readonly string[]
  readonly links?: readonly string[]
}

export type FaultBook = Faults & {
  readonly blocked: Blocked
  readonly twice: boolean
  /** What befalls this request (`METHOD /path`, tokens taken out); each order is used up by its times. */
  befalls(request: string): readonly Weather[]
}

type Order = {
  readonly match: Match | undefined
  readonly weather: Weather
  left: number
}

const noWeather: readonly Weather[] = []

export type Weathered = {
  readonly world: World
  readonly gateway: Gateway
  readonly access: Access
  readonly rateLimits: RateLimits
}

/** Fair weather over these. */
export function openFaults({ world, gateway, access, rateLimits }: Weathered): FaultBook {
  let twice = false
  let blocked: Blocked = {}
  let orders: Order[] = []
  const order = (match: Match | undefined, times: number | undefined, weather: Weather) => {
    orders.push({ match, weather, left: times ?? 1 })
  }
  return {
    get twice() {
      return twice
    },
    deliverTwice(on) {
      twice = on
    },
    dropSocket: (code = 4000) => gateway.drop(code),
    askReconnect: () => gateway.askReconnect(),
    get blocked() {
      return blocked
    },
    block(texts) {
      blocked = texts
    },
    outage(on, serverId = world.scenario.server.id) {
      const server = world.servers.get(serverId)
      if (server !== undefined) reachServer(world, server, !on)
    },
    revokeToken() {
      access.valid = false
      gateway.drop(4004)
    },
    refuseSessions(code) {
      access.refuses = code
    },
    limitRoutes: limits => rateLimits.set(limits),
    invalidateSession: resumable => gateway.invalidate(resumable),
    answerNext: answer => order(answer.match, answer.times, { kind: 'answer', answer }),
    delayNext: ({ match, ms, times }) => order(match, times, { kind: 'delay', ms }),
    loseAnswer: which => order(which?.match, which?.times, { kind: 'lose' }),
    clear() {
      twice = false
      orders = []
      blocked = {}
      access.valid = true
      access.refuses = null
      rateLimits.set([])
    },
    befalls(request) {
      if (orders.length === 0) return noWeather
      const found: Weather[] = []
      for (const one of orders) {
        if (one.left <= 0 || !fits(one.match, request) || found.some(other => other.kind === one.weather.kind)) continue
        one.left -= 1
        found.push(one.weather)
      }
      orders = orders.filter(one => one.left > 0)
      return found
    },
  }
}

function fits(match: Match | undefined, request: string): boolean {
  if (match === undefined) return true
  return typeof match === 'string' ? request.includes(match) : match.test(request)
}
