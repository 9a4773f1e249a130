// Says why a verdict came out as it did: a finding, and before one of a family's own rules what was answered to it.
import type { Check } from '../check/check.ts'
import type { Program } from '../engine/compile.ts'
import { atomsOf, weighAtom } from '../engine/conditions.ts'
import type { Finding } from '../engine/judge.ts'
import { sayAnswer } from './describe.ts'
import type { Say } from './say.ts'

/**
 * `said`: the finding in words. What a family is made like tells a reader nothing until they see beside it what they have answered; a rule for every
 * cell says so itself.
 */
export function sayReason(say: Say, program: Program, check: Check, { rule }: Finding, said: string): string {
  if (rule.pack !== program.family?.pack) return said
  const told = atomsOf(rule.when).flatMap(atom => {
    const answer = check.answers[atom.question]
    const fires = atom.op !== 'unless' && weighAtom(atom, answer) === 'true' && !(atom.question in program.given)
    return fires && answer ? [[atom.question, answer] as const] : []
  })
  const answers = [...new Map(told)].flatMap(([id, answer]) => {
    const question = program.questions.get(id)
    if (!question) return []
    const words = sayAnswer(say, question, answer)
    return answer.kind === 'option' ? say('quoted', { text: words }) : words
  })
  if (answers.length === 0) return said
  const list = new Intl.ListFormat(say.locale, { type: 'conjunction' }).format(answers)
  const byOthers = told.some(([id]) => check.saidBy?.[id] !== undefined)
  return say(byOthers ? 'reason.answered-by-moderator' : 'reason.answered', { answers: list, reason: said })
}
