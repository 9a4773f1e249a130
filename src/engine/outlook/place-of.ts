// Which state of a question an answer lies in: options and "can't tell" by name, readings by how they lie to the limits.

import { sideOf } from '../../ground/guard-band.ts'
import type { Answer } from '../answers.ts'
import type { Atom } from '../conditions.ts'
import type { State } from './states.ts'

export type Finder = (answer: Answer) => number

/** `atoms`: the conditions by which the states were told apart. Throws `RangeError` for an answer that no state holds. */
export function finderOf(
  question: { readonly id: string; readonly states: readonly State[] },
  atoms: readonly Atom[],
): Finder {
  const limits = [...new Set(atoms.flatMap(atom => ('limit' in atom ? [atom.limit] : [])))].sort((a, b) => a - b)
  const byOption = new Map<string, number>()
  const byLie = new Map<number, number>()
  let unsure: number | undefined
  for (const [state, { answers }] of question.states.entries())
    for (const answer of answers) {
      if (answer.kind === 'option') byOption.set(answer.option, state)
      else if (answer.kind === 'reading') byLie.set(lieOf(answer.value, answer.u, limits), state)
      else unsure = state
    }
  return answer => {
    const state =
      answer.kind === 'option'
        ? byOption.get(answer.option)
        : answer.kind === 'reading'
          ? // What is read off a label is exact: its states know no guard band.
            (byLie.get(lieOf(answer.value, answer.u, limits)) ?? byLie.get(lieOf(answer.value, 0, limits)))
          : unsure
    if (state === undefined) throw new RangeError(`no state of ${question.id} fits this answer`)
    return state
  }
}

/** How a reading lies to all limits at once, as one number: how many it is surely above, surely below, and whether it hits one. */
function lieOf(value: number, u: number, limits: readonly number[]): number {
  let more = 0
  let less = 0
  let equal = 0
  for (const limit of limits) {
    const side = sideOf(value, u, limit)
    if (side === 'more') more++
    else if (side === 'less') less++
    else if (side === 'equal') equal = 1
  }
  return (more * 4096 + less) * 2 + equal
}
