// Which weeks are due to be closed, after downtime too, and what a clock that jumped must not do.
import { type Week, weekOf, weekPlus, weeksFrom } from './week.ts'

/** How long a week stays open after it ended, so that a check finished in its last second is in it. */
export const graceMs = 60 * 60_000
/** More weeks than this at once is no downtime but a clock that jumped. */
export const mostAtOnce = 53

export type Due =
  | { readonly ok: true; readonly weeks: readonly Week[] }
  | {
      readonly ok: false
      readonly refusal:
        | { readonly code: 'clock-behind'; readonly now: Week; readonly closed: Week }
        | { readonly code: 'clock-ahead'; readonly now: Week; readonly closed: Week; readonly weeks: number }
    }

/**
 * The weeks to close now, oldest first. `closed` is the last week closed, or null if none was; `first` is the week of the oldest
 * outcome, or null if there is none. Refuses when the clock stands before a closed week or implausibly far after it: a release is
 * frozen for good, so it must not be written by a wrong clock.
 */
export function weeksDue(now: number, closed: Week | null, first: Week | null, most = mostAtOnce): Due {
  const last = weekPlus(weekOf(now - graceMs), -1)
  const from = closed === null ? first : weekPlus(closed, 1)
  if (from === null) return { ok: true, weeks: [] }
  if (closed !== null && weekOf(now) <= closed)
    return { ok: false, refusal: { code: 'clock-behind', now: weekOf(now), closed } }
  const count = weeksFrom(from, last) + 1
  if (closed !== null && count > most)
    return { ok: false, refusal: { code: 'clock-ahead', now: weekOf(now), closed, weeks: count } }
  return { ok: true, weeks: Array.from({ length: Math.max(0, count) }, (_, i) => weekPlus(from, i)) }
}
