// A keyed queue: what concerns one thing runs in order inside this process; and what runs in the background is bounded.
import PQueue from 'p-queue'

/** What runs in the background: a file to read, by its size in bytes, or what nobody waits for. */
export type Work = { readonly is: 'file'; readonly bytes: number } | { readonly is: 'sweep' }

export type KeyedQueue = {
  /** Runs `task` after every earlier task of the same key. */
  inOrder<T>(key: string, task: () => Promise<T>): Promise<T>
  /** Runs `task` when a background place for work of its kind is free; its failure is the caller's to log. */
  inBackground<T>(work: Work, task: () => Promise<T>): Promise<T>
  /** How many tasks wait or run, by kind. */
  lengths(): Readonly<Record<'in-order' | 'small' | 'large' | 'sweep', number>>
  /** Resolves when nothing is running or waiting. */
  idle(): Promise<void>
}

/** What is left to be said once the thing it is about is free for others again. */
export type Later = (() => Promise<void>) | undefined

/**
 * Decides in turn and answers outside: whoever is refused, or only looks, holds up nobody, however long Discord takes to hear it.
 * What has changed something is answered in turn, so that the last word on a screen is the last change.
 */
export async function decideInOrder(queue: KeyedQueue, key: string, decide: () => Promise<Later>): Promise<void> {
  const later = await queue.inOrder(key, decide)
  await later?.()
}

/** Said in turn: nothing is left to be said. */
export const saidInTurn = (said: Promise<unknown>): Promise<undefined> => said.then(() => undefined)

/** A bigger file is read beside the small ones, in a place of its own, so that nobody waits behind it with a small one. */
const mostBytesOfSmall = 1_000_000

/** So many of each kind run at once. */
export type Places = { readonly small: number; readonly large: number; readonly sweep: number }

export function openKeyedQueue(places: Places = { small: 2, large: 1, sweep: 1 }): KeyedQueue {
  /** The keys of which something runs: the queue of those who wait behind it, or null while nobody does. */
  const queues = new Map<string, PQueue | null>()
  const running = new Set<Promise<unknown>>()
  const background = {
    small: new PQueue({ concurrency: places.small }),
    large: new PQueue({ concurrency: places.large }),
    sweep: new PQueue({ concurrency: places.sweep }),
  }

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
    inBackground(work, task) {
      if (work.is === 'sweep') return background.sweep.add(task)
      // The shortest goes first.
      return background[work.bytes > mostBytesOfSmall ? 'large' : 'small'].add(task, { priority: -work.bytes })
    },
    lengths() {
      const { small, large, sweep } = background
      const of = (queue: PQueue) => queue.size + queue.pending
      return { 'in-order': running.size, small: of(small), large: of(large), sweep: of(sweep) }
    },
    async idle() {
      while (running.size > 0) await Promise.allSettled([...running])
      await Promise.all(Object.values(background).map(queue => queue.onIdle()))
    },
  }
}
