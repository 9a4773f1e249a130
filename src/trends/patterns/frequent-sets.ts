// Sets of items that come together often enough, by recursion over the rows each item is in.
import { atOnce, mostAtATime, type Slices } from '../slices.ts'
import { type Bits, countBits, emptyBits, hasBit, intersect, listOf, lowestBit, setBit } from './bitset.ts'

/** The rows of each item. Items that `first` picks come before the others; either kind is in the order of its names. */
export type Table<I extends string = string> = {
  readonly rows: number
  readonly items: readonly I[]
  readonly rowsOf: readonly Bits[]
  /** 1 for each marked row. */
  readonly marked: Uint8Array
}

export type ItemSet = {
  /** Indices into the table's items, rising. */
  readonly items: readonly number[]
  /** How many rows have all of the items, and how many of these are marked. */
  readonly support: number
  readonly marked: number
  /** The same for sets with the same rows; for others it is another, but once in some 10^15 pairs. */
  readonly print: number
}

/** Turns rows of items into a table. An item twice in a row counts once. */
export const tableOf = <I extends string>(
  rows: readonly (readonly I[])[],
  marked?: (row: number) => boolean,
  first?: (item: I) => boolean,
): Table<I> => atOnce(tableInSlices(rows, marked, first))

export function* tableInSlices<I extends string>(
  rows: readonly (readonly I[])[],
  marked: (row: number) => boolean = () => false,
  first: (item: I) => boolean = () => false,
): Slices<Table<I>> {
  let work = 0
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
    // Looking an item up costs more than going over a word.
    work += 10 * row.length
    if (work > mostAtATime) {
      yield work
      work = 0
    }
  }
  yield work
  const names = [...found.keys()].sort()
  const items = [...names.filter(first), ...names.filter(item => !first(item))]
  return {
    rows: rows.length,
    items,
    rowsOf: items.map(item => found.get(item)!),
    marked: Uint8Array.from(rows, (_, row) => (marked(row) ? 1 : 0)),
  }
}

type Open = { readonly item: number; readonly rows: Bits; readonly support: number }

/**
 * Every set of one to `largest` items with at least `leastSupport` rows (one or more), each exactly once. A set with too few rows has
 * no superset with enough, so the recursion stops there; `largest` under 1 finds nothing. `roots`: only sets that hold one of the
 * first so many items.
 */
export const frequentSets = (table: Table, leastSupport: number, largest: number, roots?: number): ItemSet[] =>
  atOnce(frequentSetsInSlices(table, leastSupport, largest, roots))

export function* frequentSetsInSlices(
  table: Table,
  leastSupport: number,
  largest: number,
  roots: number = table.items.length,
): Slices<ItemSet[]> {
  /** Since the last pause. */
  let work = 0
  const sets: ItemSet[] = []
  const keys = Array.from({ length: 2 }, (_, salt) => Uint32Array.from({ length: table.rows }, (_, i) => mix(i, salt)))
  const [high, low] = keys as [Uint32Array, Uint32Array]
  const frequent = table.rowsOf.flatMap((rows, item) => {
    const support = countBits(rows)
    return support >= leastSupport ? [{ item, rows, support }] : []
  })
  for (const [i, root] of frequent.entries()) {
    if (root.item >= roots || largest < 1) break
    // From here on only this item's rows count: the sets below it are told apart on bits of their own, as few as it has rows.
    const own = listOf(root.rows, root.support)
    const scratch = emptyBits(own.length)
    const add = (items: readonly number[], rows: Bits, support: number) => {
      let [one, other, marked] = [0, 0, 0]
      for (let at = 0; at < rows.length; at++) {
        for (let word = rows[at]!; word !== 0; word &= word - 1) {
          const row = own[(at << 5) + lowestBit(word)]!
          one = (one + high[row]!) | 0
          other = (other + low[row]!) | 0
          marked += table.marked[row]!
        }
      }
      work += support + rows.length
      sets.push({ items, support, marked, print: (one >>> 0) * 0x20_0000 + (other >>> 11) })
    }
    function* extend(items: readonly number[], rows: Bits, later: readonly Open[]): Slices<void> {
      const kept: Open[] = []
      for (const { item, rows: others } of later) {
        if (work > mostAtATime) {
          yield work
          work = 0
        }
        work += scratch.length
        const support = intersect(rows, others, scratch)
        if (support < leastSupport) continue
        add([...items, item], scratch, support)
        // Nothing is built on sets of the largest size: their rows need not be kept.
        if (items.length + 1 < largest) kept.push({ item, rows: scratch.slice(), support })
      }
      for (const [k, { item, rows: both }] of kept.entries()) yield* extend([...items, item], both, kept.slice(k + 1))
    }
    const all = among(own, root.rows)
    add([root.item], all, root.support)
    if (largest < 2) continue
    const later = frequent.slice(i + 1).map(other => ({ ...other, rows: among(own, other.rows) }))
    work += later.length * own.length
    yield* extend([root.item], all, later)
  }
  yield work
  return sets
}

/** The rows of `list` that are in `rows`, as bits counted along the list. */
function among(list: Uint32Array, rows: Bits): Bits {
  const bits = emptyBits(list.length)
  for (let at = 0; at < list.length; at++) if (hasBit(rows, list[at]!)) setBit(bits, at)
  return bits
}

/** Scatters an index over 32 bits (the finaliser of MurmurHash3). */
function mix(index: number, salt: number): number {
  let h = Math.imul(index + 1, 0x9e3779b1) ^ Math.imul(salt + 1, 0x7f4a7c15)
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b)
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35)
  return (h ^ (h >>> 16)) >>> 0
}
