// What can be said of a cell by somebody who is not beside it: danger, where they see it, and never that there is none.
import type { Answer, QuestionId } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { judge } from '../engine/judge.ts'
import { misfit } from './answer-fits.ts'
import type { Check } from './check.ts'

/** Whether an answer means danger. */
export const isAlarm = (program: Program, check: Check, question: QuestionId, answer: Answer): boolean =>
  misfit(program, question, answer) === undefined &&
  judge(program, { ...check.answers, [question]: answer }).verdict === 'danger'

/** Heat, hiss and smell are in no photograph: of what one gets away from, only danger can be said from afar, or nothing. */
export const canBeSaidFromAfar = (program: Program, check: Check, question: QuestionId, answer: Answer): boolean =>
  program.hazards.get(question) !== 'get-away' ||
  answer.kind === 'cant-tell' ||
  isAlarm(program, check, question, answer)
