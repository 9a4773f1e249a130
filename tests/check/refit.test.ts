// A check that is open while the packs change: what no longer fits is asked again, and nothing else changes.
import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { refit } from '../../src/check/refit.ts'
import { cantTell, option, reading } from '../../src/engine/answers.ts'
import { asked, handsOn } from './hands.ts'
import { lanternFamilies, lanternOf, lanternProgram, lanternQuestions, lanternRules } from './lantern-pack.ts'

const [lanternFamily] = lanternFamilies as [(typeof lanternFamilies)[number]]
const before = lanternProgram('lamp')
const begun = handsOn(before).begin()
const answers = {
  ...begun.answers,
  smoke: option('no'),
  wrap: cantTell,
  legs: option('three'),
  mass: reading(45, 0.1),
  print: option('no'),
}
const check: Check = { ...begun, answers, trail: ['smoke', 'wrap', 'legs', 'mass', 'print'], revision: 7 }

/** The program after a change of the pack. */
const renewed = (change: Parameters<typeof lanternOf>[0] = {}) =>
  lanternProgram('lamp', lanternOf(change, 'sha256:next'))
const questions = (change: (one: (typeof lanternQuestions)[number]) => object) =>
  renewed({ questions: lanternQuestions.map(change) as typeof lanternQuestions })

describe('a check whose pack has changed', () => {
  test('keeps every answer that still fits, its revision and its question, and is of the new packs', () => {
    const fitted = refit(renewed(), check)
    expect(fitted).toEqual({ ...check, packs: renewed().packs })
    expect(fitted.packs).not.toEqual(check.packs)
  })

  test('loses an option that is gone, in its answers and its trail', () => {
    const four = { id: 'four', label: 'Four' }
    const program = questions(one =>
      one.id === 'legs' ? { ...one, options: [{ id: 'two', label: 'Two' }, four] } : one,
    )
    const { legs: _, ...others } = answers
    expect(refit(program, check)).toMatchObject({ trail: ['smoke', 'wrap', 'mass', 'print'] })
    expect(refit(program, check).answers).toEqual(others)
  })

  test('loses what was chosen where a figure is wanted now, and a figure where something is to be chosen', () => {
    const look = { ask: 'And now?', care: 'look', effort: 1 }
    const choice = [
      { id: 'light', label: 'Light' },
      { id: 'heavy', label: 'Heavy' },
    ]
    const program = renewed({
      questions: lanternQuestions.map(one => {
        if (one.id === 'print') return { id: 'print', ...look, reading: { quantity: 'length', least: 1, most: 100 } }
        return one.id === 'mass' ? { id: 'mass', ...look, options: choice } : one
      }) as typeof lanternQuestions,
      rules: lanternRules.flatMap(one => {
        if ('print' in one.when) return { ...one, when: { print: { below: 5 } } }
        return 'mass' in one.when ? { ...one, when: { mass: 'light' } } : one
      }) as typeof lanternRules,
    })
    expect(refit(program, check).trail).toEqual(['smoke', 'wrap', 'legs'])
    // "Can't tell" is an answer whatever is wanted.
    const unsure = { ...check, answers: { ...answers, print: cantTell, mass: cantTell } }
    expect(refit(program, unsure).trail).toEqual(check.trail)
  })

  test('is given what the family brings now', () => {
    const program = renewed({ families: [{ ...lanternFamily, given: { print: 'yes' } }] as never })
    expect(refit(program, check).answers['print']).toEqual(option('yes'))
  })

  test('is asked what comes next, where the question on the screen is gone', () => {
    const at: Check = { ...check, answers: begun.answers, trail: [], phase: { is: 'asking', question: 'colour' } }
    const fitted = refit(renewed(), at)
    expect(renewed().questions.has(asked(fitted))).toBe(true)
    expect(fitted.answers[asked(fitted)]).toBeUndefined()
    expect(refit(renewed(), { ...check, phase: { is: 'asking', question: 'seam' } }).phase).toMatchObject({
      question: 'seam',
    })
  })
})

test('a check of these very packs stays as it is, whatever it holds', () => {
  const odd: Check = { ...check, answers: { ...answers, colour: option('red') } }
  expect(refit(before, odd)).toBe(odd)
})
