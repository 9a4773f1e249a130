// A keyed queue: what concerns one thing runs in order inside this process; and what runs in the background is bounded.
import PQueue from 'p-queue'

export type KeyedQueue = {
  /** Runs `task` after every earlier task of the same key. */
  inOrder<T>(key: string, task: () => Promise<T>): Promise<T>
  /** Runs `task` when a background place is free; its failure is the caller's to log. */
  inBackground<T>(task: () => Promise<T>): Promise<T>
  /** Resolves when nothing is running or waiting. */
  idle(): Promise<void>
}

export function openKeyedQueue(backgroundPlaces = 2): KeyedQueue {
  /** The keys of which something runs: the queue of those who wait behind it, or null while nobody does. */
  const queues = new Map<string, PQueue | null>()
  const running = new Set<Promise<unknown>>()
  const background = new PQueue({ concurrency: backgroundPlaces })

  function leave(key: string): void {
    const waiting = queues.get(key)
    if (!waiting) {
      queues.delete(key)
      return
    }
    waiting.start()
    void waiting.onIdle().then(() => queues.get(key) === waiting && queues.delete(key))
  }

  function enter<T>(key: string, task: () => Promise<T>): Promise<T> {
    const known = queues.get(key)
    // Mostly nobody else is there, and then no queue is needed.
    if (known === undefined) {
      queues.set(key, null)
      return task().finally(() => leave(key))
    }
    const queue = known ?? new PQueue({ concurrency: 1, autoStart: false })
    queues.set(key, queue)
    return queue.add(task)
  }

  return {
    inOrder(key, task) {
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
