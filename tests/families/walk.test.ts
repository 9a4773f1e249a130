// A good cell looked at question by question: what is asked, in which order, and what comes of it, whatever is pressed.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
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
