// What is usual on a server, and how its last four weeks stand beside that: worked out of frozen releases alone, so that it says nothing they do not say.
import { isFailing } from '../ground/verdicts.ts'
import type { ReleasedWeek } from './findings/past.ts'
import { downToFives } from './fives.ts'
import { baselineGap, baselineWeeks, leastHistory } from './rises/baseline.ts'

/** Both included, in fives. */
export type Range = { readonly low: number; readonly high: number }
export type Beside = 'fewer' | 'usual' | 'more'

export type Usual = {
  /** Newly shown in the last four weeks: checks, and those of them that failed. */
  readonly checks: number
  readonly failed: number
  /** What eight of ten such stretches of the year before came to; of failed ones, for as many checks as now. */
  readonly usualChecks: Range
  readonly usualFailed: Range
  /** Failed ones of a hundred checks, now and in the year before; to the whole number. */
  readonly share: number
  readonly usualShare: number
  readonly besideChecks: Beside
  readonly besideFailed: Beside
  /** Whether there were by far more checks than usual: a server that grows, and no week that is a little fuller than others. */
  readonly grown: boolean
  /** Of so many stretches of four weeks before, so many had as large a share that failed. */
  readonly stretches: number
  readonly asMany: number
}

/** The share of stretches that lie below what is usual, and above it. */
const tail = 0.1

/** By chance this comes in about one of a hundred weeks of a server that does not grow. */
const byFar = 1.2

type Stretch = { readonly checks: number; readonly failed: number }

/**
 * Of the last of these weeks (oldest first, one after another). As a rise is watched: four weeks beside up to a year that ends before them.
 * Undefined while there are too few weeks, or nothing was shown in the last four.
 */
export function usualOf(weeks: readonly ReleasedWeek[]): Usual | undefined {
  const each = weeks.map(({ release }) => ({
    checks: release?.more ?? 0,
    failed: (release?.verdicts ?? []).reduce((sum, one) => sum + (isFailing(one.verdict) ? one.more : 0), 0),
  }))
  const now = addUp(each.slice(-baselineGap))
  const before = each.slice(0, -baselineGap).slice(-baselineWeeks)
  const all = addUp(before)
  if (before.length < leastHistory || now.checks === 0 || all.checks === 0) return undefined
  const past = before.slice(baselineGap - 1).map((_, i) => addUp(before.slice(i, i + baselineGap)))
  const shares = past.map(shareOf).sort(byNumber)
  const checks = past.map(one => one.checks).sort(byNumber)
  const usualChecks = { low: lowOf(checks), high: highOf(checks) }
  // A number of fives lies above the highest share just when it lies above the fives below it.
  const high = downToFives(highOf(shares) * now.checks)
  const usualFailed = { low: Math.min(high, upToFives(lowOf(shares) * now.checks)), high }
  return {
    ...now,
    usualChecks,
    usualFailed,
    share: ofHundred(now),
    usualShare: ofHundred(all),
    besideChecks: beside(now.checks, usualChecks),
    besideFailed: beside(now.failed, usualFailed),
    grown: now.checks >= byFar * usualChecks.high,
    stretches: past.length,
    asMany: shares.filter(one => one >= shareOf(now)).length,
  }
}

const addUp = (weeks: readonly Stretch[]): Stretch =>
  weeks.reduce((sum, one) => ({ checks: sum.checks + one.checks, failed: sum.failed + one.failed }), {
    checks: 0,
    failed: 0,
  })
const shareOf = ({ checks, failed }: Stretch): number => (checks === 0 ? 0 : failed / checks)
const ofHundred = (stretch: Stretch): number => Math.round(100 * shareOf(stretch))
const byNumber = (a: number, b: number): number => a - b
/** Numbers that are there, none in between: of fives they are fives. */
const lowOf = (sorted: readonly number[]): number => sorted[Math.ceil(tail * sorted.length) - 1] ?? 0
const highOf = (sorted: readonly number[]): number => sorted[Math.ceil((1 - tail) * sorted.length) - 1] ?? 0
const upToFives = (count: number): number => -downToFives(-count)
const beside = (count: number, { low, high }: Range): Beside =>
  count > high ? 'more' : count < low ? 'fewer' : 'usual'
