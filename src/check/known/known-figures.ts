// Which figures of a form a check knows already, because a question of its own asked for them; and what was worked out of them.
import { type Answers, type QuestionId, reading } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import type { Question } from '../../engine/pack/pack.ts'
import type { Quantity } from '../../ground/quantities.ts'
import { fieldsLeft, fieldsOf, type KnownFigures, readForm } from '../../readings/form.ts'
import { misfit } from '../answer-fits.ts'
import type { Check } from '../check.ts'

/** The field of a form that a question of this quantity answers by itself. */
const fieldOf: Partial<Record<Quantity, keyof KnownFigures>> = {
  'claimed-capacity': 'capacity',
  'claimed-current': 'claimed-current',
  'ac-resistance': 'ac-resistance',
  mass: 'mass',
  diameter: 'diameter',
  length: 'length',
}

const quantityOf = (question: Pick<Question, 'answer'> | undefined): Quantity | undefined =>
  question?.answer.kind === 'reading' ? question.answer.quantity : undefined

/** The field that this question asks for by itself; undefined for every other question. */
const fieldAsked = (question: Pick<Question, 'answer'> | undefined): keyof KnownFigures | undefined => {
  const quantity = quantityOf(question)
  return quantity && fieldOf[quantity]
}

/** The figures that questions of their own have asked for, in canonical units. */
function figuresIn(program: Program, answers: Answers): KnownFigures {
  const known: KnownFigures = {}
  for (const { id, field } of askedIn(program)) {
    const answer = answers[id]
    if (answer?.kind === 'reading') known[field] = { value: answer.value, u: answer.u }
  }
  return known
}

/**
 * For the form of `question`; none of its own fields in a second look, which is one at every figure, nor where all of them are known:
 * whoever asks for a figure that was worked out wants to type it.
 */
export function knownFigures(program: Program, { answers, phase }: Check, question: QuestionId): KnownFigures {
  const known = figuresIn(program, answers)
  const quantity = quantityOf(program.questions.get(question))
  if (!quantity || (phase.is !== 'second-look' && fieldsLeft(quantity, known).length > 0)) return known
  const own: readonly string[] = fieldsOf(quantity).map(field => field.id)
  return Object.fromEntries(Object.entries(known).filter(([field]) => !own.includes(field)))
}

/** What a form works out of several figures. */
const workedOut: Partial<Record<Quantity, readonly (keyof KnownFigures)[]>> = {
  'energy-per-volume': ['capacity', 'diameter', 'length'],
  'energy-per-mass': ['capacity', 'mass'],
  'voltage-lost': ['claimed-current', 'ac-resistance'],
  'voltage-lost-under-load': ['claimed-current'],
}
const partsIn = (question: Pick<Question, 'answer'>): readonly (keyof KnownFigures)[] => {
  const quantity = quantityOf(question)
  return (quantity && workedOut[quantity]) ?? []
}

/** The questions of their own for the figures that this one is worked out of; none for a figure that is typed in as it is. */
export function partsOf(program: Program, question: Pick<Question, 'answer'>): readonly QuestionId[] {
  const fields = partsIn(question)
  return fields.length === 0 ? [] : askedIn(program).flatMap(one => (fields.includes(one.field) ? [one.id] : []))
}

const derived = new WeakMap<Program['questions'], readonly Question[]>()

/** The questions of a program that are worked out of others' figures. */
function workedOutIn({ questions }: Program): readonly Question[] {
  const known = derived.get(questions) ?? [...questions.values()].filter(one => partsIn(one).length > 0)
  derived.set(questions, known)
  return known
}

type Asked = { readonly id: QuestionId; readonly field: keyof KnownFigures }
const asked = new WeakMap<Program['questions'], readonly Asked[]>()

/** The questions of a program that ask for one figure each, in its order. */
function askedIn({ questions }: Program): readonly Asked[] {
  const known = asked.get(questions)
  if (known) return known
  const found = [...questions.values()].flatMap((one): Asked[] => {
    const field = fieldAsked(one)
    return field ? [{ id: one.id, field }] : []
  })
  asked.set(questions, found)
  return found
}

/** The questions whose answers were worked out of this one's: another figure makes them out of date. */
export function workedOutOf(program: Program, question: QuestionId): QuestionId[] {
  const field = fieldAsked(program.questions.get(question))
  if (!field) return []
  return [...program.questions.values()].flatMap(one => (partsIn(one).includes(field) ? [one.id] : []))
}

/** Whether every figure a question is worked out of is known, so that nothing is left to be asked. */
const follows = (program: Program, question: Question, answers: Answers): boolean =>
  partsIn(question).length > 0 && fieldsLeft(quantityOf(question)!, figuresIn(program, answers)).length === 0

/** Whether this answer followed from others, and nobody typed it. */
export function followed(program: Program, answers: Answers, id: QuestionId): boolean {
  const question = program.questions.get(id)
  return question !== undefined && follows(program, question, answers)
}

/** What follows from the figures given so far, and is not answered yet nor waits to be asked about. */
export function whatFollows(program: Program, { answers, pending }: Check): Answers {
  const open = workedOutIn(program).filter(({ id }) => !answers[id] && !pending?.[id])
  const known = figuresIn(program, answers)
  const found = open.flatMap(question => {
    const { id } = question
    if (fieldsLeft(quantityOf(question)!, known).length > 0) return []
    const read = readForm(quantityOf(question)!, {}, undefined, 'en', [], known)
    if (!read.ok) return []
    const answer = reading(read.value, read.u)
    return misfit(program, id, answer) ? [] : [[id, answer] as const]
  })
  return Object.fromEntries(found)
}
