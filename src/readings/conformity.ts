// The probability that a measured value truly lies within its limits (JCGM 106:2012), for showing beside a zone.
import normalCdf from '@stdlib/stats-base-dists-normal-cdf'
import studentCdf from '@stdlib/stats-base-dists-t-cdf'

export type Conformity = {
  readonly value: number
  /** Standard uncertainty, same unit; must be above 0. */
  readonly u: number
  /** Tolerance limits, same unit; leave one out for a one-sided tolerance. */
  readonly lower?: number
  readonly upper?: number
  /** Effective degrees of freedom of u; left out means u is taken as known (normal distribution). */
  readonly degreesOfFreedom?: number
}

/**
 * Conformance probability p_c = F((T_U − y)/u) − F((T_L − y)/u), F normal or Student's t; between 0 and 1.
 *
 * It is shown, never used to decide: `zone` decides. Source: JCGM 106:2012 clause 7.
 */
export function conformanceProbability({ value, u, lower, upper, degreesOfFreedom }: Conformity): number {
  const cdf = (z: number) => (degreesOfFreedom === undefined ? normalCdf(z, 0, 1) : studentCdf(z, degreesOfFreedom))
  // A lower limit alone keeps its small tail, which 1 − F would lose.
  if (upper === undefined) return lower === undefined ? 1 : cdf((value - lower) / u)
  return cdf((upper - value) / u) - (lower === undefined ? 0 : cdf((lower - value) / u))
}

/**
 * Effective degrees of freedom of a combined uncertainty: u_c⁴ / Σ(u_i⁴/ν_i), Welch–Satterthwaite, JCGM 100:2008 G.4.
 */
export function effectiveDegreesOfFreedom(
  parts: readonly { readonly u: number; readonly degreesOfFreedom: number }[],
): number {
  const total = parts.reduce((sum, part) => sum + part.u ** 2, 0)
  return total ** 2 / parts.reduce((sum, part) => sum + part.u ** 4 / part.degreesOfFreedom, 0)
}
