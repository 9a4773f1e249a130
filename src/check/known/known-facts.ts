// Takes facts that were found out elsewhere into a check's answers: a listing's claims, what a log amounts to.
import type { Answer, Answers, QuestionId } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import { misfit } from '../answer-fits.ts'

export type TakenIn = {
  readonly answers: Answers
  /** The questions that were answered by it, in order. */
  readonly taken: readonly QuestionId[]
}

/** Facts about questions the program does not have, that do not fit, or that have an answer already, are left out. */
export function takeIn(program: Program, before: Answers, facts: Answers): TakenIn {
  const answers: Record<QuestionId, Answer> = { ...before }
  const taken: QuestionId[] = []
  for (const [question, answer] of Object.entries(facts)) {
    if (!program.questions.has(question) || answers[question] || misfit(program, question, answer)) continue
    answers[question] = answer
    taken.push(question)
  }
  return { answers, taken }
}
