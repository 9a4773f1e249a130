// Patterns that rise: items that go together far more often in the recent checks than before.

import { atOnce, mapInSlices, type Slices } from '../slices.ts'
import { leastAttainable, type TwoByTwo, upperTail } from '../stats/two-by-two.ts'
import { closedInSlices, closureOf } from './closed-sets.ts'
import { frequentSetsInSlices, tableInSlices } from './frequent-sets.ts'
import { taroneFactor } from './tarone.ts'

export type Row<I extends string = string> = { readonly items: readonly I[]; readonly recent: boolean }

export type RisingPattern<I extends string = string> = {
  readonly closure: readonly I[]
  readonly generators: readonly (readonly I[])[]
  readonly recent: number
  readonly earlier: number
  /** How many times as common as before: 'new' if it never was there before, 0 if it is not there now. */
  readonly growth: number | 'new'
  /** One-sided Fisher, and the mid-p patterns are ordered by. */
  readonly p: number
  readonly midP: number
  /** p at most level/k. */
  readonly significant: boolean
}

export type Mined<I extends string = string> = {
  readonly recentAll: number
  readonly earlierAll: number
  /** Tarone's k; how many patterns could reach level/k at all. */
  readonly factor: number
  readonly testable: number
  /** Surest first. */
  readonly patterns: readonly RisingPattern<I>[]
}

export type MiningOptions = {
  readonly largest?: number
  /** Rows a pattern must have, recent and earlier together. */
  readonly leastSupport?: number
  readonly level?: number
}

/** What is looked for, and what counts without being listed. */
export type Among<I extends string> = {
  /** Only sets that hold an item of this kind are searched and paid for. */
  readonly root?: (item: I) => boolean
  /** Rows beside those that are listed, none of which has a root. */
  readonly recent?: number
  readonly earlier?: number
  /** Lists only what is significant and has become more common. */
  readonly risenOnly?: boolean
}

/**
 * Mines rows for patterns of up to three items. All patterns with enough rows are found and tested, those that fell included; support
 * does not depend on which rows are recent, so asking for it first costs no error. Growth after Dong & Li 1999.
 */
export function minePatterns<I extends string>(rows: readonly Row<I>[], options: MiningOptions = {}): Mined<I> {
  const { patterns, ...counts } = searchPatterns(rows, options)
  return { ...counts, patterns: [...patterns] }
}

/** A set that is tested is as much work as so many words of bits. */
const eachSet = 100

/** The same, with each pattern named only when it is asked for: of thousands few are looked at. */
export const searchPatterns = <I extends string>(rows: readonly Row<I>[], options?: MiningOptions, among?: Among<I>) =>
  atOnce(searchInSlices(rows, options, among))

export function* searchInSlices<I extends string>(
  rows: readonly Row<I>[],
  { largest = 3, leastSupport = 5, level = 0.05 }: MiningOptions = {},
  { root, recent: recentBeside = 0, earlier: earlierBeside = 0, risenOnly = false }: Among<I> = {},
): Slices<Omit<Mined<I>, 'patterns'> & { readonly patterns: Iterable<RisingPattern<I>> }> {
  const table = yield* tableInSlices(
    rows.map(row => row.items),
    row => rows[row]!.recent,
    root,
  )
  const recentListed = rows.filter(row => row.recent).length
  const recentAll = recentListed + recentBeside
  const earlierAll = rows.length - recentListed + earlierBeside
  const roots = root === undefined ? undefined : table.items.filter(root).length
  const closed = yield* closedInSlices(yield* frequentSetsInSlices(table, Math.max(1, leastSupport), largest, roots))
  const leastOf = remember((support: number) => leastAttainable(support, recentAll, recentAll + earlierAll))
  const least = yield* mapInSlices(closed, eachSet, set => leastOf(set.support))
  const factor = taroneFactor(least, level)

  const countsOf = (recent: number, support: number): TwoByTwo => ({
    recent,
    recentAll,
    earlier: support - recent,
    earlierAll,
  })
  const tailOf = remember((key: number) =>
    upperTail(countsOf(key % (recentAll + 1), Math.floor(key / (recentAll + 1)))),
  )
  const tested = yield* mapInSlices(closed, eachSet, set => {
    const counts = countsOf(set.marked, set.support)
    const { fisher: p, midP } = tailOf(set.support * (recentAll + 1) + set.marked)
    return { set, counts, growth: growthOf(counts), p, midP, significant: p <= level / factor }
  })
  const listed = risenOnly ? tested.filter(one => one.significant && (one.growth === 'new' || one.growth > 1)) : tested
  const name = (items: readonly number[]): I[] => items.map(item => table.items[item]!)
  // The order is stable: of equally sure ones, those whose items come first.
  listed.sort((a, b) => a.midP - b.midP)
  function* patterns(): Generator<RisingPattern<I>> {
    for (const { set, counts, growth, p, midP, significant } of listed)
      yield {
        closure: name(closureOf(table, set.generators[0]!)),
        generators: set.generators.map(name),
        recent: counts.recent,
        earlier: counts.earlier,
        growth,
        p,
        midP,
        significant,
      }
  }
  return {
    recentAll,
    earlierAll,
    factor,
    testable: least.filter(f => f <= level / factor).length,
    patterns: patterns(),
  }
}

/** Works each out once: most sets share their counts with many others. */
function remember<T>(work: (key: number) => T): (key: number) => T {
  const known = new Map<number, T>()
  return key => {
    const value = known.get(key) ?? work(key)
    known.set(key, value)
    return value
  }
}

function growthOf(n: TwoByTwo): number | 'new' {
  if (n.recent === 0) return 0
  return n.earlier === 0 ? 'new' : n.recent / n.recentAll / (n.earlier / n.earlierAll)
}
