// What a closed week may change of a family's numbers: nothing for fewer than five people, verdicts first, and never so much that cells tell of each other.
import { describe, expect, test } from 'vitest'
import { sortCounts, type WeekCount } from '../../../src/trends/counts.ts'
import { openFamily } from '../../../src/trends/release/open-family.ts'
import type { FamilyState } from '../../../src/trends/release/state.ts'
import type { Week } from '../../../src/trends/week.ts'

const week = '2026-W40'
const next = '2026-W41'
type Cell = readonly [WeekCount['facet'], string, number, Week?]
const rows = (cells: readonly Cell[]): WeekCount[] =>
  cells.map(([facet, value, reporters, at = week]) => ({ week: at, family: 'rook', facet, value, reporters }))
const opened = (cells: readonly Cell[], before?: FamilyState, at: Week = week) =>
  openFamily(before, sortCounts(rows(cells)).get('rook') ?? new Map(), at)
const shown = (state: FamilyState | undefined) =>
  Object.fromEntries(Object.entries(state?.cells ?? {}).map(([key, cell]) => [key, cell.shown]))

test('a family opens with five people, and again with five more', () => {
  expect(opened([['all', '', 4]])).toBeUndefined()
  const first = opened([
    ['all', '', 5],
    ['verdict', 'danger', 5],
  ])
  expect(first).toMatchObject({ opened: week })
  const four: Cell[] = [
    ['all', '', 5],
    ['verdict', 'danger', 5],
    ['all', '', 4, next],
    ['verdict', 'danger', 4, next],
  ]
  expect(opened(four, first, next)).toBe(first)
  const five: Cell[] = [
    ['all', '', 5],
    ['verdict', 'danger', 5],
    ['all', '', 5, next],
    ['verdict', 'danger', 5, next],
  ]
  expect(opened(five, first, next)).toMatchObject({
    opened: next,
    cells: { 'verdict:danger': { shown: 10, counted: 10 } },
  })
})

test('a cell is shown in fives once five people are in it', () => {
  const cells: Cell[] = [
    ['all', '', 16],
    ['verdict', 'danger', 12],
    ['verdict', 'open', 4],
  ]
  expect(shown(opened(cells))).toEqual({ 'verdict:danger': 10 })
})

test('no other cell shows more than the verdicts do together; where cells were bought, all of them together do not', () => {
  const verdicts: Cell[] = [
    ['all', '', 19],
    ['verdict', 'danger', 9],
    ['verdict', 'open', 4],
  ]
  expect(shown(opened([...verdicts, ['rule', 'legs', 5], ['rule', 'code', 10]]))).toEqual({
    ...{ 'verdict:danger': 5, 'rule:legs': 5 },
  })
  expect(shown(opened([...verdicts, ['bought', 'market', 5], ['bought', 'shop', 5]]))).toEqual({
    ...{ 'verdict:danger': 5, 'bought:market': 5 },
  })
})

describe('cells that are as full as can be', () => {
  const full = (facet: 'rule' | 'bought', count: number, each = 4): Cell[] =>
    Array.from({ length: count }, (_, i) => [facet, `v${i}`, each] as const)
  const whole: Cell[] = [
    ['all', '', 20],
    ['verdict', 'danger', 20],
  ]
  test.each(['rule', 'bought'] as const)('five of one kind (%s) tell of each other: the family waits', facet => {
    expect(opened([...whole, ...full(facet, 5)])).toBeUndefined()
    // One less, or one that may hold more: nobody can be told.
    expect(opened([...whole, ...full(facet, 4)])).toBeDefined()
    expect(opened([...whole, ...full(facet, 4), [facet, 'v4', 3]])).toBeDefined()
  })
  test('of two kinds do not', () => {
    expect(opened([...whole, ...full('rule', 4), ['bought', 'a', 4]])).toBeDefined()
  })
  test('hold four more than they show, shown this week or not', () => {
    // Nine are "at least five": four more. Shown the week before, with four since, they are as full again.
    const nines = full('rule', 5, 9)
    expect(opened([['all', '', 45], ['verdict', 'danger', 45], ...nines])).toBeUndefined()
    const tens = full('rule', 5, 10)
    expect(opened([['all', '', 50], ['verdict', 'danger', 50], ...tens])).toBeDefined()
  })
})
