// Which questions of a pack can be features of a family: what is looked at on a cell, and what no hazard reads.
import type { QuestionId } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { questionsOf } from '../engine/conditions.ts'
import type { Option, Pack, Question } from '../engine/pack/pack.ts'

/** Says where a cell comes from, or how something else was measured; it is nothing a family is made with. */
const notLooks = [
  ...['how-many', 'format', 'sold-as', 'where-bought', 'price', 'label-listing', 'asked-seller', 'chemistry'],
  ...['reference-at-hand', 'reference-lettering', 'reference-code', 'reference-top', 'same-serial', 'batch'],
  ...['batch-masses', 'voltage-rest', 'resistance-meter', 'wrap-colour', 'weld-marks'],
]

/** The features that a moderator is shown first, in the order of the page; the rest is offered in a menu. */
export const leadingFeatures = ['lettering-place', 'code-place', 'dimples', 'legs', 'vent-disc', 'weld-dots'] as const

/** What a cell that nobody has described is asked about besides, since these are what cells are told apart by. */
export const lookedAtAnyway = ['lettering-place', 'code-place', 'legs', 'vent-disc', 'weld-dots'] as const

export type Feature = Question & { readonly answer: { readonly kind: 'options'; readonly options: readonly Option[] } }

const isOptions = (question: Question): question is Feature => question.answer.kind === 'options'
const known = new WeakMap<Pack, ReadonlyMap<string, Feature>>()

/** The features by id, in the pack's order. */
export function featuresOf(base: Pack): ReadonlyMap<string, Feature> {
  const before = known.get(base)
  if (before) return before
  const dangerous = new Set(base.rules.flatMap(rule => (rule.kind === 'hazard' ? questionsOf(rule.when) : [])))
  const features = new Map(
    base.questions
      .filter(isOptions)
      .filter(question => !dangerous.has(question.id) && !notLooks.includes(question.id))
      .map(question => [question.id, question]),
  )
  known.set(base, features)
  return features
}

/** What a family's rules ask about beside its features: they are for a size, and not held against what was sold rewrapped. */
const asked: readonly QuestionId[] = ['format', 'sold-as']

/** Of the questions of a program, those whose answers an outcome keeps: what patterns, back-tests and judging again are made of. */
export const isKept = ({ hazards, questions }: Pick<Program, 'hazards' | 'questions'>, id: QuestionId): boolean =>
  asked.includes(id) || (questions.get(id)?.answer.kind === 'options' && !hazards.has(id) && !notLooks.includes(id))

/** Whether a feature is only looked at or felt, so that a second look costs nothing. */
export const isLook = ({ care }: Question): boolean => care === 'look' || care === 'handle'
