// What a server of this size could notice at all: the smallest rise that the watch finds in nine of ten simulated servers like it.
//
// The volume is read from frozen releases, so that the sentence made of it says nothing they do not say.

import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { isFailing } from '../ground/verdicts.ts'
import { minimumReporters } from './fives.ts'
import type { Release } from './release/release.ts'
import { baselineGap, baselineWeeks, expectedOf, leastHistory } from './rises/baseline.ts'
import { cusumStep, type Scatter, usualWatch } from './rises/cusum.ts'
import { scatterOf } from './rises/scatter.ts'
import { poisson, type Random } from './stats/poisson.ts'

/** A server: all its checks a week, and the failed ones of one kind of cell that are usual. */
export type Volume = { readonly checks: number; readonly failed: number }

/** `more` failed checks a week of one kind of cell are noticed within `weeks` weeks in nine of ten servers like this. */
export type Noticeable = { readonly checks: number; readonly more: number; readonly weeks: number }

const within = 3
const share = 0.9
/** The standard error of a share of 0.9 is then 1.3 %. */
const runs = 500
/** More is no answer for any server. */
const mostMore = 200
/** The same answer for the same server, whoever asks. */
const seed = 20_261_129

/** Rounded to whole checks and to tenths; undefined while there is too little history, or nothing was shown in it. */
export function volumeOf(releases: readonly Release[]): Volume | undefined {
  if (releases.length < leastHistory) return undefined
  const checks = releases.reduce((sum, { more }) => sum + more, 0) / releases.length
  const families = Math.max(1, ...releases.map(one => one.families.length))
  const failed =
    releases
      .flatMap(one => one.verdicts)
      .filter(one => isFailing(one.verdict))
      .reduce((sum, { more }) => sum + more, 0) / releases.length
  const volume = { checks: Math.round(checks), failed: Math.max(0.1, Math.round((failed / families) * 10) / 10) }
  return volume.checks >= 1 ? volume : undefined
}

/** By bisection over whole numbers; undefined where not even `mostMore` are noticed. */
export function noticeable(volume: Volume): Noticeable | undefined {
  const watched = watchedServers(volume)
  let low = 0
  let high = mostMore
  if (foundShare(volume, high, watched) < share) return undefined
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (foundShare(volume, middle, watched) >= share) high = middle
    else low = middle
  }
  return { checks: volume.checks, more: high, weeks: within }
}

/** A simulated server before anything rises: what is expected of it, and where its watch stands. */
type Watched = { readonly expected: (checks: number) => number | undefined; readonly scatter: Scatter; readonly at: At }
/** The statistic, and the failures since it left zero. */
type At = { readonly statistic: number; readonly people: number }

function watchedServers({ checks, failed }: Volume): Watched[] {
  const random = xoroshiro128plus(seed)
  return Array.from({ length: runs }, () => {
    const weeks = Array.from({ length: baselineWeeks + baselineGap - 1 }, () => {
      const x = poisson(random, failed)
      return { failed: x, checks: x + others(random, checks - failed) }
    })
    const past = weeks.slice(0, baselineWeeks)
    const baseline = {
      failed: past.reduce((sum, week) => sum + week.failed, 0),
      checks: past.reduce((sum, week) => sum + week.checks, 0),
      weeks: past,
    }
    const start = { expected: (n: number) => expectedOf(baseline, n), scatter: scatterOf(baseline) }
    let at: At = { statistic: 0, people: 0 }
    for (const week of weeks.slice(-leastHistory)) {
      const next = step({ ...start, at }, week.failed, week.checks)
      at = next.alarm ? { statistic: 0, people: 0 } : next
    }
    return { ...start, at }
  })
}

function step({ expected, scatter, at }: Watched, failed: number, checks: number): At & { readonly alarm: boolean } {
  const mu = expected(checks)
  const statistic = mu === undefined ? 0 : cusumStep(at.statistic, failed, mu, usualWatch.kappa, scatter)
  const people = statistic > 0 ? at.people + failed : 0
  return { statistic, people, alarm: statistic >= usualWatch.threshold && people >= minimumReporters }
}

/** In which share of the simulated servers `more` failures a week are noticed in time. */
export function foundShare(
  { checks, failed }: Volume,
  more: number,
  servers = watchedServers({ checks, failed }),
): number {
  const random = xoroshiro128plus(seed + 1)
  const found = servers.filter(server => {
    let now = server
    for (let week = 0; week < within; week++) {
      const x = poisson(random, failed + more)
      const next = step(now, x, x + others(random, checks - failed))
      if (next.alarm) return true
      now = { ...now, at: next }
    }
    return false
  })
  return found.length / servers.length
}

/** The checks of other kinds of cell in a week: they only set the share, so a large number may be as a normal one. */
function others(random: Random, mean: number): number {
  if (mean < 20) return poisson(random, Math.max(0, mean))
  // The sum of twelve uniform numbers is close to normal.
  let sum = -6
  for (let i = 0; i < 12; i++) sum += uniformFloat64(random)
  return Math.max(0, Math.round(mean + Math.sqrt(mean) * sum))
}
