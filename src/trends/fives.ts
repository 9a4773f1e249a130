// The number five, on which every promise about single people rests, and what follows from it.
import { type Epoch, epochOf } from './epoch.ts'
import type { Week } from './week.ts'

/**
 * How many distinct reporters any shown number stands for at least. "Some agencies require at least five respondents in a cell"
 * (UNECE/OECD Glossary of Statistical Disclosure Control, 2005).
 */
export const minimumReporters = 5

/**
 * A count as it may be shown: rounded down to a multiple of five. Since every shown count is such a multiple, so is every sum and
 * every difference of shown counts, over time, between nested sets or between tables: none can be one to four.
 */
export const downToFives = (count: number): number => Math.floor(count / minimumReporters) * minimumReporters

/** Reporters per week: one number for each week that had any. */
export type ByWeek = ReadonlyMap<Week, number>

export type Reporters = {
  /** Contributions. */
  readonly all: number
  /** How many different people they are for sure. */
  readonly distinct: number
}

/**
 * Counts contributions after `after` (null: from the start) up to `upTo`. Within an epoch a person counts once; in the next
 * epoch the same person bears another pseudonym. So only the contributions of one epoch are surely different people, and the
 * fullest epoch gives their number.
 */
export function reportersIn(byWeek: ByWeek, after: Week | null, upTo: Week): Reporters {
  const epochs = new Map<Epoch, number>()
  let all = 0
  for (const [week, count] of byWeek) {
    if (week > upTo || (after !== null && week <= after)) continue
    all += count
    const epoch = epochOf(week)
    epochs.set(epoch, (epochs.get(epoch) ?? 0) + count)
  }
  return { all, distinct: Math.max(0, ...epochs.values()) }
}

/** How many contributions may be shown for these weeks: rounded down to fives, and none while fewer than five people are sure. */
export function showable(byWeek: ByWeek, upTo: Week): number {
  const { all, distinct } = reportersIn(byWeek, null, upTo)
  return distinct < minimumReporters ? 0 : downToFives(all)
}
