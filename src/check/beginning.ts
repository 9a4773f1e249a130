// The choices before the first question: another family makes another program, under which what is known already is fitted anew.
import type { Answers } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import type { Check } from './check.ts'
import { screenOf } from './screen.ts'
import type { Stepping } from './step.ts'

/** The check as it begins under another family's program; `from`: the program it began under. Refused once a question was asked. */
export function chooseFamily(from: Program, to: Program, check: Check): Stepping {
  if (check.phase.is !== 'beginning')
    return { ok: false, refusal: { code: 'not-now', event: 'family', phase: check.phase.is } }
  const known = Object.entries(check.answers).filter(([id]) => from.given[id] === undefined && to.questions.has(id))
  const answers: Answers = { ...Object.fromEntries(known), ...to.given }
  const chosen: Check = {
    ...check,
    family: to.family?.id ?? null,
    packs: to.packs,
    answers,
    trail: check.trail.filter(id => answers[id] !== undefined),
    revision: check.revision + 1,
  }
  return { ok: true, check: chosen, screen: screenOf(to, chosen) }
}
