// A closed week as a whole: everything a release lists in its order, what too few servers brought, and whose patterns are looked for.
import { describe, expect, test } from 'vitest'
import type { WeekCount } from '../../../src/trends/counts.ts'
import { patternWeeks } from '../../../src/trends/patterns/show-patterns.ts'
import { closeWeek, type WeekToClose, weeksNeeded } from '../../../src/trends/release/close-week.ts'
import type { ReleaseState } from '../../../src/trends/release/state.ts'
import type { Rise } from '../../../src/trends/rises/judge-week.ts'
import { type Week, weekPlus } from '../../../src/trends/week.ts'

const first = '2026-W14'
const rowsOf = (family: string, week: Week, cells: Readonly<Record<string, number>>): WeekCount[] =>
  Object.entries(cells).map(([key, reporters]) => {
    const [facet = '', value = ''] = key.split(':')
    return { week, family, facet: facet as WeekCount['facet'], value, reporters }
  })
const closed = (input: Partial<WeekToClose> & Pick<WeekToClose, 'counts'>) => {
  const result = closeWeek({ scope: 'server', week: first, state: null, first, ...input })
  if (!result.ok) throw new Error(result.refusal.code)
  return result
}

test('a release lists families by name, verdicts from the worst, the rest from what there is most of; above it all stands their sum', () => {
  const rook = { 'all:': 30, 'verdict:open': 20, 'verdict:danger': 10, 'rule:b': 10, 'rule:a': 10, 'rule:c': 15 }
  const heron = { 'all:': 10, 'verdict:danger': 10, 'rule:a': 5, 'bought:shop': 5, 'bought:market': 5 }
  const counts = [
    ...rowsOf('rook', first, rook),
    ...rowsOf('heron', first, heron),
    ...rowsOf('gull', first, { 'all:': 9 }),
  ]
  const { release } = closed({ counts })
  const [share, half, third] = [
    { of: 30, share: 0.6667, low: 0.4878, high: 0.8077 },
    { of: 30, share: 0.5, low: 0.3315, high: 0.6685 },
    { of: 30, share: 0.3333, low: 0.1923, high: 0.5122 },
  ]
  const ofAll = (checks: number) => expect.objectContaining({ of: 40, share: checks / 40 })
  expect(release).toEqual({
    ...{ format: 1, scope: 'server', week: first, checks: 40, more: 40, judged: false, rises: [], spikes: [] },
    verdicts: [
      { verdict: 'danger', checks: 20, more: 20, share: ofAll(20) },
      { verdict: 'open', checks: 20, more: 20, share: ofAll(20) },
    ],
    rules: [
      { rule: 'a', checks: 15, more: 15, share: ofAll(15) },
      { rule: 'c', checks: 15, more: 15, share: ofAll(15) },
      { rule: 'b', checks: 10, more: 10, share: ofAll(10) },
    ],
    bought: [
      { bought: 'market', checks: 5, more: 5 },
      { bought: 'shop', checks: 5, more: 5 },
    ],
    families: [
      {
        ...{ family: 'heron', checks: 10, more: 10 },
        verdicts: [{ verdict: 'danger', checks: 10, more: 10 }],
        rules: [{ rule: 'a', checks: 5, more: 5 }],
        bought: [
          { bought: 'market', checks: 5, more: 5 },
          { bought: 'shop', checks: 5, more: 5 },
        ],
      },
      {
        ...{ family: 'rook', checks: 30, more: 30, bought: [] },
        verdicts: [
          { verdict: 'danger', checks: 10, more: 10, share: third },
          { verdict: 'open', checks: 20, more: 20, share },
        ],
        rules: [
          { rule: 'c', checks: 15, more: 15, share: half },
          { rule: 'a', checks: 10, more: 10, share: third },
          { rule: 'b', checks: 10, more: 10, share: third },
        ],
      },
    ],
  })
})

test('what is more is what the release before did not show', () => {
  const next = weekPlus(first, 1)
  const before = closed({ counts: rowsOf('rook', first, { 'all:': 10, 'verdict:danger': 10, 'rule:a': 5 }) })
  const counts = rowsOf('rook', next, { 'all:': 15, 'verdict:danger': 10, 'verdict:open': 5, 'rule:a': 5 })
  const { release } = closed({ week: next, state: before.state, counts })
  expect(release).toMatchObject({ checks: 25, more: 15, rules: [{ checks: 10, more: 5 }] })
  expect(release.families[0]).toMatchObject({
    ...{ checks: 25, more: 15, rules: [{ rule: 'a', checks: 10, more: 5 }] },
    verdicts: [
      { verdict: 'danger', checks: 20, more: 10 },
      { verdict: 'open', checks: 5, more: 5 },
    ],
  })
})

test('where the history began stays what the first release said', () => {
  const { state } = closed({ counts: [] })
  expect(state.first).toBe(first)
  expect(closed({ counts: [], week: weekPlus(first, 1), state, first: weekPlus(first, -9) }).state.first).toBe(first)
})

test('what too few servers have brought is neither shown nor judged nor searched, now or in what came since it was opened', () => {
  const cells = { 'all:': 10, 'verdict:danger': 10 }
  const counts = [...rowsOf('rook', first, cells), ...rowsOf('heron', first, cells)]
  const asked: unknown[] = []
  const enough = (family: string, after: Week | null, upTo: Week) => {
    asked.push([family, after, upTo])
    return family === 'rook'
  }
  const { release, state } = closed({ scope: 'pool', counts, enough })
  expect(release).toMatchObject({ scope: 'pool', checks: 10, families: [{ family: 'rook' }] })
  expect(Object.keys(state.families)).toEqual(['rook'])
  // Once it is open, those count that have come since.
  const next = weekPlus(first, 1)
  asked.length = 0
  const later = [...counts, ...rowsOf('rook', next, cells)]
  const since = (family: string, after: Week | null, upTo: Week) => {
    asked.push([after, upTo])
    return family === 'rook' && after === null
  }
  expect(closed({ scope: 'pool', week: next, state, counts: later, enough: since }).release).toMatchObject({
    ...{ checks: 10, more: 0 },
    families: [{ family: 'rook', checks: 10, more: 0 }],
  })
  expect(asked).toContainEqual([first, next])
})

describe('patterns are looked for', () => {
  const at = weekPlus(first, 30)
  const rise = (family: string, week: Week, standsOut = false, rule: string | null = null): Rise => ({
    ...{ family, rule, week, standsOut },
  })
  const state = (...rises: Rise[]): ReleaseState => ({ first, families: {}, series: {}, rises })
  const families = (...rises: Rise[]) => [...closed({ week: at, counts: [], state: state(...rises) }).patternsOf.keys()]

  test('in families with a rise of the last eight weeks', () => {
    expect(families(rise('rook', at), rise('heron', weekPlus(at, -7)), rise('gull', weekPlus(at, -8)))).toEqual([
      'heron',
      'rook',
    ])
    const { state: after } = closed({
      week: at,
      counts: [],
      state: state(rise('a', weekPlus(at, -7)), rise('b', first)),
    })
    expect(after.rises.map(one => one.family)).toEqual(['a'])
  })
  test('in five at most: of what stands out, then of what was noticed last, then the first by name', () => {
    const last = ['h', 'g', 'f', 'e'].map(family => rise(family, at))
    const earlier = [rise('d', weekPlus(at, -1)), rise('c', weekPlus(at, -3)), rise('b', weekPlus(at, -2))]
    expect(families(...earlier, ...last)).toEqual(['d', 'e', 'f', 'g', 'h'])
    expect(families(...earlier, ...last, rise('a', weekPlus(at, -6), true))).toEqual(['a', 'e', 'f', 'g', 'h'])
    expect(families(...last, rise('i', at), rise('j', at))).toEqual(['e', 'f', 'g', 'h', 'i'])
    expect(families(rise('h', at), rise('h', at, false, 'legs'), ...earlier.slice(1))).toEqual(['b', 'c', 'h'])
  })
  test('among the checks of all the weeks that are looked at, which reach further back than the counts of a release', () => {
    const { from, to } = weeksNeeded(at)
    expect([from, to]).toEqual([patternWeeks(at).from, at])
    const counts = [weekPlus(from, -1), from, at].flatMap(week => rowsOf('rook', week, { 'all:': 9, 'rule:a': 4 }))
    expect(closed({ week: at, counts, state: state(rise('rook', at)) }).patternsOf.get('rook')).toEqual(
      new Map([
        [from, 9],
        [at, 9],
      ]),
    )
  })
})
