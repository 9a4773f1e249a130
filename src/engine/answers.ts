// What a person has told us about a cell: one answer per question, and the words for them.

export type QuestionId = string
export type OptionId = string
export type RuleId = string
export type FamilyId = string

/** An option that was picked. */
export type OptionAnswer = { readonly kind: 'option'; readonly option: OptionId }

/**
 * A measured or printed value in the question's canonical unit. `u` is its standard uncertainty in the same unit (0 for a
 * figure read off a label); judged with the guard band of 2u that JCGM 106:2012 leaves to the one who decides.
 */
export type ReadingAnswer = {
  readonly kind: 'reading'
  readonly value: number
  readonly u: number
  readonly how?: string
}

/** "Can't tell" is an answer, and never counts against a cell. Not asked is the absence of an answer. */
export type CantTell = { readonly kind: 'cant-tell' }

export type Answer = OptionAnswer | ReadingAnswer | CantTell
export type Answers = Readonly<Record<QuestionId, Answer>>

export const cantTell: CantTell = { kind: 'cant-tell' }
export const option = (id: OptionId): OptionAnswer => ({ kind: 'option', option: id })
export const reading = (value: number, u = 0): ReadingAnswer => ({ kind: 'reading', value, u })

/** Whether two answers say the same thing. */
export function sameAnswer(a: Answer | undefined, b: Answer | undefined): boolean {
  if (a === undefined || b === undefined) return a === b
  if (a.kind === 'option' && b.kind === 'option') return a.option === b.option
  if (a.kind === 'reading' && b.kind === 'reading') return a.value === b.value && a.u === b.u
  return a.kind === b.kind
}
