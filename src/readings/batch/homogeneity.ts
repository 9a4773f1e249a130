// Tests of whether values come from one population of known spread: chi-square, range, and two clusters.
import chiSquareCdf from '@stdlib/stats-base-dists-chisquare-cdf'
import normalCdf from '@stdlib/stats-base-dists-normal-cdf'

/** Sum of squared deviations over the known variance, with the probability that chance alone makes it as large. */
export type ChiSquare = { readonly statistic: number; readonly degreesOfFreedom: number; readonly p: number }

/** T = Σ(x − x̄)²/σ₀² on n − 1 degrees of freedom (a textbook test of a variance that is known). At least two values; σ₀ in their unit. */
export function chiSquare(values: readonly number[], sigma: number): ChiSquare {
  const mean = meanOf(values)
  const statistic = values.reduce((sum, value) => sum + ((value - mean) / sigma) ** 2, 0)
  const degreesOfFreedom = values.length - 1
  // On two degrees of freedom the tail is exactly e^(−T/2), which keeps the small ones that 1 − F would lose.
  const p = degreesOfFreedom === 2 ? Math.exp(-statistic / 2) : 1 - chiSquareCdf(statistic, degreesOfFreedom)
  return { statistic, degreesOfFreedom, p }
}

/**
 * Probability that the range of n values of a normal population of standard deviation 1 is at most w:
 * n ∫ φ(z) [Φ(z + w) − Φ(z)]^(n − 1) dz (Tippett 1925, from memory). n from 2 on.
 */
export function rangeCdf(w: number, n: number): number {
  if (w <= 0) return 0
  const [from, to, steps] = [-8, 8, 320]
  const h = (to - from) / steps
  const at = (z: number) => {
    const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)
    return density * (normalCdf(z + w, 0, 1) - normalCdf(z, 0, 1)) ** (n - 1)
  }
  // Simpson's rule; the ends lie where the density is 10^-14.
  let sum = at(from) + at(to)
  for (let step = 1; step < steps; step++) sum += (step % 2 === 0 ? 2 : 4) * at(from + step * h)
  return Math.min(1, (n * sum * h) / 3)
}

const quantiles = new Map<string, number>()
const mostQuantiles = 500

/** The range that n values of standard deviation 1 stay within with probability p (0 to 1), to 10^-6. */
export function rangeQuantile(p: number, n: number): number {
  const key = `${p} ${n}`
  const known = quantiles.get(key)
  if (known !== undefined) return known
  const quantile = findQuantile(p, n)
  if (quantiles.size >= mostQuantiles) quantiles.clear()
  quantiles.set(key, quantile)
  return quantile
}

function findQuantile(p: number, n: number): number {
  let [low, high] = [0, 20]
  while (high - low > 1e-6) {
    const middle = (low + high) / 2
    if (rangeCdf(middle, n) < p) low = middle
    else high = middle
  }
  return (low + high) / 2
}

export type Clusters = {
  /** Places of the values in the order they were given in. */
  readonly low: readonly number[]
  readonly high: readonly number[]
  readonly gap: number
}

/** Fewer values can fall into two by chance. */
const fewestForClusters = 6

/** Two groups, where the widest gap between neighbours is over 3 σ₀ and at least two values lie on either side; null otherwise. */
export function twoClusters(values: readonly number[], sigma: number): Clusters | null {
  if (values.length < fewestForClusters) return null
  const order = values.map((_, at) => at).sort((a, b) => values[a]! - values[b]!)
  let best: Clusters | null = null
  for (let split = 2; split <= order.length - 2; split++) {
    const gap = values[order[split]!]! - values[order[split - 1]!]!
    if (gap > 3 * sigma && gap > (best?.gap ?? 0))
      best = { low: order.slice(0, split).sort((a, b) => a - b), high: order.slice(split).sort((a, b) => a - b), gap }
  }
  return best
}

export const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length
