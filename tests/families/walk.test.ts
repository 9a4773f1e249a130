// A good cell looked at question by question: what is asked, in which order, and what comes of it, whatever is pressed.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  fits,
  looksOf,
  referenceOf,
  seeing,
  stepBack,
  stepOf,
  toLookAt,
  type Walk,
} from '../../src/families/strength/walk.ts'
import { anyCell as base } from './base.ts'
import { unnamedFamilies } from './known-families.ts'

const facts = unnamedFamilies['unnamed-18650-a'] ?? { traits: {} }
const begun: Walk = { id: 'r1', person: '1', family: 'f-aaaaaa', vouches: false, how: 'maker', order: 'one', seen: [] }

test('what needs a ring lifted comes last, and is asked only of who says they have done it', () => {
  const looks = toLookAt(base, facts).map(one => one.id)
  expect(looks.slice(0, 3)).toEqual(['legs', 'code-place', 'lettering-place'])
  expect(looks.at(-1)).toBe('dimples')
  for (const one of ['measured-capacity', 'lettering-look']) expect(looks).not.toContain(one)
  const seen = looks.slice(0, -1).map((id): [string, null] => [id, null])
  expect(stepOf({ ...begun, seen }, base, facts)).toEqual({ is: 'consent' })
  expect(stepOf({ ...begun, seen, lifts: true }, base, facts)).toMatchObject({ is: 'look', feature: { id: 'dimples' } })
  expect(stepOf({ ...begun, seen, lifts: false }, base, facts)).toEqual({ is: 'summary' })
  expect(stepBack({ ...begun, seen, lifts: false }, base)).toEqual({ ...begun, seen })
})

describe('whatever is pressed', () => {
  const pressed = fc.array(
    fc.oneof(fc.nat(9), fc.constant('unsure' as const), fc.constant('back' as const), fc.boolean()),
  )
  test('the walk ends, holds each feature once and only options that its question has, and back undoes a look', () => {
    fc.assert(
      fc.property(pressed, presses => {
        let walk = begun
        for (const one of presses) {
          const step = stepOf(walk, base, facts)
          if (one === 'back') walk = stepBack(walk, base)
          else if (typeof one === 'boolean') walk = step.is === 'consent' ? { ...walk, lifts: one } : walk
          else if (step.is === 'look') {
            const option = one === 'unsure' ? null : (step.feature.answer.options[one]?.id ?? 'no-such-option')
            const next = seeing(walk, step.feature, option)
            if (next !== walk) expect(stepBack(next, base).seen).toEqual(walk.seen)
            walk = next
          }
        }
        const asked = walk.seen.map(([feature]) => feature)
        expect(new Set(asked).size).toBe(asked.length)
        for (const [feature, option] of Object.entries(looksOf(walk)))
          expect(base.questions.find(one => one.id === feature)?.answer).toMatchObject({
            options: expect.arrayContaining([expect.objectContaining({ id: option })]),
          })
        expect(referenceOf(walk, '2026-W48', false)).toMatchObject({ state: 'offered', acceptedBy: null })
      }),
    )
  })
})

const looks = toLookAt(base, facts)
const untilRing = looks.filter(one => one.care !== 'unwrap').map((one): [string, string | null] => [one.id, null])

test('looked at is what leads, and what tells something of the family by itself; twelve looks at most, a ring lifted beside', () => {
  const plain = toLookAt(base, { traits: {} }).map(one => one.id)
  expect(plain).toEqual(['legs', 'code-place', 'lettering-place', 'vent-disc', 'weld-dots', 'dimples'])
  const trait = (more: object) => ({ made: [], against: [], remarks: [], ...more })
  const said = { options: ['poor'], tells: 'weak' as const, from: 'moderator' as const }
  const with_ = (print: object) => toLookAt(base, { traits: { print: trait(print) as never } }).map(one => one.id)
  expect(with_({ made: ['clean'] })).toContain('print')
  expect(with_({ against: [said] })).toContain('print')
  expect(with_({ against: [{ ...said, together: { legs: ['four'] } }] })).not.toContain('print')
  expect(with_({})).not.toContain('print')
  const many = Object.fromEntries(base.questions.map(one => [one.id, trait({ made: ['x'] }) as never]))
  const all = toLookAt(base, { traits: many })
  expect(all.filter(one => one.care !== 'unwrap')).toHaveLength(12)
  expect(all.at(-1)?.id).toBe('dimples')
})

test('each step says which look it is, and of how many; a ring that is not lifted is none of them', () => {
  expect(stepOf(begun, base, facts)).toEqual({ is: 'look', feature: looks[0], number: 1, of: looks.length })
  expect(stepOf({ ...begun, lifts: false }, base, facts)).toMatchObject({ number: 1, of: untilRing.length })
  expect(stepOf({ ...begun, seen: untilRing.slice(0, 2) }, base, facts)).toMatchObject({ number: 3, feature: looks[2] })
  expect(stepOf({ ...begun, checked: true }, base, facts)).toEqual({ is: 'summary' })
  const done = [...untilRing, ['dimples', 'two'] as [string, string]]
  expect(stepOf({ ...begun, lifts: true, seen: done }, base, facts)).toEqual({ is: 'summary' })
})

test('looked at again, a feature has what was seen last, and stands last', () => {
  const [one, two] = looks as [(typeof looks)[number], (typeof looks)[number]]
  const [first, second] = one.answer.options.map(each => each.id) as [string, string]
  const walk = seeing(seeing(begun, one, first), two, null)
  expect(seeing(walk, one, second).seen).toEqual([
    [two.id, null],
    [one.id, second],
  ])
  expect(seeing(walk, one, 'no-such-option')).toBe(walk)
  expect(looksOf(walk)).toEqual({ [one.id]: first })
})

test('one step back is the last look, and after the answer about the ring that answer', () => {
  const lifted = { ...begun, seen: untilRing, lifts: true }
  expect(stepBack(lifted, base)).toEqual({ ...begun, seen: untilRing })
  const seen: [string, string | null][] = [...untilRing, ['dimples', 'two']]
  expect(stepBack({ ...lifted, seen }, base)).toEqual(lifted)
  expect(stepBack({ ...begun, seen: untilRing }, base)).toEqual({ ...begun, seen: untilRing.slice(0, -1) })
  expect(stepBack(begun, base)).toEqual(begun)
})

test('what was seen fits, or does not, where it is known how it is made', () => {
  const legs = { traits: { legs: { made: ['three'], against: [], remarks: [] } } }
  expect([fits(legs, 'legs', 'three'), fits(legs, 'legs', 'four'), fits(legs, 'print', 'poor')]).toEqual([
    ...[true, false, undefined],
  ])
})

test('what comes of it counts at once where a moderator sends it, and is offered where somebody else does', () => {
  const walk: Walk = { ...begun, seen: [['legs', 'three']], mass: { value: 44, u: 0.1 } }
  const common = { id: 'r1', how: 'maker', order: 'one', week: '2026-W48', looks: { legs: 'three' }, by: '1' }
  expect(referenceOf(walk, '2026-W48', true)).toEqual({
    ...{ ...common, mass: { value: 44, u: 0.1 }, acceptedBy: '1', state: 'accepted' },
  })
  expect(referenceOf(begun, '2026-W48', false)).toEqual({ ...common, looks: {}, acceptedBy: null, state: 'offered' })
})
