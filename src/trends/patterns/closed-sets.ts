// Item sets that mean the same rows, put together: one closed set, and the shortest sets that pick it out.
import { type Bits, emptyBits, hashBits, intersect, sameBits, within } from './bitset.ts'
import type { ItemSet, Table } from './frequent-sets.ts'

export type ClosedSet = {
  /** All items that every one of these rows has; may be larger than the sets that were searched. */
  readonly closure: readonly number[]
  /** Sets with these rows of which no smaller part has them; shortest first. */
  readonly generators: readonly (readonly number[])[]
  readonly support: number
  readonly rows: Bits
}

type Group = { readonly rows: Bits; readonly support: number; readonly sets: (readonly number[])[] }

/**
 * Groups sets by their rows. `sets` must hold, with each set, all its parts, as `frequentSets` gives them. Generators after
 * Bastide et al. 2000 (from memory): no proper part with the same support.
 */
export function closedSets(table: Table, sets: readonly ItemSet[]): ClosedSet[] {
  const groups = new Map<number, Group[]>()
  const scratch = emptyBits(table.rows)
  for (const { items, support } of sets) {
    scratch.set(table.rowsOf[items[0]!]!)
    for (const item of items.slice(1)) intersect(scratch, table.rowsOf[item]!, scratch)
    const hash = hashBits(scratch)
    let sameHash = groups.get(hash)
    if (sameHash === undefined) {
      sameHash = []
      groups.set(hash, sameHash)
    }
    const group = sameHash.find(g => g.support === support && sameBits(g.rows, scratch))
    if (group === undefined) sameHash.push({ rows: scratch.slice(), support, sets: [items] })
    else group.sets.push(items)
  }
  return [...groups.values()].flat().map(({ rows, support, sets: sameRows }) => ({
    closure: table.items.flatMap((_, item) => (within(rows, table.rowsOf[item]!) ? [item] : [])),
    generators: leastSets(sameRows),
    support,
    rows,
  }))
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
