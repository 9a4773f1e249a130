// A processor with one thread in a time of its own: slices of work in the order in which they come, and waits for what is elsewhere.
import { setImmediate as turn } from 'node:timers/promises'

export type OneLoop = {
  now(): number
  /** Has the thread for so many ms, once everything that came before has had it. */
  work(ms: number): Promise<void>
  /** Is elsewhere (a database, Discord, a clock) for so many ms. */
  wait(ms: number): Promise<void>
  /** Lets time pass until nothing is left to happen before it. */
  runUntil(end: number): Promise<void>
}

type Event = { readonly at: number; readonly ms: number; readonly done: () => void }

export function openOneLoop(): OneLoop {
  let now = 0
  const slices: Event[] = []
  const elsewhere: Event[] = []

  /** Whoever comes back from elsewhere while the thread is at work stands behind what is there already. */
  function nextEvent(): Event | undefined {
    elsewhere.sort((a, b) => a.at - b.at)
    const [back] = elsewhere
    if (slices.length > 0 && !(back && back.at <= now)) return slices.shift()
    return elsewhere.shift()
  }

  return {
    now: () => now,
    work: ms => new Promise(done => void slices.push({ at: now, ms, done })),
    wait: ms => new Promise(done => void elsewhere.push({ at: now + ms, ms: 0, done })),
    async runUntil(end) {
      for (;;) {
        // Everything that follows at once from what has just happened.
        await turn()
        const event = nextEvent()
        if (!event || event.at >= end) return
        now = Math.max(now, event.at) + event.ms
        event.done()
      }
    },
  }
}
