// Patterns that rise: items that go together far more often in the recent checks than before.
import { leastAttainable, type TwoByTwo, upperTail } from '../stats/two-by-two.ts'
import { type Bits, countBoth, emptyBits, setBit } from './bitset.ts'
import { closedSets } from './closed-sets.ts'
import { frequentSets, tableOf } from './frequent-sets.ts'
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

/**
 * Mines rows for patterns of up to three items. All patterns with enough rows are found and tested, those that fell included; support
 * does not depend on which rows are recent, so asking for it first costs no error. Growth after Dong & Li 1999.
 */
export function minePatterns<I extends string>(
  rows: readonly Row<I>[],
  { largest = 3, leastSupport = 5, level = 0.05 }: MiningOptions = {},
): Mined<I> {
  const table = tableOf(rows.map(row => row.items))
  const recentRows = recentBits(rows)
  const recentAll = rows.filter(row => row.recent).length
  const earlierAll = rows.length - recentAll
  const closed = closedSets(table, frequentSets(table, Math.max(1, leastSupport), largest))
  const least = closed.map(set => leastAttainable(set.support, recentAll, rows.length))
  const factor = taroneFactor(least, level)
  const name = (items: readonly number[]): I[] => items.map(item => table.items[item]!)

  const patterns = closed.map(set => {
    const recent = countBoth(set.rows, recentRows)
    const counts = { recent, recentAll, earlier: set.support - recent, earlierAll }
    const { fisher: p, midP } = upperTail(counts)
    return {
      closure: name(set.closure),
      generators: set.generators.map(name),
      recent,
      earlier: counts.earlier,
      growth: growthOf(counts),
      p,
      midP,
      significant: p <= level / factor,
    }
  })
  patterns.sort((a, b) => a.midP - b.midP || (a.generators.join() < b.generators.join() ? -1 : 1))
  return { recentAll, earlierAll, factor, testable: least.filter(f => f <= level / factor).length, patterns }
}

function growthOf(n: TwoByTwo): number | 'new' {
  if (n.recent === 0) return 0
  return n.earlier === 0 ? 'new' : n.recent / n.recentAll / (n.earlier / n.earlierAll)
}

function recentBits(rows: readonly Row[]): Bits {
  const bits = emptyBits(rows.length)
  for (const [index, row] of rows.entries()) if (row.recent) setBit(bits, index)
  return bits
}
