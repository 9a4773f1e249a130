// Lanes, one a server: so much of one server is worked on at a time, so that nobody elsewhere stands behind its crowd.
import { setTimeout as after } from 'node:timers/promises'
import PQueue from 'p-queue'

export type ServerLanes = {
  /** Does `task` when its server's turn comes: at once unless a crowd is there, and among a crowd those first who want least. */
  run<T>(server: string | null, person: string, task: () => Promise<T>): Promise<T>
  /** How many servers have something under way. */
  readonly size: number
}

/** So many of one server at once; ordinary use never gets there. */
const atOnce = 4
/** Whoever only waits for Discord or a file keeps a place for no longer, in ms. */
const longestTurn = 250

type Lane = { readonly queue: PQueue; readonly wanted: Map<string, number> }

export function openServerLanes(places = atOnce, turnMs = longestTurn): ServerLanes {
  const lanes = new Map<string, Lane>()

  function laneOf(server: string): Lane {
    const lane = lanes.get(server) ?? { queue: new PQueue({ concurrency: places }), wanted: new Map<string, number>() }
    lanes.set(server, lane)
    return lane
  }

  return {
    async run(server, person, task) {
      if (server === null) return task()
      const lane = laneOf(server)
      const { queue, wanted } = lane
      const before = wanted.get(person) ?? 0
      wanted.set(person, before + 1)
      let work: ReturnType<typeof task> | undefined
      const turn = async () => {
        work = task()
        const ended = work.then(
          () => undefined,
          () => undefined,
        )
        await Promise.race([ended, after(turnMs, undefined, { ref: false })])
      }
      try {
        await queue.add(turn, { priority: -before })
        return await (work as unknown as ReturnType<typeof task>)
      } finally {
        const left = (wanted.get(person) ?? 1) - 1
        if (left > 0) wanted.set(person, left)
        else wanted.delete(person)
        if (wanted.size === 0 && lanes.get(server) === lane) lanes.delete(server)
      }
    },
    get size() {
      return lanes.size
    },
  }
}
