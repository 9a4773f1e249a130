// Keeps the events of one check in order inside this process, and bounds what runs in the background.
import PQueue from 'p-queue'

export type Lanes = {
  /** Runs `task` after every earlier task of the same key. */
  inLane<T>(key: string, task: () => Promise<T>): Promise<T>
  /** Runs `task` when a background place is free; its failure is the caller's to log. */
  inBackground<T>(task: () => Promise<T>): Promise<T>
  /** Resolves when nothing is running or waiting. */
  idle(): Promise<void>
}

export function openLanes(backgroundPlaces = 2): Lanes {
  /** A lane in which something runs: the queue of those who wait behind it, or null while nobody does. */
  const lanes = new Map<string, PQueue | null>()
  const running = new Set<Promise<unknown>>()
  const background = new PQueue({ concurrency: backgroundPlaces })

  function leave(key: string): void {
    const waiting = lanes.get(key)
    if (!waiting) {
      lanes.delete(key)
      return
    }
    waiting.start()
    void waiting.onIdle().then(() => lanes.get(key) === waiting && lanes.delete(key))
  }

  function enter<T>(key: string, task: () => Promise<T>): Promise<T> {
    const lane = lanes.get(key)
    // Mostly nobody is in the lane, and then no queue is needed.
    if (lane === undefined) {
      lanes.set(key, null)
      return task().finally(() => leave(key))
    }
    const queue = lane ?? new PQueue({ concurrency: 1, autoStart: false })
    lanes.set(key, queue)
    return queue.add(task)
  }

  return {
    inLane(key, task) {
      const work = enter(key, task)
      running.add(work)
      const done = () => running.delete(work)
      work.then(done, done)
      return work
    },
    inBackground: task => background.add(task),
    async idle() {
      while (running.size > 0) await Promise.allSettled([...running])
      await background.onIdle()
    },
  }
}
