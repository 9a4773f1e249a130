// What a closed week may change of a family's shown numbers.

import type { Facet } from '../counts.ts'
import { type CellKey, cellOf, type FamilyCounts, wholeFamily } from '../counts.ts'
import { downToFives, minimumReporters, reportersIn } from '../fives.ts'
import type { Week } from '../week.ts'
import type { CellState, FamilyState } from './state.ts'

type Cells = Readonly<Record<CellKey, CellState>>

/**
 * Moves a family on to a week, or leaves it as it was. The family opens once five distinct reporters have come since it last
 * opened, so that nothing of it ever moves because of fewer. Then each cell with five distinct pending reporters takes them in and
 * shows its count rounded down to fives. Verdicts go first; a cell of another kind waits while it would show more than the
 * verdicts do together, since the excess would say how many verdicts are withheld.
 */
export function openFamily(before: FamilyState | undefined, counts: FamilyCounts, week: Week): FamilyState | undefined {
  if (reportersIn(cellOf(counts, wholeFamily), before?.opened ?? null, week).distinct < minimumReporters) return before
  const cells: Record<CellKey, CellState> = { ...before?.cells }

  const takeIn = (facet: Facet, room: (key: CellKey, shown: number) => boolean) => {
    for (const key of keysOf(counts, facet)) {
      const cell = cells[key]
      const pending = reportersIn(cellOf(counts, key), cell?.through ?? null, week)
      if (pending.distinct < minimumReporters) continue
      const counted = (cell?.counted ?? 0) + pending.all
      const shown = downToFives(counted)
      if (room(key, shown)) cells[key] = { shown, counted, through: week }
    }
  }

  takeIn('verdict', () => true)
  const verdicts = shownOf(cells, 'verdict')
  takeIn('rule', (_, shown) => shown <= verdicts)
  takeIn('bought', (key, shown) => shownOf(cells, 'bought') - (cells[key]?.shown ?? 0) + shown <= verdicts)
  return tellsTooMuch(cells, counts, week) ? before : { opened: week, cells }
}

/**
 * Someone who knows these rules knows that a cell holds at most four people more than it shows, and four more that are pending. If
 * just as many cells as it takes are that full, their excess adds up to a multiple of five that another table shows, and each is
 * told: twenty verdicts shown and five places withheld are four each. That takes five full cells of one kind; then the family
 * waits another week, which looks like a week without five new reporters.
 */
function tellsTooMuch(cells: Cells, counts: FamilyCounts, week: Week): boolean {
  const full = (key: CellKey): boolean => {
    const cell = cells[key]
    const excess = cell === undefined ? 0 : cell.counted - cell.shown
    const pending = reportersIn(cellOf(counts, key), cell?.through ?? null, week).all
    const most = minimumReporters - 1
    return cell === undefined || cell.through === week ? excess + pending === most : excess + pending === 2 * most
  }
  return (['rule', 'bought'] as const).some(facet => keysOf(counts, facet).filter(full).length >= minimumReporters)
}

/** What the cells of one facet show together. */
function shownOf(cells: Cells, facet: Facet): number {
  return Object.entries(cells).reduce((sum, [key, cell]) => sum + (key.startsWith(`${facet}:`) ? cell.shown : 0), 0)
}

const keysOf = (counts: FamilyCounts, facet: Facet): CellKey[] =>
  [...counts.keys()].filter(key => key.startsWith(`${facet}:`)).sort()
