// Units written behind the numbers of a column: a meter that changes its range changes them from row to row.
import { unitsWritten } from '../typed/units.ts'
import type { Assigned } from './assign-columns.ts'
import { cellNumber, type DecimalMark } from './number-cell.ts'
import type { Column } from './table-shape.ts'

/** The unit a column is read in: the one behind its first number, else the one in its header; may be empty. */
export function unitOfColumn({ header, cells }: Column, mark: DecimalMark): string {
  const first = cells.find(cell => cell !== '')
  return (first && cellNumber(first, mark)?.unit) || header.unit
}

/** The unit of every column that is read as numbers, by column. */
export function unitsOfColumns(
  columns: readonly Column[],
  assigned: Assigned,
  mark: DecimalMark,
  counter: { readonly column: number } | null,
): Map<number, string> {
  const { time, voltage, current, temperature } = assigned
  const read = [
    time,
    voltage,
    current,
    ...(temperature === undefined ? [] : [temperature]),
    ...(counter ? [counter.column] : []),
  ]
  return new Map(read.map(column => [column, unitOfColumn(columns[column]!, mark)]))
}

/**
 * What a number with `unit` behind it is to be multiplied by in a column of unit `base`: 0.001 for "mA" among "A".
 *
 * No unit is the column's own. NaN where the two cannot be converted, as "V" among "A", or °F among °C.
 */
export function factorBetween(unit: string, base: string): number {
  if (unit === '' || unit === base) return 1
  for (const from of unitsWritten(unit)) {
    const to = unitsWritten(base).find(each => each.measures === from.measures)
    if (to && (from.offset ?? 0) === (to.offset ?? 0)) return from.factor / to.factor
  }
  return Number.NaN
}
