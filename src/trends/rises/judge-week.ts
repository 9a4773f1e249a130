// Rises and spikes of one closed week.
import type { FamilyId, RuleId } from '../../engine/answers.ts'
import { allChecks, type Counts } from '../counts.ts'
import { type ByWeek, minimumReporters, reportersIn } from '../fives.ts'
import { atOnce, mapInSlices, type Slices } from '../slices.ts'
import { standOut } from '../stats/stand-out.ts'
import { type Week, weekPlus, weeksFrom, weeksUpTo } from '../week.ts'
import { type Baseline, baselineGap, baselineOf, baselineWeeks, expectedOf, leastHistory } from './baseline.ts'
import { cusumStep, usualWatch } from './cusum.ts'
import { scatterOf } from './scatter.ts'
import type { SeriesState } from './series.ts'
import { seriesKey, type Watched, watchedSeries } from './series.ts'
import { chanceOfSoMany, type Foreseen, foresee, spikeBound, spikeGap, spikeWeeks } from './spike.ts'

/** How many weeks of counts judging a week takes, that week included. */
export const weeksJudged = baselineWeeks + baselineGap

/** A rise as it may be shown: the family and the check, not the numbers behind them. At least five distinct reporters. */
export type Rise = {
  readonly family: FamilyId
  /** null: failed checks of the family, whichever. */
  readonly rule: RuleId | null
  /** The week it was noticed. */
  readonly week: Week
  /** Whether it still stands out when all families (or all rules of all families) watched that week are counted in. */
  readonly standsOut: boolean
}

/** A series that is judged is as much work as so many words of bits. */
const eachSeries = 5000

export type JudgedWeek = {
  /** False until there are thirteen weeks of history: then nothing is said, rather than "no rise". */
  readonly judged: boolean
  readonly rises: readonly Rise[]
  /** More than foreseen in this very week; a second view, less sure than a rise. */
  readonly spikes: readonly Rise[]
  readonly series: Readonly<Record<string, SeriesState>>
}

/**
 * Judges `week` by counts that reach `weeksJudged` weeks back (more does no harm). `first` is where the history begins.
 * Deterministic; the order of the counts changes nothing.
 */
export const judgeWeek = (...asked: Parameters<typeof judgeInSlices>): JudgedWeek => atOnce(judgeInSlices(...asked))

export function* judgeInSlices(
  counts: Counts,
  week: Week,
  first: Week,
  before: Readonly<Record<string, SeriesState>>,
  history: number = leastHistory,
): Slices<JudgedWeek> {
  const past = weeksFrom(first, week)
  if (past < history) return { judged: false, rises: [], spikes: [], series: {} }
  const weeks = weeksUpTo(week, Math.min(past + 1, weeksJudged))
  const checks = inOrder(allChecks(counts), weeks)
  const found = yield* mapInSlices(watchedSeries(counts), eachSeries, series =>
    judgeSeries(series, weeks, checks, before[seriesKey(series)]),
  )
  return {
    judged: true,
    rises: shown(
      week,
      found,
      f => f.alarm,
      f => f.chanceRecent,
    ),
    spikes: shown(
      week,
      found,
      f => f.spike,
      f => f.chanceThisWeek,
    ),
    series: Object.fromEntries(found.flatMap(f => (f.state === null ? [] : [[seriesKey(f.series), f.state]]))),
  }
}

type Found = {
  readonly series: Watched
  readonly alarm: boolean
  readonly spike: boolean
  readonly chanceRecent: number
  readonly chanceThisWeek: number
  readonly state: SeriesState | null
}

function judgeSeries(
  series: Watched,
  weeks: readonly Week[],
  checks: readonly number[],
  before: SeriesState | undefined,
): Found {
  const failed = inOrder(series.failed, weeks)
  const t = weeks.length - 1
  const week = weeks[t]!
  const x = failed[t]!
  const n = checks[t]!
  const baseline = baselineOf(failed, checks, t)
  const mu = expectedOf(baseline, n)
  const statistic =
    mu === undefined ? 0 : cusumStep(before?.statistic ?? 0, x, mu, usualWatch.kappa, scatterOf(baseline))
  const since = before?.since ?? week
  // Held back, and not started again, while fewer than five distinct people are behind it.
  const alarm =
    statistic >= usualWatch.threshold &&
    reportersIn(series.failed, weekPlus(since, -1), week).distinct >= minimumReporters

  const now = foreseenBy(baselineOf(failed, checks, t, spikeGap, spikeWeeks), n)
  return {
    series,
    alarm,
    spike: now !== undefined && x >= minimumReporters && x > spikeBound(now),
    chanceThisWeek: chance(x, now),
    // The weeks after the baseline are those a rise is made of, and a fixed window keeps the test honest.
    chanceRecent: chance(sum(failed.slice(-baselineGap)), foreseenBy(baseline, sum(checks.slice(-baselineGap)))),
    state: alarm || statistic === 0 ? null : { statistic, since },
  }
}

/** The finds to show, each with whether it stands out among all series of its kind. */
function shown(
  week: Week,
  found: readonly Found[],
  hit: (f: Found) => boolean,
  chanceOf: (f: Found) => number,
): Rise[] {
  return [true, false].flatMap(whole => {
    const kind = found.filter(f => (f.series.rule === null) === whole)
    const outstanding = standOut(kind.map(chanceOf))
    return kind.flatMap((f, i) =>
      hit(f) ? [{ family: f.series.family, rule: f.series.rule, week, standsOut: outstanding[i] === true }] : [],
    )
  })
}

const foreseenBy = ({ failed, checks }: Baseline, now: number): Foreseen | undefined => foresee(failed, checks, now)
const chance = (failed: number, foreseen: Foreseen | undefined): number =>
  foreseen === undefined ? 1 : chanceOfSoMany(failed, foreseen)
const inOrder = (byWeek: ByWeek, weeks: readonly Week[]): number[] => weeks.map(week => byWeek.get(week) ?? 0)
const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0)
