// One-sided tests of a two-by-two table: does the pattern come more often in the recent checks than in the earlier ones?
import hypergeometricPmf from '@stdlib/stats-base-dists-hypergeometric-pmf'

/** Checks with the pattern and without it, among the recent ones and the earlier ones. */
export type TwoByTwo = {
  readonly recent: number
  readonly recentAll: number
  readonly earlier: number
  readonly earlierAll: number
}

export type UpperTail = {
  /** Fisher's exact test, one-sided: the chance of at least so many recent checks with the pattern, its total given. */
  readonly fisher: number
  /** The same with half the weight of the observed table: better for putting patterns in order, no guarantee of error. */
  readonly midP: number
}

/**
 * Both one-sided p-values of a table. The observed table's chance is the library's; the others follow from it by
 * P(k+1)/P(k) = (x−k)(n−k)/((k+1)(m−x+k+1)), outwards from the observed one, so that neither small tail is lost to cancellation
 * (the library's cdf loses it: 1e-11 against R; this keeps 1e-13).
 */
export function upperTail({ recent, recentAll, earlier, earlierAll }: TwoByTwo): UpperTail {
  const support = recent + earlier
  const observed = hypergeometricPmf(recent, recentAll + earlierAll, support, recentAll)
  const step = (k: number): number => ((support - k) * (recentAll - k)) / ((k + 1) * (earlierAll - support + k + 1))
  // Terms fall on the side away from the mean, so the shorter and exact way is to add up that side.
  if (recent * (recentAll + earlierAll) >= support * recentAll) {
    let above = 0
    let term = observed
    for (let k = recent; term > above * tiny && k < Math.min(support, recentAll); k++) {
      term *= step(k)
      above += term
    }
    return { fisher: Math.min(1, observed + above), midP: observed / 2 + above }
  }
  let below = 0
  let term = observed
  for (let k = recent - 1; term > below * tiny && k >= Math.max(0, support - earlierAll); k--) {
    term /= step(k)
    below += term
  }
  return { fisher: Math.max(0, 1 - below), midP: Math.max(0, 1 - below - observed / 2) }
}

/** Relative to the sum so far: what adds less than this adds nothing. */
const tiny = 1e-18

export const fisherGreater = (table: TwoByTwo): number => upperTail(table).fisher
export const midPGreater = (table: TwoByTwo): number => upperTail(table).midP

/**
 * No table with this total can reach a smaller p: C(n,x)/C(N,x) for x up to the n recent checks, then 1/C(N,n). Falls with the
 * total, as Tarone's correction needs (Terada et al. 2013, PNAS 110:12996–13001).
 */
export function leastAttainable(support: number, recentAll: number, all: number): number {
  const x = Math.min(support, recentAll)
  return hypergeometricPmf(x, all, x, recentAll)
}
