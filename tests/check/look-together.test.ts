// A figure and what was chosen that accuses with it are looked at again in one go: each is asked about, and each can be put right.
import { expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { screenOf } from '../../src/check/screen.ts'
import { option, reading } from '../../src/engine/answers.ts'
import { judge } from '../../src/engine/judge.ts'
import { shippedProgram } from '../rules/shipped-programs.ts'
import { asked, handsOn } from './hands.ts'

const program = shippedProgram()
const { begin, say, does } = handsOn(program)

/** The second look at an overstated claim. */
function overstated(): Check {
  let check = begin({ mode: 'quick' })
  const answers = {
    'hot-now': option('nothing'),
    swollen: option('straight'),
    leaking: option('clean'),
    'claimed-capacity': reading(9900),
    format: option('18650'),
  } as const
  while (check.phase.is === 'asking') check = say(check, answers[asked(check) as keyof typeof answers])
  expect(check.phase).toMatchObject({ is: 'second-look', question: 'claimed-capacity' })
  return check
}
const verdictOf = (check: Check) => judge(program, check.answers).verdict

test('the screen names what was chosen beside the figure, and neither counts before it was looked at again', () => {
  const check = overstated()
  const screen = screenOf(program, check)
  expect(screen.kind === 'question' && screen.beside).toEqual(['format'])
  expect(verdictOf(check)).toBe('open')
})

test('one answer for both confirms both; for the figure alone, the size is asked about by itself', () => {
  const figure = { is: 'answer', question: 'claimed-capacity', answer: reading(9900) } as const
  const both = does(overstated(), { ...figure, together: true })
  expect(both.phase.is).toBe('done')
  expect(both.confirmed).toEqual(['claimed-capacity', 'format'])
  expect(verdictOf(both)).toBe('ruled-out')
  const one = does(overstated(), figure)
  expect(one.phase).toMatchObject({ is: 'second-look', question: 'format' })
  expect(verdictOf(one)).toBe('open')
})

test('another figure confirms nothing beside it', () => {
  const read = does(overstated(), {
    ...{ is: 'answer', question: 'claimed-capacity', answer: reading(2500), together: true },
  } as const)
  expect(read.confirmed).toBeUndefined()
  expect(verdictOf(read)).toBe('open')
})

test('the size can be put right from there, and the figure is then asked about with the new one', () => {
  const changing = does(overstated(), { is: 'change', question: 'format' })
  expect(changing.phase).toMatchObject({ is: 'asking', question: 'format' })
  const still = say(changing, option('26650'))
  expect(still.phase).toMatchObject({ is: 'second-look', question: 'claimed-capacity' })
  const screen = screenOf(program, still)
  expect(screen.kind === 'question' && screen.beside).toEqual(['format'])
  expect(still.answers['format']).toEqual(option('26650'))
  const both = does(still, { is: 'answer', question: 'claimed-capacity', answer: reading(9900), together: true })
  expect(verdictOf(both)).toBe('ruled-out')
})

test('a helper who answers for the figure from afar has not looked at the size', () => {
  const check = overstated()
  const helped = does(check, {
    ...{ is: 'answer', question: 'claimed-capacity', answer: reading(9900), together: true, by: 'ilse' },
  } as const)
  expect(helped.confirmed ?? []).not.toContain('format')
})
