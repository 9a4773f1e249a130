// What a closed week may change of a family's shown numbers.
import { type CellKey, cellOf, type FamilyCounts, wholeFamily } from '../counts.ts'
import { downToFives, fewest, reportersIn } from '../fives.ts'
import type { Facet } from '../outcome-log.ts'
import type { Week } from '../week.ts'
import type { CellState, FamilyState } from './state.ts'

/**
 * Moves a family on to a week, or leaves it as it was. The family opens once five distinct reporters have come since it last
 * opened, so that nothing of it ever moves because of fewer. Then each cell with five distinct pending reporters takes them in and
 * shows its count rounded down to fives. Verdicts go first; a cell of another kind waits while it would show more than the
 * verdicts do together, since the excess would say how many verdicts are withheld.
 */
export function openFamily(before: FamilyState | undefined, counts: FamilyCounts, week: Week): FamilyState | undefined {
  if (reportersIn(cellOf(counts, wholeFamily), before?.opened ?? null, week).distinct < fewest) return before
  const cells: Record<CellKey, CellState> = { ...before?.cells }

  const takeIn = (facet: Facet, room: (cell: CellKey, shown: number) => boolean) => {
    for (const key of [...counts.keys()].filter(k => k.startsWith(`${facet}:`)).sort()) {
      const cell = cells[key]
      const pending = reportersIn(cellOf(counts, key), cell?.through ?? null, week)
      if (pending.distinct < fewest) continue
      const counted = (cell?.counted ?? 0) + pending.all
      const shown = downToFives(counted)
      if (room(key, shown)) cells[key] = { shown, counted, through: week }
    }
  }

  takeIn('verdict', () => true)
  const verdicts = shownOf(cells, 'verdict')
  takeIn('rule', (_, shown) => shown <= verdicts)
  takeIn('bought', (key, shown) => shownOf(cells, 'bought') - (cells[key]?.shown ?? 0) + shown <= verdicts)
  return { opened: week, cells }
}

/** What the cells of one facet show together. */
export function shownOf(cells: Readonly<Record<CellKey, CellState>>, facet: Facet): number {
  return Object.entries(cells).reduce((sum, [key, cell]) => sum + (key.startsWith(`${facet}:`) ? cell.shown : 0), 0)
}
