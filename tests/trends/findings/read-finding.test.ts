// A finding of the first versions says after reading what it said then: the same past, and where that has left it.
import { describe, expect, test } from 'vitest'
import { decide, standingOf } from '../../../src/trends/findings/decide.ts'
import { untouched } from '../../../src/trends/findings/finding.ts'
import { broughtUp, type EarlierFinding } from '../../../src/trends/findings/read-finding.ts'

const week = '2026-W40'
const rise = { is: 'rise', rise: { family: 'heron', rule: 'torn-wrap', week, standsOut: true } } as const
const earlier: EarlierFinding = {
  id: 'f1',
  server: 's1',
  key: 'rise heron torn-wrap',
  week,
  found: rise,
  revision: 4,
  state: 'new',
  again: null,
  warning: null,
  decisions: [],
}
const posted = { channel: 'c', text: 'look twice', posted: true }
const warned = { by: 'p', at: 1, did: 'warned', why: 'look twice' } as const
const putOff = { by: 'q', at: 2, did: 'put-off', why: '2026-W44' } as const
const dismissed = { by: 'r', at: 3, did: 'dismissed', why: 'one lot' } as const

test('one that nobody has touched is open, with its one part, seen in the week in which it began', () => {
  expect(broughtUp(earlier)).toEqual({
    ...untouched,
    id: 'f1',
    server: 's1',
    key: 'rise heron torn-wrap',
    family: 'heron',
    week,
    seen: week,
    parts: [rise],
    revision: 4,
    told: false,
    post: null,
    stale: false,
    withdrawal: null,
    decisions: [],
  })
})

test('its family is that of the rise or of the pattern', () => {
  const pattern = { is: 'pattern', pattern: { family: 'rook' } } as never
  expect(broughtUp({ ...earlier, found: pattern })).toMatchObject({ family: 'rook', parts: [pattern] })
})

test.each([
  ['new', false],
  ['told', true],
  ['settled', true],
] as const)('one that was %s: moderators have been told: %s', (state, told) => {
  expect(broughtUp({ ...earlier, state }).told).toBe(told)
})

describe('where its decisions have left it', () => {
  const left = (change: Partial<EarlierFinding>) => broughtUp({ ...earlier, state: 'settled', ...change })
  test('warned: with the warning, whose message nobody has kept', () => {
    expect(standingOf(left({ warning: posted, decisions: [warned] }))).toEqual({
      ...untouched,
      state: 'warned',
      warning: { ...posted, message: null },
    })
  })
  test('dismissed', () => {
    expect(standingOf(left({ decisions: [dismissed] }))).toEqual({ ...untouched, state: 'dismissed' })
  })
  test('put off: it is watched until that week', () => {
    expect(standingOf(left({ again: '2026-W44', decisions: [putOff] }))).toEqual({
      ...untouched,
      state: 'watching',
      until: '2026-W44',
    })
  })
  test('put off, and the week has come: it is open again', () => {
    expect(standingOf(left({ state: 'told', decisions: [putOff] }))).toEqual(untouched)
  })
  test('put off and then decided: it is no longer watched, though no week is to come', () => {
    expect(standingOf(left({ decisions: [putOff, dismissed] }))).toEqual({ ...untouched, state: 'dismissed' })
    expect(standingOf(left({ warning: posted, decisions: [putOff, warned] }))).toEqual({
      ...untouched,
      state: 'warned',
      warning: { ...posted, message: null },
    })
  })
})

test('each decision says how the finding stood before it, so that it can be taken back', () => {
  const finding = broughtUp({ ...earlier, state: 'settled', decisions: [putOff, dismissed] })
  expect(finding.decisions).toEqual([
    { ...putOff, before: untouched, undone: null },
    { ...dismissed, before: { ...untouched, state: 'watching', until: '2026-W44' }, undone: null },
  ])
  const undone = decide(finding, { is: 'undo', by: 'u', of: 2, why: '' }, 4)
  expect(undone).toMatchObject({ state: 'watching', until: '2026-W44' })
})
