// The figures of a finding's past: failures newly shown in four weeks, and what the year before those let one foresee.
import { describe, expect, test } from 'vitest'
import type { Found } from '../../../src/trends/findings/finding.ts'
import { pastOf, type ReleasedWeek, thingOf } from '../../../src/trends/findings/past.ts'
import type { Release } from '../../../src/trends/release/release.ts'
import { chanceOfSoMany, spikeLevel } from '../../../src/trends/rises/spike.ts'
import { type Week, weekPlus } from '../../../src/trends/week.ts'

const begin = '2026-W01'
const rise = (rule: string | null, week: Week = begin): Found => ({
  is: 'rise',
  rise: { family: 'rook', rule, week, standsOut: true },
})
const pattern = (...rules: readonly string[]): Found => ({
  is: 'pattern',
  pattern: {
    ...{ family: 'rook', items: rules.map(rule => `rule:${rule}` as const), recent: 10, recentOf: 40 },
    ...{ earlier: 0, earlierOf: 100, growth: 3 },
  },
})

/** A release with this many new checks, and so many new failures of a rule, of `all` shown since the beginning. */
const release = (checks: number, more: number, all = 1000): Release => {
  const verdicts = [
    { verdict: 'ruled-out', checks: all, more },
    { verdict: 'danger', checks: all, more },
    { verdict: 'open', checks: all, more: 95 },
  ]
  const rules = [
    { rule: 'legs', checks: all, more },
    { rule: 'code', checks: all, more: 85 },
  ]
  const families = [
    { family: 'heron', verdicts: [], rules: [{ rule: 'legs', checks: all, more: 75 }], bought: [] },
    { family: 'rook', verdicts, rules, bought: [] },
  ]
  return { format: 1, scope: 'server', week: begin, more: checks, rises: [], families } as unknown as Release
}
const weeksOf = (releases: readonly (Release | undefined)[]): ReleasedWeek[] =>
  releases.map((one, i) => ({ week: weekPlus(begin, i), release: one }))
const finding = { family: 'rook', parts: [], week: begin, seen: begin }
const legs = { family: 'rook', rule: 'legs' }
const failedOf = (releases: readonly (Release | undefined)[], thing: Parameters<typeof pastOf>[1] = legs, most = 99) =>
  pastOf(weeksOf(releases), thing, finding, most).map(one => one.failed)

describe('what is looked at', () => {
  test.each([
    ['the failed check that most parts name', [rise('code'), pattern('legs', 'seam'), rise('legs')], 'legs'],
    ['of two that are named as often, the first by name', [rise('legs'), rise('code')], 'code'],
    ['all failed checks, where no part names one', [rise(null)], null],
  ])('%s', (_, parts, rule) => {
    expect(thingOf({ family: 'rook', parts })).toEqual({ family: 'rook', rule })
  })
})

describe('failures', () => {
  test('are those newly shown in the four weeks up to this one, of the thing alone', () => {
    const releases = [10, 5, 0, 15, 20, 5].map(more => release(40, more))
    expect(failedOf(releases)).toEqual([10, 15, 15, 30, 40, 40])
    expect(failedOf(releases, { family: 'wren', rule: null })).toEqual([0, 0, 0, 0, 0, 0])
  })
  test('of all failed checks are those of the verdicts that fail a cell', () => {
    expect(failedOf([release(40, 10)], { family: 'rook', rule: null })).toEqual([20])
  })
  test('that are shown for the first time ever are left out: they are of all the weeks before', () => {
    expect(failedOf([release(40, 25, 25), release(40, 5)])).toEqual([0, 5])
  })
  test('are unknown in a week without a release, and none in those after it', () => {
    expect(failedOf([release(40, 10), undefined, release(40, 5)])).toEqual([10, undefined, 15])
  })
  test('of weeks before those that are shown are counted too', () => {
    expect(
      failedOf(
        [5, 5, 5, 5, 5].map(more => release(40, more)),
        legs,
        2,
      ),
    ).toEqual([20, 20])
  })
})

describe('the most that is foreseen', () => {
  const steady = (weeks: number) =>
    pastOf(weeksOf(Array.from({ length: weeks }, () => release(40, 5))), legs, finding, 99).map(one => one.bound)
  test('is nothing until thirteen weeks lie before the four that are judged', () => {
    const bounds = steady(18)
    expect(bounds.slice(0, 16)).toEqual(new Array(16).fill(undefined))
    expect(bounds[16]).toBeGreaterThan(20)
  })
  // Weeks alike: the predictive distribution has Σ failed + ½ for its size, and of so many weeks and the four to come the weeks' share.
  test.each([
    [17, 13],
    [30, 26],
    [56, 52],
    [70, 52],
  ])('in week %d rests on the %d weeks that end four back', (week, before) => {
    const bound = steady(week).at(-1) ?? Number.NaN
    const foreseen = { size: 5 * before + 0.5, probability: before / (before + 4) }
    expect(chanceOfSoMany(bound + 1, foreseen)).toBeLessThanOrEqual(spikeLevel)
    expect(chanceOfSoMany(bound, foreseen)).toBeGreaterThan(spikeLevel)
  })
  test('follows the checks: with twice as many now, more failures are no wonder', () => {
    const busier = Array.from({ length: 30 }, (_, i) => release(i < 26 ? 40 : 80, 5))
    const bound = pastOf(weeksOf(busier), legs, finding, 1)[0]?.bound
    expect(bound).toBeGreaterThan(steady(30).at(-1) ?? Number.NaN)
  })
})
