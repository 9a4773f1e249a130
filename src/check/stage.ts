// The stages a check leads through: danger first, then what is printed and said, then looking, and tools last.
import type { Program } from '../engine/compile.ts'
import type { Question } from '../engine/pack/pack.ts'

export const stages = ['safety', 'label', 'look', 'measure'] as const
export type Stage = (typeof stages)[number]

/** The stage a question belongs to. Safety is what one sees or hears from where one stands, and gets away from. */
export function stageOf(program: Program, question: Question): Stage {
  if (question.care === 'look' && program.hazards.get(question.id) === 'get-away') return 'safety'
  if (question.care !== 'look' && question.care !== 'handle') return 'measure'
  return question.topic === 'label' ? 'label' : 'look'
}
