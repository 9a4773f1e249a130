// This week's spike: more failures than the weeks before let one foresee.
import betaCdf from '@stdlib/stats-base-dists-beta-cdf'
import negativeBinomialQuantile from '@stdlib/stats-base-dists-negative-binomial-quantile'

/** A spike is judged against 26 weeks that end three weeks back, at this level (simulated in `tests/bench/trends.ts`). */
export const spikeWeeks = 26
export const spikeGap = 3
export const spikeLevel = 0.005

/**
 * The predictive distribution of this week's failures is negative binomial, Gamma–Poisson with Jeffreys' prior: size Σ failed + ½,
 * probability Σ checks/(Σ checks + checks). With equal checks every week this is n/(n+1) over n weeks, as `bayes` of R's
 * surveillance has it (Höhle 2007, Comput. Stat. 22:571–582; from memory).
 */
export type Foreseen = { readonly size: number; readonly probability: number }

/** Undefined where there is nothing to foresee from: no check before, or none now. */
export function foresee(failed: number, checksBefore: number, checks: number): Foreseen | undefined {
  if (checksBefore <= 0 || checks <= 0) return undefined
  return { size: failed + 0.5, probability: checksBefore / (checksBefore + checks) }
}

/** The most failures still foreseen; more are a spike. */
export function spikeBound({ size, probability }: Foreseen, level: number = spikeLevel): number {
  return negativeBinomialQuantile(1 - level, size, probability)
}

/** The chance of `failed` failures or more: the regularised incomplete beta I(1−p; failed, size), exact in the far tail. */
export function chanceOfSoMany(failed: number, { size, probability }: Foreseen): number {
  return failed <= 0 ? 1 : betaCdf(1 - probability, failed, size)
}
