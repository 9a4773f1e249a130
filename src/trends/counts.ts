// Week counts sorted for reading: by family, then by cell, then by week.
import type { FamilyId } from '../engine/answers.ts'
import type { ByWeek } from './fives.ts'
import { atOnce, mapInSlices, type Slices } from './slices.ts'
import type { Week } from './week.ts'

/** A row that is put in its place is as much work as so many words of bits. */
const eachRow = 50

/** What contributions are counted by. */
export type Facet = 'all' | 'verdict' | 'rule' | 'bought'

/**
 * Distinct reporters of a family (`unknownFamily` for null) in a week: all of them (`value` is ''), or those with this verdict, with
 * this rule fired, or who bought here. In a pool a reporter is a pooled pseudonym.
 */
export type WeekCount = {
  readonly week: Week
  readonly family: FamilyId
  readonly facet: Facet
  readonly value: string
  readonly reporters: number
}

/** A cell of a family: 'verdict:danger', 'rule:torn-wrap', 'bought:market', or 'all:' for the family whole. */
export type CellKey = `${Facet}:${string}`

export type FamilyCounts = ReadonlyMap<CellKey, ByWeek>
export type Counts = ReadonlyMap<FamilyId, FamilyCounts>

export const wholeFamily: CellKey = 'all:'

/** Sorts counts; rows of the same cell and week add up, so their order is nothing to rely on. */
export const sortCounts = (rows: readonly WeekCount[]): Counts => atOnce(sortInSlices(rows))

export function* sortInSlices(rows: readonly WeekCount[]): Slices<Counts> {
  const counts = new Map<FamilyId, Map<CellKey, Map<Week, number>>>()
  yield* mapInSlices(rows, eachRow, ({ week, family, facet, value, reporters }) => {
    const cells = at(counts, family, () => new Map<CellKey, Map<Week, number>>())
    const weeks = at(cells, `${facet}:${value}` as const, () => new Map<Week, number>())
    weeks.set(week, (weeks.get(week) ?? 0) + reporters)
  })
  return counts
}

const none: ByWeek = new Map()

/** The weeks of a cell, empty if it never occurred. */
export const cellOf = (family: FamilyCounts | undefined, key: CellKey): ByWeek => family?.get(key) ?? none

/** Several cells added up week by week. */
export function addUp(parts: readonly ByWeek[]): ByWeek {
  const sum = new Map<Week, number>()
  for (const part of parts) for (const [week, count] of part) sum.set(week, (sum.get(week) ?? 0) + count)
  return sum
}

/** All checks of all families, week by week. */
export const allChecks = (counts: Counts): ByWeek => addUp([...counts.values()].map(f => cellOf(f, wholeFamily)))

/** Rows that do not make sense: no week, no whole number over zero. */
export function badCount(rows: readonly WeekCount[], isWeek: (text: unknown) => boolean): WeekCount | undefined {
  const weeks = new Set([...new Set(rows.map(row => row.week))].filter(isWeek))
  return rows.find(row => !weeks.has(row.week) || !Number.isInteger(row.reporters) || row.reporters < 1)
}

function at<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  const found = map.get(key)
  if (found !== undefined) return found
  const made = make()
  map.set(key, made)
  return made
}
