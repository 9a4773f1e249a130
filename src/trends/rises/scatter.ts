// Whether failures scatter more from week to week than chance alone would make them.
import chisquareCdf from '@stdlib/stats-base-dists-chisquare-cdf'
import type { Baseline } from './baseline.ts'
import type { Scatter } from './cusum.ts'

/** The spread assumed once scatter is too wide for Poisson; keeps false alarms rare in the clustered weeks of `tests/bench/trends.ts`. */
export const usualSpread = 0.3
/** Scatter is called too wide when chance alone would make it so wide this rarely. */
const level = 0.05

export type Dispersion = { readonly statistic: number; readonly freedom: number; readonly p: number }

/**
 * Fisher's index of dispersion, Σ(x−μ)²/μ against chi-squared with one degree of freedom less than weeks, μ being each week's share of
 * the failures by its checks. Weeks without checks say nothing. p is the chance of at least this much scatter.
 */
export function dispersionOf({ failed, checks, weeks }: Baseline): Dispersion {
  let statistic = 0
  let freedom = -1
  for (const week of weeks) {
    if (week.checks === 0) continue
    const mu = (failed / checks) * week.checks
    freedom++
    if (mu > 0) statistic += (week.failed - mu) ** 2 / mu
  }
  return { statistic, freedom, p: freedom < 1 ? 1 : 1 - chisquareCdf(statistic, freedom) }
}

/** The scatter to watch a series with. */
export function scatterOf(baseline: Baseline): Scatter {
  return dispersionOf(baseline).p < level ? { form: 'negative-binomial', spread: usualSpread } : { form: 'poisson' }
}
