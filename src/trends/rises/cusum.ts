// The likelihood-ratio CUSUM: adds up how much better "the rate is κ times as high" explains each week than "as usual".

/** How failures scatter around what is expected. */
export type Scatter =
  | { readonly form: 'poisson' }
  /** Variance μ + spread·μ². */
  | { readonly form: 'negative-binomial'; readonly spread: number }

export type Watch = {
  /** The rise looked for, as a factor on the rate. */
  readonly kappa: number
  /** Alarm from this statistic on. */
  readonly threshold: number
}

/** Doubling, and a threshold with about one false alarm in six years at one failure a week (`tests/bench/trends.ts`). */
export const usualWatch: Watch = { kappa: 2, threshold: 4 }

/**
 * One week's step of max(0, S + log likelihood ratio) for `x` failures where `mu` are expected. Höhle & Paul 2008, Comput. Stat.
 * Data Anal. 52:4357–4368: Poisson x·ln κ − μ(κ−1); negative binomial x·ln[κ(μ+r)/(κμ+r)] + r·ln[(μ+r)/(κμ+r)], r = 1/spread.
 */
export function cusumStep(before: number, x: number, mu: number, kappa: number, scatter: Scatter): number {
  if (scatter.form === 'poisson') return Math.max(0, before + x * Math.log(kappa) - mu * (kappa - 1))
  const r = 1 / scatter.spread
  const ratio = (mu + r) / (kappa * mu + r)
  return Math.max(0, before + x * Math.log(kappa * ratio) + r * Math.log(ratio))
}

export type CusumRun = { readonly statistic: readonly number[]; readonly alarm: readonly boolean[] }

/** Runs over a series with given expectations; starts again from zero after each alarm. */
export function runCusum(
  observed: readonly number[],
  expected: readonly number[],
  watch: Watch = usualWatch,
  scatter: Scatter = { form: 'poisson' },
): CusumRun {
  const statistic: number[] = []
  const alarm: boolean[] = []
  let s = 0
  for (const [i, x] of observed.entries()) {
    s = cusumStep(s, x, expected[i] ?? 0, watch.kappa, scatter)
    statistic.push(s)
    alarm.push(s >= watch.threshold)
    if (s >= watch.threshold) s = 0
  }
  return { statistic, alarm }
}
