// Beside a verdict: what was enough for it, what was not checked or not cleared, and what would change it.

import { type Answers, type QuestionId, reading } from './answers.ts'
import type { Program } from './compile.ts'
import { enoughFor } from './enough.ts'
import { type Judgement, placesOf } from './judge.ts'
import { type Change, changesOf } from './what-if.ts'

/** `undecided`: a value of which a sign of danger could not be told, as it lies within its guard band. */
export type Unchecked = { readonly question: QuestionId; readonly why: 'not-asked' | 'cant-tell' | 'undecided' }

export type Explanation = {
  readonly enough: readonly QuestionId[]
  readonly unchecked: readonly Unchecked[]
  /** Worked out when asked for: it judges every other answer once. */
  changes(): readonly Change[]
}

/** Explains a judgement made by `judge(program, answers)`. */
export function explain(program: Program, answers: Answers, judgement: Judgement): Explanation {
  const all = { ...program.given, ...answers }
  const enough = enoughFor(program, all, judgement).filter(id => program.given[id] === undefined)
  const counted = [...program.questions.keys()].filter(id => (program.states.get(id)?.length ?? 0) > 1)
  const undecided = undecidedHazards(program, all)
  const unchecked = counted.flatMap((question): Unchecked[] => {
    const answer = all[question]
    if (answer === undefined) return [{ question, why: 'not-asked' }]
    if (undecided.has(question)) return [{ question, why: 'undecided' }]
    return answer.kind === 'cant-tell' ? [{ question, why: 'cant-tell' }] : []
  })
  const open = unchecked.filter(one => !enough.includes(one.question)).map(one => one.question)
  return { enough, unchecked, changes: () => changesOf(program, all, judgement.verdict, [...enough, ...open]) }
}

/** Measured values that leave a hazard open which the same value, were it exact, would decide. */
function undecidedHazards(program: Program, answers: Answers): ReadonlySet<QuestionId> {
  const places = program.space.asItStands(placesOf(program, answers))
  const found = new Set<QuestionId>()
  for (const [i, rule] of program.rules.entries()) {
    const weigher = program.weighers[i]
    if (rule.kind !== 'hazard' || !weigher || weigher(places) !== 1) continue
    for (const id of program.reads.get(rule.id) ?? []) {
      const answer = answers[id]
      if (answer?.kind !== 'reading' || answer.u === 0) continue
      const exact = program.space.asItStands(placesOf(program, { ...answers, [id]: reading(answer.value) }))
      if (weigher(exact) !== 1) found.add(id)
    }
  }
  return found
}
