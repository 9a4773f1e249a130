// Beside a verdict: what was enough for it, what was not checked, and what would change it.

import { severity, type Verdict } from '../ground/verdicts.ts'
import type { Answer, Answers, QuestionId } from './answers.ts'
import type { Program } from './compile.ts'
import { enoughFor } from './enough.ts'
import { type Judgement, placesOf, verdictAt } from './judge.ts'

export type Unchecked = { readonly question: QuestionId; readonly why: 'not-asked' | 'cant-tell' }

/** One answer that, changed or given alone, makes the verdict another one. */
export type Change = {
  readonly question: QuestionId
  readonly answers: readonly Answer[]
  readonly verdict: Verdict
  /** Whether the question has been answered already, so that the change would be a correction. */
  readonly correction: boolean
}

export type Explanation = {
  readonly enough: readonly QuestionId[]
  readonly unchecked: readonly Unchecked[]
  readonly changes: readonly Change[]
}

/** Explains a judgement made by `judge(program, answers)`. */
export function explain(program: Program, answers: Answers, judgement: Judgement): Explanation {
  const all = { ...program.given, ...answers }
  const enough = enoughFor(program, all, judgement).filter(id => program.given[id] === undefined)
  const counted = [...program.questions.keys()].filter(id => (program.states.get(id)?.length ?? 0) > 1)
  const unchecked = counted.flatMap((question): Unchecked[] => {
    const answer = all[question]
    if (answer === undefined) return [{ question, why: 'not-asked' }]
    return answer.kind === 'cant-tell' ? [{ question, why: 'cant-tell' }] : []
  })
  return {
    enough,
    unchecked,
    changes: changesOf(program, all, judgement, [...enough, ...unchecked.map(u => u.question)]),
  }
}

/** Single answers that change the verdict, those that make it worse first. */
function changesOf(program: Program, answers: Answers, now: Judgement, questions: readonly QuestionId[]): Change[] {
  const places = [...program.space.asItStands(placesOf(program, answers))]
  const found = questions.flatMap(question => {
    const variable = program.space.variableOf.get(question)
    if (variable === undefined) return []
    const before = places[variable] as number
    const given = answers[question]
    const correction = given !== undefined && given.kind !== 'cant-tell'
    const mine = (program.states.get(question) ?? []).flatMap(({ answers: options }, state): Change[] => {
      if (options.every(one => one.kind === 'cant-tell')) return []
      places[variable] = state
      const verdict = verdictAt(program, places)
      return verdict === now.verdict ? [] : [{ question, answers: options, verdict, correction }]
    })
    places[variable] = before
    return mine
  })
  return found.sort((a, b) => severity[b.verdict] - severity[a.verdict])
}
