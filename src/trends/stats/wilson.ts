// The Wilson score interval of a proportion.
import normalQuantile from '@stdlib/stats-base-dists-normal-quantile'

export type Interval = { readonly low: number; readonly high: number }

/**
 * Wilson's interval for `k` of `n` (n > 0): (k + z²/2 ± z·√(k(n−k)/n + z²/4)) / (n + z²), Wilson 1927 as in Newcombe 1998,
 * Stat. Med. 17:857–872.
 * @param confidence share of intervals that hold the true proportion, 0.95 by default
 */
export function wilson(k: number, n: number, confidence = 0.95): Interval {
  const z = normalQuantile(1 - (1 - confidence) / 2, 0, 1)
  const middle = k + (z * z) / 2
  const half = z * Math.sqrt((k * (n - k)) / n + (z * z) / 4)
  return {
    low: k === 0 ? 0 : (middle - half) / (n + z * z),
    high: k === n ? 1 : (middle + half) / (n + z * z),
  }
}
