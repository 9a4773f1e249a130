// Whether an answer fits its question, and which answers accuse a cell.
import type { Answer, Answers, QuestionId } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { atomsOf } from '../engine/conditions.ts'
import { enoughFor } from '../engine/enough.ts'
import { judge } from '../engine/judge.ts'
import type { Check } from './check.ts'
import type { CheckRefusal } from './refusals.ts'

/**
 * The answers that accuse the cell: the smallest set that rules it out, or makes it doubtful by one look alone. Not among them are answers
 * that merely excuse nothing, and what is settled by the family. None for a danger, which ends a check at once, for signs that only
 * add up, and where nothing accuses.
 */
export function accusing(program: Program, answers: Answers): readonly QuestionId[] {
  const judgement = judge(program, answers)
  const { verdict } = judgement
  if (verdict !== 'ruled-out' && verdict !== 'doubtful') return []
  const all = { ...program.given, ...answers }
  const enough = enoughFor(program, all, judgement)
  const only = Object.fromEntries(enough.flatMap(id => (all[id] ? [[id, all[id]] as const] : [])))
  const alone = judge(program, only).findings.flatMap(({ rule, outOfDate }) =>
    !outOfDate && (rule.kind === 'must' || (rule.kind === 'sign' && rule.strength === 'strong')) ? [rule] : [],
  )
  if (alone.length === 0) return []
  const read = new Set(
    alone.flatMap(rule => atomsOf(rule.when).flatMap(atom => (atom.op === 'unless' ? [] : atom.question))),
  )
  return enough.filter(id => read.has(id) && program.given[id] === undefined && all[id]?.kind !== 'cant-tell')
}

/** The chosen answers that accuse together with a figure that is looked at again, and were given once: all are looked at in one go. */
export function accusingBeside(program: Program, { phase, answers, pending, confirmed = [] }: Check): QuestionId[] {
  if (phase.is !== 'second-look' || phase.answer.kind !== 'reading') return []
  const all = { ...pending, ...answers, [phase.question]: phase.answer }
  const accusers = accusing(program, all)
  if (!accusers.includes(phase.question)) return []
  return accusers.filter(id => id !== phase.question && all[id]?.kind === 'option' && !confirmed.includes(id))
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
