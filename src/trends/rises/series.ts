// The series that are watched: failures of each family, and of each rule within a family.
import type { FamilyId, RuleId } from '../../engine/answers.ts'
import { failing as failingVerdicts } from '../../ground/verdicts.ts'
import { addUp, type CellKey, type Counts, cellOf } from '../counts.ts'
import type { ByWeek } from '../fives.ts'
import type { Week } from '../week.ts'

export type Watched = {
  readonly family: FamilyId
  /** null: any failed check, by its verdict. */
  readonly rule: RuleId | null
  readonly failed: ByWeek
}

/** Where the watch of a series stands. */
export type SeriesState = {
  readonly statistic: number
  /** The week since which the statistic has been above zero. */
  readonly since: Week
}

const failing: readonly CellKey[] = failingVerdicts.map(verdict => `verdict:${verdict}` as const)

export const seriesKey = ({ family, rule }: Pick<Watched, 'family' | 'rule'>): string => `${family}/${rule ?? ''}`

/** Every series that ever failed, in a fixed order. */
export function watchedSeries(counts: Counts): Watched[] {
  return [...counts.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([family, cells]) => [
      { family, rule: null, failed: addUp(failing.map(key => cellOf(cells, key))) },
      ...[...cells.keys()]
        .filter(key => key.startsWith('rule:'))
        .sort()
        .map(key => ({ family, rule: key.slice('rule:'.length), failed: cellOf(cells, key) })),
    ])
    .filter(series => series.failed.size > 0)
}
