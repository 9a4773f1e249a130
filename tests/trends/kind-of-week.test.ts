// Six kinds of weeks and those between them are told apart by their releases alone.
import { describe, expect, test } from 'vitest'
import { kindOfWeek } from '../../src/trends/kind-of-week.ts'
import { weekPlus } from '../../src/trends/week.ts'
import { firstWeek, many, type Told, weekly } from './weekly.ts'

const past = many(40)
const at = (...last: readonly Told[]) => kindOfWeek(weekly([...past, ...last]))
const found = { rises: ['rook'] }

test.each([
  ['a week like others is ordinary', [{}], 'ordinary'],
  ['a rise is new', [found], 'new'],
  ['so is a pattern', [{ patterns: ['rook'] }], 'new'],
  ['found again, it goes on', [found, {}, { patterns: ['rook'] }], 'again'],
  ['not found again, it is recent for eight weeks', [found, ...many(8)], 'recent'],
  ['then it is over', [found, ...many(9)], 'over'],
  ['and after some weeks nothing is said of it', [found, ...many(13)], 'ordinary'],
  ['found anew after it was over, it is new', [found, ...many(9), found], 'new'],
  ['a larger share that failed, and no rise, is chance', many(4, { failed: 10 }), 'chance'],
  ['a spike is told by itself', [{ spikes: ['rook'] }], 'alone'],
  ['many more checks of which the same share fails is growth', many(4, { checks: 40, failed: 10 }), 'growth'],
  ['many more checks of which more fail is told as what fails', many(4, { checks: 40, failed: 20 }), 'chance'],
] as const)('%s', (_, last, kind) => {
  expect(at(...last)?.kind).toBe(kind)
})

describe('several things at once', () => {
  test('what is new comes first, and the others are told beside it', () => {
    const week = at({ rises: ['heron'] }, ...many(6), { rises: ['gull'] }, ...many(2), {
      rises: ['gull', 'rook'],
      spikes: ['rook', 'tern'],
    })
    const over = [{ family: 'heron', last: weekPlus(firstWeek, 40) }]
    expect(week).toMatchObject({ kind: 'new', fresh: ['rook'], again: ['gull'], recent: [], over })
    // A spike of what is found says nothing more.
    expect(week?.alone.map(one => one.family)).toEqual(['tern'])
  })
  test('a larger share that failed is no chance while what was found is recent', () => {
    expect(at(found, ...many(4, { failed: 10 }))?.kind).toBe('recent')
    expect(at(found, ...many(5), ...many(4, { failed: 10 }))).toMatchObject({
      kind: 'chance',
      over: [{ family: 'rook', last: weekPlus(firstWeek, 40) }],
    })
  })
})

test('a rise that stays in the releases of the weeks after it was noticed is found in its own week only', () => {
  const weeks = weekly([...past, found, ...many(3)])
  const [rise] = weeks[40]?.release?.rises ?? []
  for (const one of weeks.slice(41)) Object.assign(one.release ?? {}, { rises: [rise] })
  expect(kindOfWeek(weeks)).toMatchObject({
    kind: 'recent',
    recent: [{ family: 'rook', last: weekPlus(firstWeek, 40) }],
  })
})

test('before anything is judged, or without a release, nothing is said; while what is usual is not known, the rest is', () => {
  expect(at({ judged: false })).toBeUndefined()
  expect(kindOfWeek(weekly([...past, null]))).toBeUndefined()
  expect(kindOfWeek([])).toBeUndefined()
  expect(kindOfWeek(weekly(many(14)))).toMatchObject({ kind: 'ordinary', usual: undefined })
  expect(kindOfWeek(weekly([...many(14), found]))).toMatchObject({ kind: 'new', usual: undefined })
})

test('weeks before with more failures than foreseen in one week alone are counted, this one left out', () => {
  const alone = { spikes: ['rook'] }
  expect(kindOfWeek(weekly([...many(40), alone]))).toMatchObject({ weeksWithAlone: 0, weeksBefore: 40 })
  const weeks = weekly([...many(20), alone, ...many(10), alone, ...many(8), alone])
  expect(kindOfWeek(weeks)).toMatchObject({ weeksWithAlone: 2, weeksBefore: 40 })
})

test('models and the reasons of each are the things a release shows', () => {
  const weeks = weekly(past)
  const rules = (count: number) => Array.from({ length: count }, (_, i) => ({ rule: `r${i}` }))
  Object.assign(weeks.at(-1)?.release ?? {}, { families: [{ rules: rules(2) }, { rules: [] }, { rules: rules(1) }] })
  expect(kindOfWeek(weeks)?.things).toBe(6)
  expect(at({})?.things).toBe(0)
})

test('what is told of a family turns on the very week: eight weeks on it is recent, four more it is over', () => {
  const last = (weeks: number) => at(found, ...many(weeks))
  expect(last(8)).toMatchObject({ recent: [{ family: 'rook' }], over: [] })
  expect(last(9)).toMatchObject({ recent: [], over: [{ family: 'rook' }] })
  expect(last(12)).toMatchObject({ recent: [], over: [{ family: 'rook' }] })
  expect(last(13)).toMatchObject({ recent: [], over: [] })
  const again = (weeks: number) => at(found, ...many(weeks), found)
  expect(again(7)).toMatchObject({ again: ['rook'], fresh: [] })
  expect(again(8)).toMatchObject({ again: [], fresh: ['rook'] })
})

test('weeks before in which nothing was judged are none of those that are counted; one without a release neither', () => {
  const weeks = weekly([...many(5, { judged: false }), ...many(3), null, ...many(4), {}])
  expect(kindOfWeek(weeks)?.weeksBefore).toBe(7)
})

test('families are named in the order of their names, each once', () => {
  expect(at({ rises: ['rook', 'gull'], patterns: ['heron', 'rook'] })?.fresh).toEqual(['gull', 'heron', 'rook'])
})
