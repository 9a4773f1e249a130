// Another family before the first question: what is known stays where it is asked there too, and what went without saying changes with it.
import { expect, test } from 'vitest'
import { chooseFamily } from '../../src/check/beginning.ts'
import type { Check } from '../../src/check/check.ts'
import { option } from '../../src/engine/answers.ts'
import type { Program } from '../../src/engine/compile.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import { shippedPacks } from '../rules/shipped-programs.ts'
import { handsOn } from './hands.ts'

const programs = openPrograms(shippedPacks)
const day = '2026-11-30'
const program = (family: string | null) => programs.programFor(family, day) as Program
const families = programs.families.filter(one => Object.keys(one.given).length > 0)

test('a fact that was told stays, a fact that a family brings goes with it, and what the other does not ask is left behind', () => {
  const [one, another] = families
  if (!one || !another) throw new Error('two families that settle something are needed')
  const begun = handsOn(program(one.id)).begin()
  const told: Check = {
    ...begun,
    phase: { is: 'beginning' },
    answers: { ...begun.answers, 'where-bought': option('marketplace'), 'asked-nowhere': option('x') },
    trail: ['where-bought', 'asked-nowhere'],
  }
  const chosen = chooseFamily(program(one.id), program(another.id), told)
  if (!chosen.ok) throw new Error(chosen.refusal.code)
  expect(chosen.check.family).toBe(another.id)
  const asks = program(another.id).questions.has('where-bought')
  expect(chosen.check.answers).toEqual({
    'how-many': option('one'),
    ...program(another.id).given,
    ...(asks && { 'where-bought': option('marketplace') }),
  })
  expect(chosen.check.trail).toEqual(asks ? ['where-bought'] : [])
  const none = chooseFamily(program(one.id), program(null), told)
  for (const id of Object.keys(program(one.id).given)) expect(none.ok && none.check.answers).not.toHaveProperty(id)
})

test('not once a question was asked', () => {
  const begun = handsOn(program(null)).begin()
  const asking: Check = { ...begun, phase: { is: 'done' } }
  expect(chooseFamily(program(null), program(families[0]?.id ?? null), asking).ok).toBe(false)
})
