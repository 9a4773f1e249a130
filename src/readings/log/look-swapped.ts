// Notices volts in the current column: columns that look swapped, or one written twice.
import { quantile } from '../discharge/trace.ts'
import type { LogQuestion } from './answers.ts'
import type { Assigned } from './assign-columns.ts'
import type { RawColumns } from './growing.ts'
import { choiceOf, firstRows, type TableShape } from './table-shape.ts'

/** A question if the columns cannot be what their headers say; works on raw values, in V and A or in mV and mA. */
export function lookSwapped(
  { voltage, current }: RawColumns,
  shape: TableShape,
  columns: Assigned,
): LogQuestion | null {
  const rows = voltage.length
  const spread = (column: Float64Array) => {
    const at = (p: number) => quantile(rows, row => Math.abs(column[row]!), p)
    return { low: at(0.05), middle: at(0.5), high: at(0.95) }
  }
  const [volts, amperes] = [spread(voltage), spread(current)]
  const same = quantile(rows, row => Math.abs(Math.abs(current[row]!) - Math.abs(voltage[row]!)), 0.9)
  const because =
    volts.middle > 0 && same <= 0.002 * volts.middle
      ? 'same-values'
      : looksLikeCell(amperes) && !looksLikeCell(volts) && volts.high > 0
        ? 'swapped'
        : null
  if (!because) return null
  return {
    code: 'columns-look-wrong',
    because,
    voltage: choiceOf(shape, columns.voltage),
    current: choiceOf(shape, columns.current),
    rows: firstRows(shape),
  }
}

/** Mostly between 2.3 and 4.4 V, and moving by more than a tenth of a volt: what a current seldom does. */
function looksLikeCell({ low, middle, high }: { low: number; middle: number; high: number }): boolean {
  const unit = middle > 100 ? 1000 : 1
  return low >= 2.3 * unit && high <= 4.4 * unit && high - low >= 0.1 * unit
}
