// One-sided tests of a two-by-two table: does the pattern come more often in the recent checks than in the earlier ones?
import hypergeometricPmf from '@stdlib/stats-base-dists-hypergeometric-pmf'

/** Checks with the pattern and without it, among the recent ones and the earlier ones. */
export type TwoByTwo = {
  readonly recent: number
  readonly recentAll: number
  readonly earlier: number
  readonly earlierAll: number
}

// The library's hypergeometric cdf loses the small upper tails to cancellation (1e-11 against R); its pmf summed from the far end
// keeps them to 5e-14.

/** Fisher's exact test, one-sided: the chance of at least so many recent checks with the pattern, its total given. */
export function fisherGreater({ recent, recentAll, earlier, earlierAll }: TwoByTwo): number {
  const support = recent + earlier
  let p = 0
  for (let k = Math.min(support, recentAll); k >= recent; k--)
    p += hypergeometricPmf(k, recentAll + earlierAll, support, recentAll)
  return Math.min(1, p)
}

/** The same with half the weight of the observed table: better for putting patterns in order, no guarantee of error. */
export function midPGreater(table: TwoByTwo): number {
  const { recent, recentAll, earlier, earlierAll } = table
  return fisherGreater(table) - hypergeometricPmf(recent, recentAll + earlierAll, recent + earlier, recentAll) / 2
}

/**
 * No table with this total can reach a smaller p: C(n,x)/C(N,x) for x up to the n recent checks, then 1/C(N,n). Falls with the
 * total, as Tarone's correction needs (Terada et al. 2013, PNAS 110:12996–13001).
 */
export function leastAttainable(support: number, recentAll: number, all: number): number {
  const x = Math.min(support, recentAll)
  return hypergeometricPmf(x, all, x, recentAll)
}
