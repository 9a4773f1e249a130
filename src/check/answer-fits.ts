// Whether an answer fits its question, and whether it alone would rule the cell out.
import type { Answer, Answers } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { placesOf, verdictAt } from '../engine/judge.ts'
import type { CheckRefusal } from './refusals.ts'

/** Whether this answer is what rules the cell out. A hazard needs no second look: it ends the check at once. */
export function decides(program: Program, before: Answers, id: string, given: Answer): boolean {
  if (given.kind === 'cant-tell') return false
  const verdictOn = (answers: Answers) => verdictAt(program, placesOf(program, answers))
  return verdictOn({ ...before, [id]: given }) === 'ruled-out' && verdictOn(before) !== 'ruled-out'
}

/** What is wrong with an answer to this question; undefined if it can be taken. */
export function misfit(program: Program, id: string, given: Answer): CheckRefusal | undefined {
  const wanted = program.questions.get(id)?.answer
  if (!wanted || given.kind === 'cant-tell') return undefined
  if (given.kind === 'option') {
    const known = wanted.kind === 'options' && wanted.options.some(one => one.id === given.option)
    return known ? undefined : { code: 'unknown-option', question: id, option: given.option }
  }
  if (wanted.kind !== 'reading') return { code: 'unknown-option', question: id, option: String(given.value) }
  if (!Number.isFinite(given.value) || !Number.isFinite(given.u) || given.u < 0)
    return { code: 'not-a-number', question: id }
  const { least, most, unit } = wanted
  if (given.value >= least && given.value <= most) return undefined
  return { code: 'reading-out-of-range', question: id, value: given.value, least, most, unit }
}
