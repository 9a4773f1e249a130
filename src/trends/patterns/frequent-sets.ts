// Sets of items that come together often enough, by recursion over the rows each item is in.
import { type Bits, countBoth, emptyBits, intersect, setBit } from './bitset.ts'

/** The rows of each item; items in the order of their names. */
export type Table<I extends string = string> = {
  readonly rows: number
  readonly items: readonly I[]
  readonly rowsOf: readonly Bits[]
}

export type ItemSet = {
  /** Indices into the table's items, rising. */
  readonly items: readonly number[]
  /** How many rows have all of the items. */
  readonly support: number
}

/** Turns rows of items into a table. An item twice in a row counts once. */
export function tableOf<I extends string>(rows: readonly (readonly I[])[]): Table<I> {
  const found = new Map<I, Bits>()
  for (const [index, row] of rows.entries()) {
    for (const item of row) {
      let bits = found.get(item)
      if (bits === undefined) {
        bits = emptyBits(rows.length)
        found.set(item, bits)
      }
      setBit(bits, index)
    }
  }
  const items = [...found.keys()].sort()
  return { rows: rows.length, items, rowsOf: items.map(item => found.get(item)!) }
}

type Open = { readonly item: number; readonly rows: Bits; readonly support: number }

/**
 * Every set of one to `largest` items with at least `leastSupport` rows (one or more), each exactly once. A set with too few rows has
 * no superset with enough, so the recursion stops there; `largest` under 1 finds nothing.
 */
export function frequentSets(table: Table, leastSupport: number, largest: number): ItemSet[] {
  const sets: ItemSet[] = []

  const extend = (items: readonly number[], rows: Bits, later: readonly Open[]) => {
    const last = items.length + 1 >= largest
    const kept: Open[] = []
    for (const { item, rows: own } of later) {
      // Sets of the largest size are only counted: nothing is built on their rows.
      const both = last ? own : emptyBits(table.rows)
      const support = last ? countBoth(rows, own) : intersect(rows, own, both)
      if (support >= leastSupport) kept.push({ item, rows: both, support })
    }
    go(items, kept)
  }
  const go = (items: readonly number[], kept: readonly Open[]) => {
    for (const [i, { item, rows, support }] of kept.entries()) {
      const set = [...items, item]
      sets.push({ items: set, support })
      if (set.length < largest && i + 1 < kept.length) extend(set, rows, kept.slice(i + 1))
    }
  }

  const all = emptyBits(table.rows).fill(0xffffffff)
  const single = table.rowsOf.map((rows, item) => ({ item, rows, support: countBoth(all, rows) }))
  if (largest >= 1)
    go(
      [],
      single.filter(open => open.support >= leastSupport),
    )
  return sets
}
