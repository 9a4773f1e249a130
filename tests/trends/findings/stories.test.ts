// One counterfeit is one finding: rises and patterns of the same checks come together, and later weeks add to it.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { decide } from '../../../src/trends/findings/decide.ts'
import type { Finding, Found } from '../../../src/trends/findings/finding.ts'
import { partKey, tellStories } from '../../../src/trends/findings/stories.ts'
import type { Rise } from '../../../src/trends/rises/judge-week.ts'
import { weekPlus } from '../../../src/trends/week.ts'
import { allAfter, first, keysOf, look, pattern, release, rise } from './told.ts'

describe('a wave of one family with three tells that come together', () => {
  const wave = release(
    first,
    [rise(null), rise('code'), rise('legs'), rise('weight')],
    [pattern(['rule:code', 'rule:legs']), pattern(['rule:weight', 'bought:marketplace'])],
  )
  test('is one finding with its parts', () => {
    expect(allAfter(wave).map(keysOf)).toEqual([
      [
        'rise ',
        'rise code',
        'rise legs',
        'rise weight',
        'pattern rule:code rule:legs',
        'pattern rule:weight bought:marketplace',
      ],
    ])
  })
  test('looked at again, it is nothing new', () => {
    const findings = new Map(allAfter(wave).map(one => [one.id, one]))
    const before = structuredClone([...findings.values()])
    look(wave, findings)
    expect([...findings.values()]).toEqual(before)
  })
  test('with more in the same week it grows; the same again a week later is seen then', () => {
    const [more, ...others] = allAfter(wave, release(first, [rise('seam')], [pattern(['rule:code', 'rule:legs'])]))
    expect(others).toEqual([])
    expect(keysOf(more as Finding)).toContain('rise seam')
    expect(more).toMatchObject({ seen: first, revision: 1 })
    const next = weekPlus(first, 1)
    const same = [pattern(['rule:code', 'rule:legs']), pattern(['rule:weight', 'bought:marketplace'])]
    const [again] = allAfter(wave, release(next, [], same))
    expect(again).toMatchObject({ week: first, seen: next, revision: 1 })
    expect(keysOf(again as Finding)).toEqual(keysOf(allAfter(wave)[0] as Finding))
    // An older release that is looked at late takes nothing back.
    const [late] = allAfter(wave, release(weekPlus(first, -1), [rise('seam', weekPlus(first, -1))]))
    expect(late).toMatchObject({ seen: first, revision: 0 })
  })
  test('found again next week it is the same finding, a revision on, with the numbers of that week', () => {
    const next = weekPlus(first, 1)
    const [one, ...others] = allAfter(
      wave,
      release(next, [rise('code')], [pattern(['rule:code', 'rule:legs'], 'rook', 15)]),
    )
    expect(others).toEqual([])
    expect(one).toMatchObject({ week: first, seen: next, revision: 1 })
    expect(one?.parts.find(part => part.is === 'pattern')).toMatchObject({ pattern: { recent: 15 } })
  })
  test('when it was first found stays so, though the rise that said it gives way to a later one', () => {
    const [before, next] = [weekPlus(first, -1), weekPlus(first, 1)]
    const [one] = allAfter(release(first, [rise('code', before), rise('legs')]))
    expect(one).toMatchObject({ week: before, seen: first })
    const [after] = allAfter(
      release(first, [rise('code', before), rise('legs')]),
      release(next, [rise('code', next), rise('legs', next)]),
    )
    expect(after).toMatchObject({ week: before, seen: next })
  })
  test('a pattern that is picked out by other items now takes the place of the one before', () => {
    const [one] = allAfter(wave, release(weekPlus(first, 1), [], [pattern(['rule:code', 'rule:seam'])]))
    expect(keysOf(one as Finding).filter(key => key.startsWith('pattern'))).toEqual([
      'pattern rule:code rule:seam',
      'pattern rule:weight bought:marketplace',
    ])
  })
})

test('another family is another finding', () => {
  expect(allAfter(release(first, [rise('code'), rise('legs', first, 'heron')]))).toHaveLength(2)
})

test('nothing is told of a rise that is only still recent', () => {
  expect(allAfter(release(weekPlus(first, 3), [rise('code')]))).toEqual([])
})

const decided = (finding: Finding, ...events: readonly Parameters<typeof decide>[1][]): Finding =>
  events.reduce((one, event) => {
    const next = decide(one, event, 1)
    if (!next) throw new Error(event.is)
    return next
  }, finding)

describe('once moderators have decided', () => {
  const [open] = allAfter(release(first, [rise('code')])) as [Finding]
  const told = decided(open, { is: 'told', post: { channel: 'c', message: 'm' } })
  const warned = decided(told, { is: 'warn', by: 'p', channel: 'c', text: 't' }, { is: 'warning-posted', message: 'm' })
  const dismissed = decided(told, { is: 'dismiss', by: 'p', why: 'w' })
  const next = weekPlus(first, 1)

  test('another look of the same family is another finding, and not hidden in the first', () => {
    const { begun, grown } = tellStories(release(next, [rise('seam', next)]), [warned])
    expect([begun.length, grown.length]).toEqual([1, 0])
  })
  test('while it waits for a decision, everything of the family joins it', () => {
    const { begun, grown } = tellStories(release(next, [rise('seam', next)]), [told])
    expect([begun.length, grown.length]).toEqual([0, 1])
  })
  test('a warned one that is found again stays warned, and its post changes', () => {
    const { grown } = tellStories(release(next, [rise('code', next)], [pattern(['rule:code', 'rule:legs'])]), [warned])
    expect(grown).toMatchObject([{ state: 'warned', stale: true, told: true, seen: next }])
  })
  test('a dismissed one that is joined by something new is told of again; by nothing new, it stays dismissed', () => {
    const more = tellStories(release(next, [rise('code', next)], [pattern(['rule:code', 'rule:legs'])]), [dismissed])
    expect(more.grown).toMatchObject([{ state: 'open', told: false, decisions: [{ did: 'dismissed' }] }])
    const same = tellStories(release(next, [rise('code', next)]), [dismissed])
    expect(same.grown).toMatchObject([{ state: 'dismissed', told: true }])
  })
  test('what has been quiet for longer than a rise is recent begins anew', () => {
    const later = weekPlus(first, 9)
    expect(tellStories(release(later, [rise('code', later)]), [warned]).begun).toHaveLength(1)
    const soon = weekPlus(first, 8)
    expect(tellStories(release(soon, [rise('code', soon)]), [warned]).begun).toHaveLength(0)
  })
})

test('over random weeks: nothing found is in no finding, no finding is lost, and a second look changes nothing', () => {
  const rules = ['a', 'b', 'c', 'd'] as const
  const weekly = fc.record({
    rises: fc.uniqueArray(fc.constantFrom(null, ...rules), { maxLength: 4 }),
    patterns: fc.array(fc.uniqueArray(fc.constantFrom(...rules), { minLength: 1, maxLength: 3 }), { maxLength: 2 }),
    settle: fc.constantFrom<'no' | 'dismiss' | 'put-off'>('no', 'no', 'dismiss', 'put-off'),
  })
  fc.assert(
    fc.property(fc.array(weekly, { maxLength: 20 }), weeks => {
      const findings = new Map<string, Finding>()
      let recent: Rise[] = []
      for (const [i, { rises, patterns, settle }] of weeks.entries()) {
        const week = weekPlus(first, i)
        const now = rises.map(rule => rise(rule, week))
        recent = [
          ...now,
          ...recent.filter(one => one.week > weekPlus(week, -8) && !rises.some(rule => rule === one.rule)),
        ]
        const frozen = release(
          week,
          recent,
          patterns.map(items => pattern(items.map(item => `rule:${item}` as const))),
        )
        const known = [...findings.keys()]
        look(frozen, findings)
        for (const id of known) expect(findings.has(id)).toBe(true)
        const parts: Found[] = now.map(one => ({ is: 'rise', rise: one }))
        for (const part of parts)
          expect([...findings.values()].some(one => one.seen === week && keysOf(one).includes(partKey(part)))).toBe(
            true,
          )
        const before = structuredClone([...findings.values()])
        look(frozen, findings)
        expect([...findings.values()]).toEqual(before)
        for (const one of findings.values()) {
          const event =
            settle === 'dismiss'
              ? ({ is: 'dismiss', by: 'p', why: 'w' } as const)
              : ({ is: 'put-off', by: 'p', until: weekPlus(week, 2) } as const)
          const next = settle === 'no' ? undefined : decide(one, event, 1)
          if (next) findings.set(one.id, next)
        }
      }
      // At most one waits for a decision at a time: everything else of the family would have joined it.
      const dismissedOnly = weeks.every(({ settle }) => settle === 'no')
      if (dismissedOnly)
        expect(
          [...findings.values()].filter(one => one.seen >= weekPlus(first, weeks.length - 8)).length,
        ).toBeLessThanOrEqual(1)
    }),
    { numRuns: 200 },
  )
})

describe('what does not come again', () => {
  const [found] = allAfter(release(first, [rise('legs')]))
  const told = { ...(found as Finding), told: true, post: { channel: 'c', message: 'm' } }
  const later = (weeks: number, finding: Finding = told) => tellStories(release(weekPlus(first, weeks), []), [finding])

  test('is shown anew once, in the first week in which nothing of it is recent, and stays what it was', () => {
    for (const weeks of [1, 8, 10, 20]) expect(later(weeks).grown, `${weeks} weeks later`).toEqual([])
    expect(later(9)).toEqual({ begun: [], grown: [{ ...told, stale: true, revision: told.revision + 1 }] })
  })

  test('needs nothing where it is decided, was never told, or is shown anew already', () => {
    for (const other of [{ state: 'dismissed' as const }, { told: false }, { stale: true }])
      expect(later(9, { ...told, ...other }).grown).toEqual([])
  })
})
