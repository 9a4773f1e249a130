// A test's hands on a check: begin one, answer it, and take what comes of it; what is refused ends the test.
import type { Check } from '../../src/check/check.ts'
import type { CheckEvent, Start } from '../../src/check/events.ts'
import { type Stepping, start, step } from '../../src/check/step.ts'
import type { Answer } from '../../src/engine/answers.ts'
import type { Program } from '../../src/engine/compile.ts'

export const now = Date.UTC(2026, 10, 29)

export function taken(stepping: Stepping): Check {
  if (!stepping.ok) throw new Error(`refused: ${JSON.stringify(stepping.refusal)}`)
  return stepping.check
}
/** The question a check stands at, or what it waits for instead. */
export const asked = ({ phase }: Check): string => ('question' in phase ? phase.question : phase.is)

export const handsOn = (program: Program) => {
  const opening: Start = {
    ...{ id: 'c1', holder: 'ada', server: null, mode: 'full', cells: 1 },
    family: program.family?.id ?? null,
  }
  const does = (check: Check, event: CheckEvent): Check => taken(step(program, check, event, now))
  return {
    does,
    /** By somebody who has said already that the cell may be touched. */
    begin: (more: Partial<Start> = {}): Check => ({
      ...taken(start(program, { ...opening, ...more }, now)),
      consents: { touch: true },
    }),
    /** By somebody who was not asked that yet. */
    beginUnasked: (more: Partial<Start> = {}): Check => taken(start(program, { ...opening, ...more }, now)),
    /** As somebody begins who has not said yet how thoroughly. */
    beginUnsaid: (): Check => {
      const { mode: _, ...unsaid } = opening
      return taken(start(program, unsaid, now))
    },
    say: (check: Check, answer: Answer): Check => does(check, { is: 'answer', question: asked(check), answer }),
  }
}
