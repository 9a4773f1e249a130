// Which question comes next: the one that tells most for its effort, after what is safer to do has been done.
//
// Looking and handling come before lifting a wrap, and that before a load on a bench: whatever an easier step can settle
// needs no risky one. Nothing needs hands or a meter before the hazards that can be seen have been asked about.
import type { QuestionId } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { questionsOf, weigh } from '../engine/conditions.ts'
import { judge } from '../engine/judge.ts'
import type { Care, Question } from '../engine/pack/pack.ts'
import type { Check, Consent } from './check.ts'

export type Next =
  | { readonly is: 'ask'; readonly question: QuestionId; readonly left: number }
  | { readonly is: 'consent'; readonly to: Consent; readonly left: number }
  /** Nothing may be asked any more; `settled` says whether that is because no answer can change the verdict. */
  | { readonly is: 'done'; readonly settled: boolean }

type Tier = 'easy' | Consent
const tierOf: Record<Care, Tier> = { look: 'easy', handle: 'easy', meter: 'easy', unwrap: 'unwrap', bench: 'bench' }

export function nextOf(program: Program, check: Check): Next {
  const outlook = program.outlook({ ...program.given, ...check.answers })
  if (outlook.reachable.length <= 1) return { is: 'done', settled: true }
  const open = outlook.prospects.flatMap(prospect => program.questions.get(prospect.question) ?? [])
  const wanted = open.filter(question => check.mode === 'full' || question.quick)
  const looked = hazardsSeen(program, check)
  const easy = wanted.filter(question => tierOf[question.care] === 'easy' && (looked || question.care === 'look'))
  const first = easy[0]
  if (first) return { is: 'ask', question: first.id, left: easy.length }
  for (const tier of ['unwrap', 'bench'] as const) {
    const mine = wanted.filter(question => tierOf[question.care] === tier)
    const next = mine[0]
    if (!next || check.consents[tier] === false || (tier === 'bench' && !benchIsOpen(program, check))) continue
    return check.consents[tier]
      ? { is: 'ask', question: next.id, left: mine.length }
      : { is: 'consent', to: tier, left: mine.length }
  }
  return { is: 'done', settled: false }
}

/** Whether every hazard that only takes a look has been asked about (whatever was answered: danger would have ended it). */
function hazardsSeen(program: Program, check: Check): boolean {
  return hazardQuestions(program).every(
    question => question.care !== 'look' || check.answers[question.id] !== undefined,
  )
}

/** A load is never offered for a suspect cell: every hazard must be ruled out for sure, and no sign may stand against it. */
function benchIsOpen(program: Program, check: Check): boolean {
  const answers = { ...program.given, ...check.answers }
  const hazards = program.rules.filter(rule => rule.kind === 'hazard' && !readsBench(program, questionsOf(rule.when)))
  return hazards.every(rule => weigh(rule.when, answers) === 'false') && judge(program, answers).score === 0
}

const readsBench = (program: Program, questions: readonly QuestionId[]): boolean =>
  questions.some(id => program.questions.get(id)?.care === 'bench')

function hazardQuestions(program: Program): Question[] {
  const ids = new Set(program.rules.filter(rule => rule.kind === 'hazard').flatMap(rule => questionsOf(rule.when)))
  return [...program.questions.values()].filter(question => ids.has(question.id))
}
