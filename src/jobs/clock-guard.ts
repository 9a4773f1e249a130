// Whether this machine's clock may be trusted with deleting: what a wrong one takes for old may be the newest there is.
//
// The last time that was seen stands in the database. A clock that stands elsewhere than a running bot would have left it has jumped, or
// the bot was away, which looks the same: then nothing is deleted until the clock has run on steadily for long enough.
import type { Logger } from 'pino'

/** Where the last time that was seen is kept, as Keyv keeps it. */
export type ClockMemory = { get(key: string): Promise<unknown>; set(key: string, value: unknown): Promise<unknown> }

export type Clock = {
  readonly memory: ClockMemory
  /** The database's own clock, in ms since 1970; null where it has none but this machine's. */
  databaseTime(): Promise<number | null>
}

/** Times in ms since 1970: when the clock was looked at last, and since when it has run steadily. */
type Seen = { readonly at: number; readonly steadySince: number }

const day = 24 * 3600_000
const key = 'seen'
/** Clocks are set right by seconds, and two hosts differ by as much. */
const mayDiffer = 5 * 60_000
/** A bot that was away for longer might as well have met a clock that jumped. */
const mayBeAway = 2 * day
/** How long a clock has run steadily before what is small and can be made again goes by it. */
const steadyEnough = day
/**
 * And before checks, outcomes, keys and servers do: whatever was saved under a wrong clock has been touched again or has had its two
 * weeks by then.
 */
const steadyLong = 14 * day

/** What goes by the clock now. */
export type ClockLook = { readonly small: boolean; readonly all: boolean }

/** Looks at the clock, which says `now`, and remembers it. Says in the log what is wrong with it, and what to do. */
export async function lookAtClock({ memory, databaseTime }: Clock, now: number, log: Logger): Promise<ClockLook> {
  const there = await databaseTime()
  if (there !== null && Math.abs(there - now) > mayDiffer) {
    log.error(
      `This machine's clock says ${said(now)}, the database's says ${said(there)}. Nothing is deleted until they agree. Set both right.`,
    )
    return { small: false, all: false }
  }
  const before = (await memory.get(key)) as Seen | undefined
  // Seen for the first time: nothing is known against it, and nothing for it.
  const { at, steadySince } = before ?? { at: now, steadySince: now - steadyEnough }
  const jumped = now < at - mayDiffer || now > at + mayBeAway
  if (jumped)
    log.error(
      `The clock says ${said(now)}, and when the bot looked last it said ${said(at)}. Nothing is deleted for two weeks. If it is wrong, set this machine's clock right; if the bot was away meanwhile, there is nothing to do.`,
    )
  const since = jumped ? now : Math.min(steadySince, now)
  await memory.set(key, { at: now, steadySince: since } satisfies Seen)
  return { small: now - since >= steadyEnough, all: now - since >= steadyLong }
}

const said = (ms: number): string => new Date(ms).toISOString().slice(0, 16)
