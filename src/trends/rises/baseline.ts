// What was usual: the share of checks that failed in the weeks before, and the failures to expect of a week's checks.

/** Weeks of history before anything is judged. */
export const leastHistory = 13
/** Longest baseline, and how far back it ends: the latest weeks may already be part of what is rising. */
export const baselineWeeks = 52
export const baselineGap = 4

export type Baseline = {
  readonly failed: number
  readonly checks: number
  /** Failures and checks week by week, oldest first. */
  readonly weeks: readonly { readonly failed: number; readonly checks: number }[]
}

/**
 * The baseline of week `t` (index into series that start with the first week of history): up to 52 weeks, the last of them four
 * weeks back.
 */
export function baselineOf(
  failed: readonly number[],
  checks: readonly number[],
  t: number,
  gap: number = baselineGap,
  longest: number = baselineWeeks,
): Baseline {
  const weeks = []
  let sumFailed = 0
  let sumChecks = 0
  for (let i = Math.max(0, t - gap - longest + 1); i <= t - gap; i++) {
    const week = { failed: failed[i] ?? 0, checks: checks[i] ?? 0 }
    weeks.push(week)
    sumFailed += week.failed
    sumChecks += week.checks
  }
  return { failed: sumFailed, checks: sumChecks, weeks }
}

/**
 * Failures to expect of `checks` checks: (Σ failed + ½) / Σ checks, times the checks. The share carries over, not the number, so a
 * server that merely grows expects more. Undefined if the baseline has no check.
 */
export function expectedOf({ failed, checks: before }: Baseline, checks: number): number | undefined {
  return before === 0 ? undefined : ((failed + 0.5) / before) * checks
}
