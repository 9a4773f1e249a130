// Which figures of a form a check knows already, because a question of its own asked for them; and what was worked out of them.
import type { QuestionId } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import type { Question } from '../../engine/pack/pack.ts'
import type { Quantity } from '../../ground/quantities.ts'
import type { KnownFigures } from '../../readings/form.ts'
import type { Check } from '../check.ts'

/** The field of a form that a question of this quantity answers by itself. */
const fieldOf: Partial<Record<Quantity, keyof KnownFigures>> = {
  'claimed-capacity': 'capacity',
  mass: 'mass',
  diameter: 'diameter',
  length: 'length',
}

/** The field that this question asks for by itself; undefined for every other question. */
const fieldAsked = (question: Pick<Question, 'answer'> | undefined): keyof KnownFigures | undefined =>
  question?.answer.kind === 'reading' ? fieldOf[question.answer.quantity] : undefined

/** For the form of `question`, values in canonical units; none in a second look, which is one at every figure. */
export function knownFigures(program: Program, { answers, phase }: Check, question: QuestionId): KnownFigures {
  const known: KnownFigures = {}
  if (phase.is === 'second-look') return known
  for (const [id, answer] of Object.entries(answers)) {
    const field = id === question ? undefined : fieldAsked(program.questions.get(id))
    if (field && answer.kind === 'reading') known[field] = { value: answer.value, u: answer.u }
  }
  return known
}

/** What a form works out of several figures. */
const workedOut: Partial<Record<Quantity, readonly (keyof KnownFigures)[]>> = {
  'energy-per-volume': ['capacity', 'diameter', 'length'],
  'energy-per-mass': ['capacity', 'mass'],
}

/** The questions of their own for the figures that this one is worked out of; none for a figure that is typed in as it is. */
export function partsOf(program: Program, { answer }: Pick<Question, 'answer'>): QuestionId[] {
  const fields = answer.kind === 'reading' ? (workedOut[answer.quantity] ?? []) : []
  return [...program.questions.values()].flatMap(one => {
    const field = fieldAsked(one)
    return field && fields.includes(field) ? [one.id] : []
  })
}

/** The questions whose answers were worked out of this one's: another figure makes them out of date. */
export function workedOutOf(program: Program, question: QuestionId): QuestionId[] {
  const field = fieldAsked(program.questions.get(question))
  if (!field) return []
  return [...program.questions.values()].flatMap(({ id, answer }) =>
    answer.kind === 'reading' && workedOut[answer.quantity]?.includes(field) ? [id] : [],
  )
}
