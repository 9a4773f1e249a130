// Releases as short as a test of weeks needs them: what is newly shown, what rises, what goes together.
import type { ReleasedWeek } from '../../src/trends/findings/past.ts'
import type { ShownPattern } from '../../src/trends/patterns/show-patterns.ts'
import type { Release } from '../../src/trends/release/release.ts'
import type { Rise } from '../../src/trends/rises/judge-week.ts'
import { type Week, weekPlus } from '../../src/trends/week.ts'

export const firstWeek = '2026-W01'

export type Told = {
  readonly checks?: number
  readonly failed?: number
  /** Families in which something is noticed in this week: a rise, a spike, a pattern. */
  readonly rises?: readonly string[]
  readonly spikes?: readonly string[]
  readonly patterns?: readonly string[]
  readonly judged?: boolean
}

/** One release a week, from `firstWeek` on; `null`: a week without one. */
export const weekly = (weeks: readonly (Told | null)[]): ReleasedWeek[] =>
  weeks.map((told, i) => {
    const week = weekPlus(firstWeek, i)
    return { week, release: told === null ? undefined : releaseOf(week, told) }
  })

function releaseOf(week: Week, told: Told): Release {
  const { checks = 20, failed = 5, rises = [], spikes = [], patterns = [], judged = true } = told
  const rise = (family: string): Rise => ({ family, rule: null, week, standsOut: false })
  return {
    week,
    more: checks,
    verdicts: [
      { verdict: 'ruled-out', checks: 500, more: failed },
      { verdict: 'open', checks: 900, more: checks - failed },
    ],
    judged,
    rises: rises.map(rise),
    spikes: spikes.map(rise),
    patterns: patterns.map(family => ({ family, items: ['rule:a', 'rule:b'] }) as unknown as ShownPattern),
    families: [],
  } as unknown as Release
}

export const many = (count: number, told: Told = {}): Told[] => Array.from({ length: count }, () => told)
