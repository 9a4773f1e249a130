// Whether the bot is let in at all: its token, and how many sessions it may still begin, how fast.
// Source: Discord's documentation, "Gateway", "Rate Limiting" and "Session Start Limit Object".

export type SessionLimits = {
  readonly total?: number
  readonly remaining?: number
  /** Milliseconds until the count begins anew. */
  readonly resetAfter?: number
  /** Identifies within five seconds, for each remainder of the shard's number by this; when left out, nobody is held to it. */
  readonly maxConcurrency?: number
  /** How many shards Discord recommends; 1 when left out. */
  readonly shards?: number
}

export type Access = {
  readonly token: string
  /** False once the token was revoked: REST answers 401, the gateway closes with 4004. */
  valid: boolean
  /** A close code that every identify meets, or null. */
  refuses: number | null
  readonly shards: number
  /** What `GET /gateway/bot` says of sessions. */
  sessionStartLimit(): { total: number; remaining: number; reset_after: number; max_concurrency: number }
  /** Begins a session for a shard, or says why not: another identify was within five seconds, or none is left. */
  beginSession(shard: number): 'begun' | 'too-soon' | 'used-up'
}

/** Discord holds each bucket to one identify in five seconds. */
const windowMs = 5_000

/** Lets this token in; `now` in milliseconds since 1970. */
export function openAccess(token: string, limits: SessionLimits, now: () => number): Access {
  const { total = 1000, resetAfter = 86_400_000, maxConcurrency, shards = 1 } = limits
  const concurrency = maxConcurrency ?? 16
  const last = new Map<number, number>()
  let remaining = limits.remaining ?? total
  let resetAt = now() + resetAfter
  const renew = () => {
    if (now() < resetAt) return
    remaining = total
    resetAt = now() + resetAfter
  }
  return {
    token,
    shards,
    valid: true,
    refuses: null,
    sessionStartLimit() {
      renew()
      return { total, remaining, reset_after: resetAt - now(), max_concurrency: concurrency }
    },
    beginSession(shard) {
      renew()
      const bucket = shard % concurrency
      const before = last.get(bucket)
      if (maxConcurrency !== undefined && before !== undefined && now() - before < windowMs) return 'too-soon'
      if (remaining <= 0) return 'used-up'
      remaining -= 1
      last.set(bucket, now())
      return 'begun'
    },
  }
}
