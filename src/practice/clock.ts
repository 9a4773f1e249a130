// The stand-in's time: the machine's clock, or a clock the caller moves by hand.

export type Clock = {
  now(): number
  /** Calls `run` once the clock has reached `when` (milliseconds since 1970); returns a cancel function. */
  at(when: number, run: () => void): () => void
  close(): void
}

/** How often a clock moved by hand is looked at, in real milliseconds. */
const glanceMs = 5

/** Opens the machine's clock, or one that follows `now`. */
export function openClock(now?: () => number): Clock {
  return now === undefined ? machineClock() : handClock(now)
}

function machineClock(): Clock {
  const timers = new Set<NodeJS.Timeout>()
  return {
    now: Date.now,
    at(when, run) {
      const timer = setTimeout(
        () => {
          timers.delete(timer)
          run()
        },
        Math.max(0, when - Date.now()),
      )
      timer.unref()
      timers.add(timer)
      return () => {
        clearTimeout(timer)
        timers.delete(timer)
      }
    },
    close() {
      for (const timer of timers) clearTimeout(timer)
      timers.clear()
    },
  }
}

function handClock(now: () => number): Clock {
  const waiting = new Set<{ when: number; run: () => void }>()
  let glance: NodeJS.Timeout | null = null
  const look = () => {
    const at = now()
    for (const entry of [...waiting]) {
      if (entry.when > at) continue
      waiting.delete(entry)
      entry.run()
    }
    if (waiting.size === 0 && glance !== null) {
      clearInterval(glance)
      glance = null
    }
  }
  return {
    now,
    at(when, run) {
      const entry = { when, run }
      waiting.add(entry)
      glance ??= setInterval(look, glanceMs)
      return () => waiting.delete(entry)
    },
    close() {
      waiting.clear()
      if (glance !== null) clearInterval(glance)
      glance = null
    },
  }
}
