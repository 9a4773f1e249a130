// The file's own count of the charge, held against what its currents add up to: it tells in which unit these are logged.

import { unitsWritten } from '../typed/units.ts'
import type { LogAnswers } from './answers.ts'
import { unitOfColumn } from './cell-units.ts'
import type { DecimalMark } from './number-cell.ts'
import type { Column } from './table-shape.ts'

/** A column that counts the charge, and what its numbers are to be multiplied by to be mAh. */
export type CounterColumn = { readonly column: number; readonly unit: string; readonly toMilliampereHours: number }

const ofDischarge = /dis|entlad|descarg|decharg/i

/** The column that counts charge in a unit that is written; of several, the one that names the discharge, else the first. */
export function counterColumn(
  columns: readonly Column[],
  mark: DecimalMark,
  taken: LogAnswers['columns'],
): CounterColumn | null {
  const used = new Set(Object.values(taken ?? {}))
  const counting = columns.flatMap((column, at): (CounterColumn & { readonly label: string })[] => {
    if (column.header.role !== 'capacity' || used.has(at)) return []
    const unit = unitOfColumn(column, mark)
    const known = unitsWritten(unit).find(each => each.measures === 'capacity')
    return known ? [{ column: at, unit, toMilliampereHours: known.factor, label: column.label }] : []
  })
  return counting.find(({ label }) => ofDischarge.test(label)) ?? counting[0] ?? null
}

export type ChargeCount = {
  /** Takes the next count, in file order; NaN where a row has none. */
  push(value: number): void
  /** What was counted in all, over every restart of the counter; null where nothing was. */
  total(): number | null
}

/** Adds up the steps of a counter. A file whose newest row comes first counts downwards; a restart is a step the other way. */
export function chargeCount(): ChargeCount {
  let [before, up, down] = [Number.NaN, 0, 0]
  return {
    push(value) {
      if (value > before) up += value - before
      else if (value < before) down += before - value
      if (!Number.isNaN(value)) before = value
    },
    total: () => (up > 0 || down > 0 ? Math.max(up, down) : null),
  }
}

/** How far the two counts may lie apart and still be the same, or the same but for a power of ten. */
const roundedBy = 0.1

/** The power of ten by which the file's count lies over ours (under, if negative); 0 where they agree, null where they cannot be compared. */
export function powerBetween(counted_mAh: number | null, ours_mAh: number): number | null {
  if (counted_mAh === null || !(counted_mAh >= 1) || !(ours_mAh > 0)) return null
  const ratio = counted_mAh / ours_mAh
  const power = Math.round(Math.log10(ratio))
  return Math.abs(power) <= 3 && Math.abs(ratio / 10 ** power - 1) <= roundedBy ? power : null
}
