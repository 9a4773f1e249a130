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

/** How many emptied lanes are kept for the next check that needs one. */
const spares = 20

export function openLanes(backgroundPlaces = 2): Lanes {
  const lanes = new Map<string, PQueue>()
  const spare: PQueue[] = []
  const background = new PQueue({ concurrency: backgroundPlaces })
  return {
    async inLane(key, task) {
      const lane = lanes.get(key) ?? spare.pop() ?? new PQueue({ concurrency: 1 })
      lanes.set(key, lane)
      try {
        return await lane.add(task)
      } finally {
        if (lane.size === 0 && lane.pending === 0 && lanes.get(key) === lane) {
          lanes.delete(key)
          if (spare.length < spares) spare.push(lane)
        }
      }
    },
    inBackground: task => background.add(task),
    async idle() {
      await Promise.all([background.onIdle(), ...[...lanes.values()].map(lane => lane.onIdle())])
    },
  }
}
