// Detection on a series someone brings: the room's own methods, open to be held against other libraries.
import { baselineOf, expectedOf, leastHistory } from './rises/baseline.ts'
import { runCusum, type Scatter, usualWatch } from './rises/cusum.ts'
import { usualSpread } from './rises/scatter.ts'
import { foresee, spikeBound, spikeGap, spikeLevel, spikeWeeks } from './rises/spike.ts'

export type Series = {
  /** Failures a week. */
  readonly observed: readonly number[]
  /** Checks a week; one each if left out, so that nothing is corrected for growth. */
  readonly checks?: readonly number[]
} & (
  | {
      readonly method: 'lr-cusum'
      readonly scatter?: 'poisson' | 'negative-binomial'
      /** Variance μ + spread·μ². */
      readonly spread?: number
      readonly kappa?: number
      readonly threshold?: number
      /** Expected failures a week; worked out from the weeks before where left out. */
      readonly expected?: readonly number[]
    }
  | {
      readonly method: 'spike'
      readonly level?: number
      /** Weeks in the baseline, and how many weeks back it ends (1: the week before). */
      readonly weeks?: number
      readonly gap?: number
    }
)

/** One entry a week; null where there is nothing to judge by yet. `expected` is the bound for a spike. */
export type Detected = {
  readonly statistic: readonly (number | null)[]
  readonly expected: readonly (number | null)[]
  /** Weeks with an alarm, counted from 1. */
  readonly alarms: readonly number[]
}

export type DetectRefusal =
  | { readonly code: 'not-counts'; readonly field: 'observed' | 'checks' | 'expected'; readonly week: number }
  | {
      readonly code: 'other-length'
      readonly field: 'checks' | 'expected'
      readonly weeks: number
      readonly of: number
    }
  | { readonly code: 'out-of-range'; readonly field: string; readonly least: number; readonly most: number }
  | { readonly code: 'too-long'; readonly weeks: number; readonly most: number }

export type DetectResult =
  | { readonly ok: true; readonly detected: Detected }
  | { readonly ok: false; readonly refusal: DetectRefusal }

/** Two centuries of weeks. */
const mostWeeks = 10_000

/** Runs one method over a series. */
export function detect(series: Series): DetectResult {
  const refusal = refuse(series)
  if (refusal !== undefined) return { ok: false, refusal }
  const checks = series.checks ?? series.observed.map(() => 1)
  return { ok: true, detected: series.method === 'spike' ? spikes(series, checks) : rises(series, checks) }
}

function rises(series: Series & { method: 'lr-cusum' }, checks: readonly number[]): Detected {
  const { observed, kappa = usualWatch.kappa, threshold = usualWatch.threshold } = series
  const scatter: Scatter =
    series.scatter === 'negative-binomial'
      ? { form: 'negative-binomial', spread: series.spread ?? usualSpread }
      : { form: 'poisson' }
  const expected: (number | null)[] =
    series.expected?.slice() ??
    observed.map((_, t) =>
      t < leastHistory ? null : (expectedOf(baselineOf(observed, checks, t), checks[t]!) ?? null),
    )
  const start = expected.findIndex(mu => mu !== null)
  const from = start < 0 ? observed.length : start
  const run = runCusum(
    observed.slice(from),
    expected.slice(from).map(mu => mu ?? 0),
    { kappa, threshold },
    scatter,
  )
  return {
    statistic: [...observed.slice(0, from).map(() => null), ...run.statistic],
    expected,
    alarms: run.alarm.flatMap((alarm, i) => (alarm ? [from + i + 1] : [])),
  }
}

function spikes(series: Series & { method: 'spike' }, checks: readonly number[]): Detected {
  const { observed, level = spikeLevel, weeks = spikeWeeks, gap = spikeGap } = series
  const bounds = observed.map((_, t) => {
    // With the whole baseline only: a bound from fewer weeks would be another method.
    if (t - gap - weeks + 1 < 0) return null
    const before = baselineOf(observed, checks, t, gap, weeks)
    const foreseen = foresee(before.failed, before.checks, checks[t]!)
    return foreseen === undefined ? null : spikeBound(foreseen, level)
  })
  return {
    statistic: [...observed],
    expected: bounds,
    alarms: bounds.flatMap((bound, t) => (bound !== null && observed[t]! > bound ? [t + 1] : [])),
  }
}

function refuse(series: Series): DetectRefusal | undefined {
  const { observed, checks } = series
  const expected = series.method === 'lr-cusum' ? series.expected : undefined
  if (observed.length > mostWeeks) return { code: 'too-long', weeks: observed.length, most: mostWeeks }
  const bad = (list: readonly number[], whole: boolean) =>
    list.findIndex(x => !Number.isFinite(x) || x < 0 || x > 1e9 || (whole && !Number.isInteger(x)))
  for (const [field, list] of [
    ['observed', observed],
    ['checks', checks],
    ['expected', expected],
  ] as const) {
    if (list === undefined) continue
    const at = bad(list, field !== 'expected')
    if (at >= 0) return { code: 'not-counts', field, week: at + 1 }
    if (field !== 'observed' && list.length !== observed.length)
      return { code: 'other-length', field, weeks: list.length, of: observed.length }
  }
  const ranges: [string, number | undefined, number, number][] =
    series.method === 'spike'
      ? [
          ['level', series.level, 1e-12, 0.5],
          ['weeks', series.weeks, 1, 520],
          ['gap', series.gap, 1, 52],
        ]
      : [
          ['kappa', series.kappa, 1.01, 100],
          ['threshold', series.threshold, 0.01, 1000],
          ['spread', series.spread, 1e-9, 100],
        ]
  const out = ranges.find(([, value, least, most]) => value !== undefined && !(value >= least && value <= most))
  return out === undefined ? undefined : { code: 'out-of-range', field: out[0], least: out[2], most: out[3] }
}
