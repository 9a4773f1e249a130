// Which questions of a pack can be features of a family: what is looked at on a cell, and what no hazard reads.
import type { QuestionId } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { questionsOf } from '../engine/conditions.ts'
import type { Option, Pack, Question } from '../engine/pack/pack.ts'
import type { Facts } from './facts/facts-schema.ts'

/** Says where a cell comes from, or how something else was measured; it is nothing a family is made with. */
const notLooks = [
  ...['how-many', 'format', 'sold-as', 'where-bought', 'price', 'label-listing', 'asked-seller', 'chemistry'],
  ...['reference-at-hand', 'reference-lettering', 'reference-code', 'reference-top', 'same-serial', 'batch'],
  ...['batch-masses', 'voltage-rest', 'resistance-meter', 'wrap-colour', 'weld-marks'],
]

/** The features that a moderator is shown first, in the order in which a check asks about them: what needs a ring lifted comes last. */
export const leadingFeatures = ['legs', 'code-place', 'lettering-place', 'vent-disc', 'weld-dots', 'dimples'] as const

/** Features that a new wrap changes nothing of. */
export const ofMetal = (feature: string): boolean => ['legs', 'vent-disc', 'weld-dots', 'dimples'].includes(feature)

/** What a cell that nobody has described is asked about besides, since these are what cells are told apart by. */
export const lookedAtAnyway = ['lettering-place', 'code-place', 'legs', 'vent-disc', 'weld-dots'] as const

/** What is asked about after these, in order; whatever is left keeps the order of the pack. */
const further = [
  'ends-finish',
  'second-wrap',
  'measured-capacity',
  'second-ring',
  'print',
  'lettering-look',
  'code-print',
]

/** Depends on what one knows, owns or was told, more than on how the cell is made: a file may speak of it, the menu does not offer it. */
const notOffered = [
  ...[
    'other-format',
    'volts-beside',
    'arrival-charge',
    'current-word',
    'current-looked-up',
    'in-device',
    'label-energy',
  ],
  ...['in-makers-list', 'sheet-fits', 'sheet-of-new-class', 'first-sold', 'test-current', 'bench-capacity'],
  ...['sheet-resistance', 'load-test-leads'],
]

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

/** Features in the order in which a check asks about them. */
export function inCheckOrder(base: Pack, features: readonly string[]): string[] {
  const looks = leadingFeatures.filter(one => one !== 'dimples')
  const order: readonly string[] = [...new Set([...looks, ...further, ...featuresOf(base).keys()])]
  const place = (id: string): number => (id === 'dimples' ? order.length : order.indexOf(id))
  return [...features].sort((a, b) => place(a) - place(b))
}

/** What a moderator may say something about, in the check's order: whatever is known already, and what cells are told apart by. */
export function offeredFeatures(base: Pack, { traits }: Pick<Facts, 'traits'>, most: number): string[] {
  const all = [...featuresOf(base).keys()]
  const known = all.filter(one => traits[one])
  const others = inCheckOrder(
    base,
    all.filter(one => !traits[one] && !notOffered.includes(one)),
  )
  return inCheckOrder(base, [...known, ...others.slice(0, Math.max(0, most - known.length))])
}

/** What a family's rules ask about beside its features: they are for a size, and not held against what was sold rewrapped. */
const asked: readonly QuestionId[] = ['format', 'sold-as']

/** Of the questions of a program, those whose answers an outcome keeps: what patterns, back-tests and judging again are made of. */
export const isKept = ({ hazards, questions }: Pick<Program, 'hazards' | 'questions'>, id: QuestionId): boolean =>
  asked.includes(id) || (questions.get(id)?.answer.kind === 'options' && !hazards.has(id) && !notLooks.includes(id))

/** Whether a feature is only looked at or felt, so that a second look costs nothing. */
export const isLook = ({ care }: Question): boolean => care === 'look' || care === 'handle'
