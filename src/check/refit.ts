// Fits a stored check to the packs as they are now: what no longer fits is asked again, and nothing else changes.
import type { Answers } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import type { Check } from './check.ts'
import { nextOf } from './next.ts'
import { phaseOf } from './step.ts'

/**
 * The check as the current program can go on with it. Answers to questions or options that are gone are dropped; if the
 * question on screen is gone, the next one takes its place. The revision stays, so that the same buttons work on.
 */
export function refit(program: Program, check: Check): Check {
  if (samePacks(program, check)) return check
  const kept = Object.entries(check.answers).filter(([id, answer]) => {
    const question = program.questions.get(id)
    if (!question) return false
    if (answer.kind === 'option')
      return question.answer.kind === 'options' && question.answer.options.some(option => option.id === answer.option)
    return answer.kind === 'cant-tell' || question.answer.kind === 'reading'
  })
  const answers: Answers = { ...Object.fromEntries(kept), ...program.given }
  const trail = check.trail.filter(id => answers[id] !== undefined)
  const fitted: Check = { ...check, answers, trail, packs: program.packs }
  const { phase } = fitted
  if (!('question' in phase) || program.questions.has(phase.question)) return fitted
  return { ...fitted, phase: phaseOf(nextOf(program, fitted)) }
}

const samePacks = (program: Program, check: Check): boolean =>
  program.packs.length === check.packs.length &&
  program.packs.every((pack, i) => pack.id === check.packs[i]?.id && pack.digest === check.packs[i]?.digest)
