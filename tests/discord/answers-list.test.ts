// The list of answers: every one can be chosen to be given again, however many there are.
import { ComponentType } from 'discord.js'
import { expect, test } from 'vitest'
import { start } from '../../src/check/step.ts'
import { showAnswers } from '../../src/discord/check/show/answers.ts'
import { cantTell } from '../../src/engine/answers.ts'
import { sayIn } from '../../src/words/say.ts'
import { shippedProgram } from '../rules/shipped-programs.ts'

test.each([1, 25, 26, 60])('of %i answers each stands in one menu, the latest first', many => {
  const program = shippedProgram()
  const trail = [...program.questions.keys()].slice(0, many)
  expect(trail).toHaveLength(many)
  const begun = start(
    program,
    { id: 'c'.repeat(20), holder: 'p', server: null, mode: 'full', cells: 1, family: null },
    Date.UTC(2026, 10, 29),
  )
  if (!begun.ok) throw new Error(begun.refusal.code)
  const answers = Object.fromEntries(trail.map(id => [id, cantTell]))
  const { components } = showAnswers(sayIn('en'), program, { ...begun.check, answers, trail })
  const menus = components.flatMap(row =>
    row.type === ComponentType.ActionRow
      ? row.components.flatMap(one => (one.type === ComponentType.StringSelect ? [one] : []))
      : [],
  )
  expect(menus.flatMap(one => one.options.map(({ value }) => value))).toEqual(trail.toReversed())
  for (const one of menus) expect(one.options.length).toBeLessThanOrEqual(25)
  expect(new Set(menus.map(one => one.custom_id)).size).toBe(menus.length)
})
