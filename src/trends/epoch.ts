// Epochs: the quarters of an ISO year for which a reporter keeps one pseudonym and counts once a family.
import type { Week } from './week.ts'

/** '2026-E1' to '2026-E4': thirteen weeks each, the last fourteen in a year of 53 weeks. */
export type Epoch = string

/**
 * The epoch a week is in. A quarter: long enough that one keen person cannot fill a small server's counts, short enough that the
 * key behind the pseudonyms is soon destroyed.
 */
export function epochOf(week: Week): Epoch {
  const quarter = Math.min(4, Math.ceil(Number(week.slice(6)) / 13))
  return `${week.slice(0, 4)}-E${quarter}`
}
