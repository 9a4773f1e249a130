// Lanes, one a server: so much of one server is worked on at a time, so that nobody elsewhere stands behind its crowd.
import { setTimeout as wait } from 'node:timers/promises'
import PQueue from 'p-queue'

export type ServerLanes = {
  /** Does `task` when its server's turn comes: at once unless a crowd is there, and among a crowd those first who want least. */
  run<T>(server: string | null, person: string, task: () => Promise<T>): Promise<T>
  /** How many servers have something under way. */
  readonly size: number
}

/** So many of one server at once; ordinary use never gets there. */
const atOnce = 3
/** Whoever only waits for Discord or a file keeps a place for no longer, in ms. */
const longestTurn = 250
/** While anybody else is being served a crowd holds back what it wants next, but each of it for no longer, in ms. */
const longestYield = 60

/** How many places a server has, and for how long; `after`: a clock that wakes whoever waits. */
export type LaneRules = {
  readonly places?: number
  readonly turnMs?: number
  readonly yieldMs?: number
  after?(ms: number): Promise<unknown>
}

type Lane = { readonly queue: PQueue; readonly wanted: Map<string, number> }

export function openServerLanes({
  places = atOnce,
  turnMs = longestTurn,
  yieldMs = longestYield,
  after = ms => wait(ms, undefined, { ref: false }),
}: LaneRules = {}): ServerLanes {
  const lanes = new Map<string, Lane>()
  /** What is under way of servers that are no crowd, and of private messages. */
  const quiet = new Set<Promise<void>>()

  function laneOf(server: string): Lane {
    const lane = lanes.get(server) ?? { queue: new PQueue({ concurrency: places }), wanted: new Map<string, number>() }
    lanes.set(server, lane)
    return lane
  }

  /** A place is kept until the work has ended, or for as long as a turn lasts. */
  async function holdPlace(work: Promise<unknown>, isCrowd: boolean): Promise<void> {
    const turn = Promise.race([settled(work), after(turnMs).then(() => undefined)])
    if (isCrowd) return turn
    quiet.add(turn)
    await turn
    quiet.delete(turn)
  }

  async function letOthersGoFirst(): Promise<void> {
    if (quiet.size > 0) await Promise.race([Promise.all(quiet), after(yieldMs)])
  }

  return {
    async run(server, person, task) {
      if (server === null) {
        const work = task()
        void holdPlace(work, false)
        return work
      }
      const lane = laneOf(server)
      const { queue, wanted } = lane
      const before = wanted.get(person) ?? 0
      wanted.set(person, before + 1)
      let work: ReturnType<typeof task> | undefined
      const turn = async () => {
        const isCrowd = queue.size > 0
        if (isCrowd) await letOthersGoFirst()
        work = task()
        await holdPlace(work, isCrowd)
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

const settled = (work: Promise<unknown>): Promise<void> =>
  work.then(
    () => undefined,
    () => undefined,
  )
