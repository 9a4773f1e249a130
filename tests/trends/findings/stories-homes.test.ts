// Which finding a later week belongs to, and what of one week is one story.
import { describe, expect, test } from 'vitest'
import { begin, type Finding } from '../../../src/trends/findings/finding.ts'
import { tellStories } from '../../../src/trends/findings/stories.ts'
import type { Item } from '../../../src/trends/outcome.ts'
import type { Release } from '../../../src/trends/release/release.ts'
import { weekPlus } from '../../../src/trends/week.ts'
import { allAfter, first, keysOf, pattern, release, rise } from './told.ts'

describe('which finding a later week belongs to', () => {
  const [open] = allAfter(release(first, [rise('code')])) as [Finding]
  const told: Finding = { ...open, told: true }
  const watching: Finding = { ...told, state: 'watching', until: weekPlus(first, 20) }
  const next = weekPlus(first, 1)
  const homeOf = (one: Release, ...findings: Finding[]) => tellStories(one, findings).grown.map(({ id }) => id)

  test('one that is watched goes on until its week, however quiet it was; it is no longer one after it', () => {
    const at = (weeks: number, finding = watching) => {
      const week = weekPlus(first, weeks)
      return tellStories(release(week, [rise('code', week)]), [finding])
    }
    for (const weeks of [9, 19, 20]) expect(at(weeks).grown, `${weeks}`).toHaveLength(1)
    expect(at(21)).toMatchObject({ begun: [{ key: `story rook ${weekPlus(first, 21)} rise code` }], grown: [] })
    // Only what is watched has longer.
    expect(at(9, { ...watching, state: 'open' }).begun).toHaveLength(1)
    expect(at(9, { ...watching, until: null }).begun).toHaveLength(1)
    expect(at(8, { ...watching, state: 'warned', until: null }).grown).toHaveLength(1)
  })
  test('a finding of a week that is still to come takes nothing', () => {
    expect(homeOf(release(next, [rise('code', next)]), { ...told, week: weekPlus(next, 1) })).toEqual([])
  })
  test('of two it is the one that names the same failed check; of two of those the elder, then the first by its id', () => {
    const of = (id: string, rule: string, week = first): Finding => ({
      ...told,
      ...{ id, week, state: 'warned', parts: [{ is: 'rise', rise: rise(rule) }] },
    })
    const one = release(next, [rise('legs', next)])
    expect(homeOf(one, of('a', 'code'), of('b', 'legs'))).toEqual(['b'])
    expect(homeOf(one, of('a', 'legs', next), of('b', 'legs'))).toEqual(['b'])
    expect(homeOf(one, of('b', 'legs'), of('a', 'legs', next))).toEqual(['b'])
    expect(homeOf(one, of('b', 'legs'), of('a', 'legs'))).toEqual(['a'])
    expect(homeOf(one, of('a', 'legs'), of('b', 'legs'))).toEqual(['a'])
  })
  test('of those that name another one, it is one that waits, if there is one', () => {
    const warned: Finding = { ...told, id: 'a', state: 'warned' }
    const one = release(next, [rise('legs', next)])
    expect(homeOf(one, warned, { ...told, id: 'b' })).toEqual(['b'])
    expect(homeOf(one, warned, { ...watching, id: 'b' })).toEqual(['b'])
    expect(homeOf(one, warned)).toEqual([])
  })
  test('what names no failed check is of any finding of the family, and a finding that names none takes any', () => {
    const warned: Finding = { ...told, state: 'warned' }
    expect(homeOf(release(next, [rise(null, next)]), warned)).toEqual([open.id])
    const whole: Finding = { ...warned, parts: [{ is: 'rise', rise: rise(null) }] }
    expect(homeOf(release(next, [rise('legs', next)]), whole)).toEqual([open.id])
    expect(homeOf(release(next, [rise('legs', next, 'heron')]), whole)).toEqual([])
  })
  test('what is found in the very week in which it would be quiet is shown anew once, with what was found', () => {
    const ninth = weekPlus(first, 9)
    const { grown } = tellStories(release(ninth, [rise('code', ninth)]), [watching])
    expect(grown).toHaveLength(1)
    expect(grown[0]).toMatchObject({ seen: ninth, stale: true, revision: watching.revision + 1 })
    // Another one that has gone quiet is shown anew beside it.
    const quiet: Finding = { ...told, id: 'quiet', family: 'heron' }
    const both = tellStories(release(ninth, [rise('code', ninth)]), [watching, quiet]).grown
    expect(both.map(({ id, seen }) => [id, seen])).toEqual([
      [watching.id, ninth],
      ['quiet', first],
    ])
  })
})

describe('what is found of one family in one week', () => {
  const groups = (rises: readonly (string | null)[], patterns: readonly string[][]) => {
    // A finding of each failed check that is decided: each takes what belongs to it alone.
    const settled = ['a', 'b', 'c', 'd'].map(
      (rule): Finding => ({
        ...begin({ key: rule, family: 'rook', week: first, parts: [{ is: 'rise', rise: rise(rule) }] }, rule, 's'),
        state: 'warned',
      }),
    )
    const one = release(
      weekPlus(first, 1),
      rises.map(rule => rise(rule, weekPlus(first, 1))),
      patterns.map(rules => pattern(rules.map((rule): Item => `rule:${rule}`))),
    )
    return Object.fromEntries(tellStories(one, settled).grown.map(each => [each.id, keysOf(each)]))
  }
  test('is together as far as it names a failed check in common, also by way of a third', () => {
    expect(groups(['a', 'b'], [])).toEqual({ a: ['rise a'], b: ['rise b'] })
    expect(groups(['a', 'b', 'c'], [['a', 'b']])).toEqual({
      a: ['rise a', 'rise b', 'pattern rule:a rule:b'],
      c: ['rise c'],
    })
    expect(
      groups(
        ['a', 'd'],
        [
          ['a', 'b'],
          ['c', 'd'],
          ['b', 'c'],
        ],
      )['a'],
    ).toHaveLength(5)
  })
  test('belongs to the first of them where it names none', () => {
    expect(groups(['c', null, 'b'], [])).toEqual({ c: ['rise ', 'rise c'], b: ['rise b'] })
  })
  test('begins nothing where it was all found before', () => {
    const earlier = rise('code')
    const later = weekPlus(first, 2)
    expect(tellStories(release(later, [earlier]), []).begun).toEqual([])
    expect(tellStories(release(later, [earlier, rise('legs', later)]), []).begun).toMatchObject([
      { week: first, seen: later, key: `story rook ${later} rise code` },
    ])
  })
})
