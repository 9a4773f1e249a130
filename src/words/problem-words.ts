// Says a problem with a pack, a case or an entry of the answers in one sentence, with the nearest known name where one was mistyped.
import { closest, distance } from 'fastest-levenshtein'
import type { AnswerProblem } from '../answers/problems.ts'
import type { PackProblem } from '../engine/pack/problems.ts'
import type { Say, Values } from './say.ts'

export function sayProblem(say: Say, problem: PackProblem | AnswerProblem): string {
  const values: Record<string, string | number> = {}
  for (const [key, value] of Object.entries(problem))
    values[key] = Array.isArray(value) ? value.join(', ') : (value as string | number)
  if ('known' in problem) values['near'] = nearest(problem.name, problem.known) ?? 'none'
  return say(`problem.${problem.code}`, values as Values)
}

/** The known name a mistyped one most likely stands for: at most a third of its letters differ. */
export function nearest(name: string, known: readonly string[]): string | undefined {
  if (known.length === 0) return undefined
  const best = closest(name, [...known])
  return distance(name, best) <= Math.max(2, Math.floor(name.length / 3)) ? best : undefined
}
