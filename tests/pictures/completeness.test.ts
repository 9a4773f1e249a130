// Every question of the shipped packs is drawn, option by option, or it stands in undrawn.ts with the reason why it is not.
import { describe, expect, test } from 'vitest'
import type { Question } from '../../src/engine/pack/pack.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { drawOption, drawQuestion } from '../../src/pictures/from-packs/draw-question.ts'
import { isShown } from '../../src/pictures/from-packs/read-picture.ts'
import { measuredQuestions, undrawnOptions, undrawnQuestions } from './undrawn.ts'

const { packs } = await loadPacks(shippedRules)
const questions = packs.flatMap(({ pack }) => pack.questions)

/** What lacks a drawing, by the names undrawn.ts uses. */
function lacking(question: Question): { question?: string; measured?: string; options: string[] } {
  if (!drawQuestion(question)) return { question: question.id, options: [] }
  if (question.answer.kind === 'reading') return { options: [] }
  if (question.picture?.kind === 'measuring') return { measured: question.id, options: [] }
  const missing = question.answer.options.filter(option => !drawOption(question, option))
  return { options: missing.map(option => `${question.id}.${option.id}`) }
}

const found = questions.map(lacking)

describe('what is not drawn is written down, and what is written down is not drawn', () => {
  test('questions', () => {
    expect(found.flatMap(one => one.question ?? []).sort()).toEqual(Object.keys(undrawnQuestions).sort())
  })
  test('questions whose picture shows how to measure', () => {
    expect(found.flatMap(one => one.measured ?? []).sort()).toEqual(Object.keys(measuredQuestions).sort())
  })
  test('options', () => {
    expect(found.flatMap(one => one.options).sort()).toEqual(Object.keys(undrawnOptions).sort())
  })
  test('each with a reason in a sentence', () => {
    for (const reason of Object.values({ ...undrawnQuestions, ...measuredQuestions, ...undrawnOptions }))
      expect(reason).toMatch(/^[A-Z].{12,}\.$/)
  })
})

test('no two options of a question look the same', () => {
  const drawn = questions.filter(({ answer }) => answer.kind === 'options' && answer.options.some(isShown))
  expect(drawn.length).toBeGreaterThanOrEqual(25)
  for (const question of drawn) {
    const options = question.answer.kind === 'options' ? question.answer.options : []
    const pictures = options.flatMap(one => drawOption(question, { ...one, label: '' })?.svg ?? [])
    expect(new Set(pictures).size, question.id).toBe(pictures.length)
  }
})
