// Whether the channel has to be told of a finding, whether its time of watching is over, and whether something is on its way.
import { expect, test } from 'vitest'
import {
  begin,
  type Finding,
  isDue,
  isOver,
  isPending,
  untouched,
  withoutPerson,
} from '../../../src/trends/findings/finding.ts'

const week = '2026-W40'
const begun: Finding = begin({ family: 'rook', week, parts: [] } as unknown as Parameters<typeof begin>[0], 'f1', 's')
const told: Finding = { ...begun, told: true, stale: false }

test('watched until a week that has come is over; before it, or in another state, it is not', () => {
  const watched = { ...told, state: 'watching', until: week } as const
  expect(isOver(watched, '2026-W39')).toBe(false)
  expect(isOver(watched, week)).toBe(true)
  expect(isOver(watched, '2027-W01')).toBe(true)
  expect(isOver({ ...watched, state: 'open' }, week)).toBe(false)
  expect(isOver({ ...watched, until: null }, week)).toBe(false)
})

test('told of is what was not told yet, has changed since, or was watched long enough; nothing else', () => {
  expect(isDue(told, week)).toBe(false)
  expect(isDue({ ...told, told: false }, week)).toBe(true)
  expect(isDue({ ...told, stale: true }, week)).toBe(true)
  expect(isDue({ ...told, state: 'watching', until: week }, week)).toBe(true)
  expect(isDue({ ...told, state: 'watching', until: '2026-W41' }, week)).toBe(false)
})

test('on its way is a warning, or a word that withdraws one, that Discord does not have yet', () => {
  const word = { channel: 'c', text: 't', message: null, why: '' }
  expect(isPending(told)).toBe(false)
  expect(isPending({ ...told, warning: { ...word, posted: false } })).toBe(true)
  expect(isPending({ ...told, warning: { ...word, posted: true } })).toBe(false)
  expect(isPending({ ...told, withdrawal: { ...word, posted: false } })).toBe(true)
})

test('the name of a person is taken out of each decision and of who took it back, and nothing else changes', () => {
  const decision = { at: 1, did: 'dismissed', why: 'q', before: untouched } as const
  const finding: Finding = {
    ...told,
    decisions: [
      { ...decision, by: 'q', undone: null },
      { ...decision, by: 'p', undone: { by: 'q', at: 2, why: 'q' } },
      { ...decision, by: 'q', undone: { by: 'p', at: 2, why: '' } },
    ],
  }
  expect(withoutPerson(finding, 'q', 'nobody')).toEqual({
    ...finding,
    decisions: [
      { ...decision, by: 'nobody', undone: null },
      { ...decision, by: 'p', undone: { by: 'nobody', at: 2, why: 'q' } },
      { ...decision, by: 'nobody', undone: { by: 'p', at: 2, why: '' } },
    ],
  })
})

test('as it begins nobody has been told, and it was seen in the week of its release', () => {
  const found = { key: 'k', family: 'rook', week, parts: [] }
  const now = begin(found, 'f1', 's')
  expect(now).toEqual({
    ...{ ...untouched, ...found, id: 'f1', server: 's', seen: week, revision: 0, told: false, post: null },
    ...{ stale: false, withdrawal: null, decisions: [] },
  })
  expect(begin({ ...found, seen: '2026-W42' }, 'f1', 's').seen).toBe('2026-W42')
})
