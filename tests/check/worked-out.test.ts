// Figures that follow from figures given before: nobody is asked for them, they are looked at twice, and they go with what they came from.
import { expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { knownFigures } from '../../src/check/known/known-figures.ts'
import { type Answers, cantTell, option, reading } from '../../src/engine/answers.ts'
import { judge } from '../../src/engine/judge.ts'
import { fieldsLeft } from '../../src/readings/form.ts'
import { shippedProgram } from '../rules/shipped-programs.ts'
import { sound } from '../rules/sound-looks.ts'
import { asked, handsOn } from './hands.ts'

const program = shippedProgram()

const { begin, say, does } = handsOn(program)

/** A new 26650 said to give 45 A, with a resistance of its own. */
const cell = (mΩ: number): Answers => ({
  ...sound,
  format: option('26650'),
  chemistry: option('nickel-or-cobalt'),
  'claimed-capacity': reading(4200),
  'claimed-current': reading(45),
  'current-word': option('continuous'),
  voltage: reading(3.6, 0.01),
  'resistance-meter': option('four-wire'),
  'ac-resistance': reading(mΩ, 0.3),
  'room-temperature': reading(22, 0.5),
})

/** Answered by name until `until` holds; the questions that were asked. */
function walk(answers: Answers, until: (check: Check) => boolean): { check: Check; asks: string[] } {
  let check = begin({ tools: ['meter'] })
  const asks: string[] = []
  for (let i = 0; i < 150 && check.phase.is === 'asking' && !until(check); i++) {
    asks.push(asked(check))
    check = say(check, answers[asked(check)] ?? cantTell)
  }
  return { check, asks }
}
/** Says every answer that is asked about again once more. */
function confirm(check: Check): { check: Check; asks: string[] } {
  const asks: string[] = []
  let sure = check
  while (sure.phase.is === 'second-look') {
    asks.push(sure.phase.question)
    sure = say(sure, sure.phase.answer)
  }
  return { check: sure, asks }
}
const workedOut = ({ answers, phase }: Check): boolean =>
  answers['voltage-at-claim'] !== undefined || (phase.is === 'second-look' && phase.question === 'voltage-at-claim')

test('the voltage lost is worked out of claim and resistance, and asked of nobody', () => {
  const { check, asks } = walk(cell(8), workedOut)
  expect(asks).toContain('ac-resistance')
  expect(asks).not.toContain('voltage-at-claim')
  // 8 mΩ times 45 A, and 0.3 mΩ times 45 A.
  expect(check.answers['voltage-at-claim']).toMatchObject({ kind: 'reading', value: 0.36 })
  expect((check.answers['voltage-at-claim'] as { u: number }).u).toBeCloseTo(0.0135, 9)
  const whole = walk(cell(8), () => false)
  expect(whole.asks).not.toContain('voltage-at-claim')
  expect(judge(program, whole.check.answers).verdict).toBe('open')
})

test('where it accuses it is looked at twice, at every figure, and then it counts', () => {
  const { check } = walk(cell(30), ({ phase }) => phase.is === 'second-look')
  expect(check.phase).toMatchObject({ is: 'second-look', question: 'voltage-at-claim' })
  expect(judge(program, check.answers).verdict).toBe('open')
  expect(fieldsLeft('voltage-lost', knownFigures(program, check, 'voltage-at-claim')).map(({ id }) => id)).toEqual([
    'claimed-current',
    'ac-resistance',
  ])
  expect(judge(program, confirm(check).check.answers).verdict).toBe('doubtful')
})

test('another resistance takes it with it, confirmed or not', () => {
  let { check } = walk(cell(30), ({ phase }) => phase.is === 'second-look')
  check = does(check, { is: 'change', question: 'ac-resistance' })
  check = say(check, reading(8, 0.3))
  expect(check.answers['voltage-at-claim']).toMatchObject({ value: 0.36 })
  expect(check.pending?.['voltage-at-claim']).toBeUndefined()
  check = does(check, { is: 'change', question: 'ac-resistance' })
  check = confirm(say(check, reading(30, 0.3))).check
  expect(judge(program, check.answers).verdict).toBe('doubtful')
  // What was confirmed of one resistance is not confirmed of another.
  check = does(check, { is: 'change', question: 'ac-resistance' })
  const { asks } = confirm(say(check, reading(31, 0.3)))
  expect(asks).toContain('voltage-at-claim')
})

test('the same resistance typed once more leaves what was confirmed as it is', () => {
  let { check } = walk(cell(30), ({ phase }) => phase.is === 'second-look')
  check = confirm(check).check
  const before = check
  check = say(does(check, { is: 'change', question: 'ac-resistance' }), reading(30, 0.3))
  expect(check.phase.is).not.toBe('second-look')
  expect(check.confirmed).toEqual(before.confirmed)
  expect(judge(program, check.answers).verdict).toBe('doubtful')
})

test('what somebody typed by itself is not worked out again', () => {
  let { check } = walk(cell(8), workedOut)
  check = say(does(check, { is: 'change', question: 'voltage-at-claim' }), reading(0.3, 0.01))
  expect(check.answers['voltage-at-claim']).toEqual(reading(0.3, 0.01))
  for (let i = 0; i < 5 && check.phase.is === 'asking'; i++) check = say(check, cantTell)
  expect(check.answers['voltage-at-claim']).toEqual(reading(0.3, 0.01))
})

test('going back goes to what somebody typed, and what followed from it is gone', () => {
  let { check } = walk(cell(8), workedOut)
  const last = check.trail.filter(id => id !== 'voltage-at-claim').at(-1)
  check = does(check, { is: 'back' })
  expect(asked(check)).toBe(last)
  while (asked(check) !== 'ac-resistance') check = does(check, { is: 'back' })
  expect(check.answers['voltage-at-claim']).toBeUndefined()
  expect(check.trail).not.toContain('voltage-at-claim')
})

test('whoever changes it by itself types both figures', () => {
  let { check } = walk(cell(8), workedOut)
  check = does(check, { is: 'change', question: 'voltage-at-claim' })
  expect(fieldsLeft('voltage-lost', knownFigures(program, check, 'voltage-at-claim'))).toHaveLength(2)
})

test('a claimed current is asked for with the capacity at hand, in a second look too', () => {
  const { check } = walk(cell(8), at => at.answers['claimed-capacity'] !== undefined)
  const again: Check = { ...check, phase: { is: 'second-look', question: 'claimed-current', answer: reading(45) } }
  for (const at of [check, again])
    expect(knownFigures(program, at, 'claimed-current')).toMatchObject({ capacity: { value: 4200 } })
})
