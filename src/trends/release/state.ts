// The private state behind a chain of releases: what each cell has counted and shown. Never leaves the store.
import type { FamilyId } from '../../engine/answers.ts'
import type { CellKey } from '../counts.ts'
import type { Rise } from '../rises/judge-week.ts'
import type { SeriesState } from '../rises/series.ts'
import type { Week } from '../week.ts'

export type CellState = {
  /** What releases show: a multiple of five that never falls. */
  readonly shown: number
  /** Contributions counted so far, deleted ones included: a deletion changes nothing that was shown. */
  readonly counted: number
  /** The last week counted; contributions after it are pending. */
  readonly through: Week
}

export type FamilyState = {
  /** The last week in which the family was opened: its cells stand still until five new reporters have come since. */
  readonly opened: Week
  readonly cells: Readonly<Record<CellKey, CellState>>
}

/** Plain data, to be kept as JSON. */
export type ReleaseState = {
  /** The week of the first outcome: where the history begins. */
  readonly first: Week
  readonly families: Readonly<Record<FamilyId, FamilyState>>
  /** Watched series that are above zero, by `seriesKey`. */
  readonly series: Readonly<Record<string, SeriesState>>
  /** Rises of the last weeks, as releases show them. */
  readonly rises: readonly Rise[]
}
