// What a check that has come to a verdict hands over to be counted: codes and figures, and none of what could tell whose it was.
import type { Check } from '../../check/check.ts'
import type { RuleId } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import { type Judgement, judge } from '../../engine/judge.ts'
import type { FinishedAnswer, FinishedCheck } from '../../trends/make-outcome.ts'

/** The questions of the pack `any-cell` that say where a cell comes from and how big it is. */
const placeQuestion = 'where-bought'
const sizeQuestion = 'format'
/** Stands for both where it was not asked or nobody could tell. */
const notSaid = 'not-said'

/** The failed checks of a judgement: rules that tell nothing, or are out of date, are none. */
export const findingsCounted = ({ findings }: Judgement): RuleId[] =>
  findings.filter(one => one.rule.kind !== 'no-bearing' && !one.outOfDate).map(one => one.rule.id)

/** `now`: when it was finished, in ms since 1970. */
export function finishedCheckOf(program: Program, check: Check, now: number): FinishedCheck {
  const judgement = judge(program, check.answers)
  const optionOf = (question: string): string => {
    const answer = check.answers[question]
    return answer?.kind === 'option' ? answer.option : notSaid
  }
  return {
    finishedAt: now,
    family: check.family,
    format: optionOf(sizeQuestion),
    verdict: judgement.verdict,
    fired: findingsCounted(judgement),
    answers: Object.keys(check.answers).flatMap(question => finishedAnswer(program, check, question)),
    bought: optionOf(placeQuestion),
    cells: check.cells,
    packs: check.packs,
  }
}

function finishedAnswer(program: Program, check: Check, question: string): FinishedAnswer[] {
  const answer = check.answers[question]
  const asked = program.questions.get(question)?.answer
  if (answer === undefined || asked === undefined) return []
  if (answer.kind === 'option') return [{ kind: 'option', question, option: answer.option }]
  if (answer.kind === 'cant-tell') return [{ kind: 'cant-tell', question }]
  return asked.kind === 'reading' ? [{ kind: 'reading', question, quantity: asked.quantity, value: answer.value }] : []
}
