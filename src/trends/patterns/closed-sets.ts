// Item sets that mean the same rows, put together: one closed set, and the shortest sets that pick it out.
import { atOnce, mapInSlices, type Slices } from '../slices.ts'
import { type Bits, intersect, within } from './bitset.ts'
import type { ItemSet, Table } from './frequent-sets.ts'

export type ClosedSet = {
  /** Sets with these rows of which no smaller part has them; shortest first. */
  readonly generators: readonly (readonly number[])[]
  readonly support: number
  /** How many of the rows are marked. */
  readonly marked: number
}

/** Putting a set where it belongs is as much work as so many words of bits. */
const eachSet = 50

/**
 * Groups sets by their rows. `sets` must hold, with each set, all its parts (those with a root, if only such are searched), as
 * `frequentSets` gives them. Generators after Bastide et al. 2000 (from memory): no proper part with the same support.
 */
export const closedSets = (sets: readonly ItemSet[]): ClosedSet[] => atOnce(closedInSlices(sets))

export function* closedInSlices(sets: readonly ItemSet[]): Slices<ClosedSet[]> {
  const groups = new Map<number, ItemSet[]>()
  yield* mapInSlices(sets, eachSet, set => {
    const group = groups.get(set.print)
    if (group === undefined) groups.set(set.print, [set])
    else group.push(set)
  })
  return yield* mapInSlices([...groups.values()], eachSet, group => ({
    generators: group.length === 1 ? [group[0]!.items] : leastSets(group.map(set => set.items)),
    support: group[0]!.support,
    marked: group[0]!.marked,
  }))
}

/** All items that every row with these items has; may be larger than the sets that were searched. */
export function closureOf(table: Table, items: readonly number[]): number[] {
  const rows: Bits = table.rowsOf[items[0]!]!.slice()
  for (const item of items.slice(1)) intersect(rows, table.rowsOf[item]!, rows)
  return table.items.flatMap((_, item) => (within(rows, table.rowsOf[item]!) ? [item] : []))
}

/** The sets that contain no other of the sets, shortest first. A part with the same support is in the same group. */
function leastSets(sets: readonly (readonly number[])[]): (readonly number[])[] {
  const least: (readonly number[])[] = []
  for (const set of [...sets].sort((a, b) => a.length - b.length || inOrder(a, b))) {
    if (!least.some(part => part.every(item => set.includes(item)))) least.push(set)
  }
  return least
}

function inOrder(a: readonly number[], b: readonly number[]): number {
  const i = a.findIndex((item, at) => item !== b[at])
  return i < 0 ? 0 : a[i]! - (b[i] ?? -1)
}
