// How many questions a check can still ask at most, and in which stage: what a person is told about the way that is left.
import type { QuestionId } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import type { Question } from '../engine/pack/pack.ts'
import type { Check } from './check.ts'
import { type Stage, stageOf } from './stage.ts'
import { isAtHand, isToldByTool } from './tools.ts'

/**
 * A quick check asks so many questions and no more, whatever is still open: of people who are asked ten, one in fourteen leaves, of
 * those who are asked thirty, one in three (MacElroy 2000, second-hand).
 */
export const mostQuick = 10

/** In a quick check so many questions at most are asked for another purpose than the verdict. */
export const mostBeside = 3

/** `of`: the total by stage; a quick check's limit runs across them, so it has the total alone. */
export type Left = { readonly all: number; readonly of?: Readonly<Partial<Record<Stage, number>>> }

/** How many of these, and of what is asked beside them, can be asked at most. */
export function mayStillAsk(
  program: Program,
  check: Check,
  wanted: readonly Question[],
  beside: readonly QuestionId[],
): Left {
  const others = [...new Set(beside)]
    .flatMap(id => program.questions.get(id) ?? [])
    .filter(one => !wanted.includes(one))
  const { mode, trail } = check
  if (mode === 'full') {
    const of: Partial<Record<Stage, number>> = {}
    for (const question of [...wanted, ...others]) {
      const stage = stageOf(program, question)
      of[stage] = (of[stage] ?? 0) + 1
    }
    return { all: wanted.length + others.length, of }
  }
  const withTools = wanted.filter(one => isAtHand(check, one) || isToldByTool(check, one)).length
  const without = wanted.length - withTools + Math.min(others.length, mostBeside)
  return { all: Math.min(without, Math.max(0, mostQuick - trail.length)) + withTools }
}
