// Token buckets, one per key: each holds so many tokens at most, and gets one back every so often. No clock of its own.
//
// A bucket is one number, the time at which it is full again (the generic cell rate algorithm, ITU-T I.371, annex A): so nothing has
// to be done while nobody asks, and a bucket that is full again need not be kept.

export type Rate = {
  /** How many tokens a full bucket holds. */
  readonly burst: number
  /** In how many ms one comes back. */
  readonly every_ms: number
}

export type Buckets = {
  /** In how many ms there are so many tokens (one) for `key`; 0 if there are now. Takes none. More than a bucket holds are a full one. */
  wait(key: string, now: number, tokens?: number): number
  /** Takes tokens, also where there are none: the wait is then the longer, but never longer than from an empty bucket. */
  take(key: string, now: number, tokens?: number): void
  /** How many keys are kept. */
  readonly size: number
}

/** Only when so many more keys are kept are the full buckets looked for and let go. */
const sweepAfter = 1000

export function openBuckets({ burst, every_ms }: Rate): Buckets {
  const fullAt = new Map<string, number>()
  let sweepAt = sweepAfter

  /** A clock that was set back makes a bucket empty at worst, and it fills from then on. */
  function fullFor(key: string, now: number): number {
    const full = (fullAt.get(key) ?? now) - now
    if (full <= burst * every_ms) return Math.max(full, 0)
    fullAt.set(key, now + burst * every_ms)
    return burst * every_ms
  }

  function sweep(now: number): void {
    for (const [key, at] of fullAt) if (at <= now) fullAt.delete(key)
    sweepAt = fullAt.size + sweepAfter
  }

  return {
    wait: (key, now, tokens = 1) => Math.max(0, fullFor(key, now) - Math.max(0, burst - tokens) * every_ms),
    take(key, now, tokens = 1) {
      if (fullAt.size >= sweepAt) sweep(now)
      fullAt.set(key, now + Math.min(fullFor(key, now) + tokens * every_ms, burst * every_ms))
    },
    get size() {
      return fullAt.size
    },
  }
}
