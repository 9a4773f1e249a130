// What a check that has come to a verdict hands over to be counted: codes and figures, and none of what could tell whose it was.
import type { Check } from '../check/check.ts'
import type { RuleId } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { type Judgement, judge } from '../engine/judge.ts'
import { isKept } from '../families/features.ts'
import type { FinishedCheck } from '../trends/make-outcome.ts'

/** The question of the pack `any-cell` that says where a cell comes from. */
const placeQuestion = 'where-bought'
/** Stands there where it was not asked or nobody could tell. */
const notSaid = 'not-said'

/** The failed checks of a judgement: rules that tell nothing, or are out of date, are none. */
export const findingsCounted = ({ findings }: Judgement): RuleId[] =>
  findings.filter(one => one.rule.kind !== 'no-bearing' && !one.outOfDate).map(one => one.rule.id)

/** `now`: when it was finished, in ms since 1970. */
export function finishedCheckOf(program: Program, check: Check, now: number): FinishedCheck {
  const judgement = judge(program, check.answers)
  const place = check.answers[placeQuestion]
  return {
    finishedAt: now,
    family: check.family,
    verdict: judgement.verdict,
    fired: findingsCounted(judgement),
    looks: Object.entries(check.answers).flatMap(([question, answer]) =>
      answer.kind === 'option' && isKept(program, question) ? [{ question, option: answer.option }] : [],
    ),
    bought: place?.kind === 'option' ? place.option : notSaid,
    packs: check.packs,
  }
}
