// Turns in which the connections of all processes introduce themselves to Discord: a lease in the database that nobody gives back.
import { setTimeout as after } from 'node:timers/promises'
import type { Logger } from 'pino'
import type { Sharding } from '../discord/gateway/sharding.ts'
import type { Leases } from '../trends/lease.ts'

/** Discord takes one of a group in five seconds; the way there takes no two the same time. In ms. */
export const turnMs = 6_000
/** How often it is asked again, in ms. */
const lookEvery = 500

export type Turns = {
  readonly leases: Leases
  /** Names a wait among all others. */
  newId(): string
  /** Of the database where it has a clock, since those of two hosts differ; ms since 1970. */
  now(): Promise<number>
  readonly log: Logger
  /** Rejects once `signal` is given. */
  wait?(ms: number, signal: AbortSignal): Promise<unknown>
}

export const identifyTurns =
  ({ leases, newId, now, log, wait = (ms, signal) => after(ms, undefined, { signal }) }: Turns): Sharding['turn'] =>
  async (group, signal) => {
    const holder = newId()
    const takes = async () => {
      const at = await now()
      return leases.take(`identify ${group}`, holder, at, at + turnMs)
    }
    // Without a database nobody could be answered: then it is waited for, too.
    const fails = (error: unknown) => {
      log.warn({ err: error, group }, 'the turn of a connection cannot be looked up; trying again')
      return false
    }
    while (!(await takes().catch(fails))) await wait(lookEvery, signal)
  }
