// The finitely many ways in which one question can be answered, as far as the rules can tell them apart.

import { guard } from '../../ground/guard-band.ts'
import { isMeasured } from '../../ground/quantities.ts'
import { type Answer, cantTell, option } from '../answers.ts'
import { type Atom, weighAtom } from '../conditions.ts'
import type { Question } from '../pack/pack.ts'
import type { Truth } from '../truth.ts'

/** Answers that every atom weighs alike, and how often one of them is given, against the other states. */
export type State = { readonly answers: readonly Answer[]; readonly odds: number }

/** What orders the questions where a pack is silent: invented weights, not a statement about cells. */
const readingOdds = { clear: 1, onTheLimit: 0.02, undecided: 0.05 } as const

/** More states of one question than this are not told apart: what is worked out about them is kept under small numbers. */
export const mostStates = 4096

/** How many states a reading has under `atoms`, and how many a question with options has at most; counted without making them. */
export function countStates({ answer }: Question, atoms: readonly Atom[]): number {
  if (answer.kind === 'options') return answer.options.length + 1
  const limits = limitsOf(atoms).length
  // "Can't tell" is the state of a measured value whose guard band lies over all limits.
  if (limits > 0 && isMeasured(answer.quantity)) return 2 * limits + 1 + (limits * (limits + 1)) / 2
  return 2 * limits + 2
}

const limitsOf = (atoms: readonly Atom[]): number[] =>
  [...new Set(atoms.flatMap(atom => ('limit' in atom ? [atom.limit] : [])))].sort((a, b) => a - b)

/**
 * The states of a question under `atoms`, its conditions. Exact: every answer that can be given falls into one of them, and
 * each can be reached by an answer. The last state always holds "can't tell".
 */
export function statesOf(question: Question, atoms: readonly Atom[]): State[] {
  const given = question.answer
  const candidates =
    given.kind === 'options'
      ? given.options.map(({ id, odds }) => ({ answer: option(id) as Answer, odds }))
      : readingCandidates(atoms, given.least, given.most, isMeasured(given.quantity))
  return mergeAlike([...candidates, { answer: cantTell, odds: question.unsureOdds }], atoms)
}

/** How all atoms weigh an answer, as one key: equal keys are equal states. */
export function signatureOf(answer: Answer, atoms: readonly Atom[]): string {
  let signature = ''
  for (const atom of atoms) signature += letter[weighAtom(atom, answer)]
  return signature
}
const letter: Record<Truth, string> = { false: 'f', unknown: 'u', true: 't' }

function mergeAlike(candidates: readonly { answer: Answer; odds: number }[], atoms: readonly Atom[]): State[] {
  const merged = new Map<string, { answers: Answer[]; odds: number }>()
  for (const { answer, odds } of candidates) {
    const key = signatureOf(answer, atoms)
    const state = merged.get(key) ?? { answers: [], odds: 0 }
    state.answers.push(answer)
    state.odds += odds
    merged.delete(key)
    merged.set(key, state)
  }
  return [...merged.values()]
}

/**
 * One reading for each way it can lie to the limits: clear between two of them, exactly on one (printed figures), or with its
 * guard band over a run of neighbours. A run's middle is always nearer to its ends than to the next limit outside. A figure that is
 * read off a label is exact, so that no guard band lies over anything.
 */
function readingCandidates(
  atoms: readonly Atom[],
  least: number,
  most: number,
  measured: boolean,
): { answer: Answer; odds: number }[] {
  const limits = limitsOf(atoms)
  const edges = [least, ...limits, most]
  const out: { answer: Answer; odds: number }[] = []
  const add = (value: number, u: number, odds: number) => out.push({ answer: { kind: 'reading', value, u }, odds })
  for (let i = 1; i < edges.length; i++)
    add(((edges[i - 1] as number) + (edges[i] as number)) / 2, 0, readingOdds.clear)
  for (const [i, first] of limits.entries()) {
    add(first, 0, readingOdds.onTheLimit)
    for (let j = i; measured && j < limits.length; j++) {
      const last = limits[j] as number
      const middle = (first + last) / 2
      const inner = (last - first) / 2
      const outer = Math.min(middle - (limits[i - 1] ?? -Infinity), (limits[j + 1] ?? Infinity) - middle)
      const half = Number.isFinite(outer) ? (inner + outer) / 2 : inner + 1
      add(middle, half / guard, readingOdds.undecided)
    }
  }
  return out
}
