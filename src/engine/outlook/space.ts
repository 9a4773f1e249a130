// The space of a model's answers: which state each question is in, as small numbers that rules and groups are read from.

import { sideOf } from '../../ground/guard-band.ts'
import type { Answer, Answers, QuestionId } from '../answers.ts'
import { type Atom, type Condition, weighAtom } from '../conditions.ts'
import type { State } from './states.ts'

/** The state of each variable; -1 where nothing was answered. */
export type Places = readonly number[]

export type SpaceQuestion = { readonly id: QuestionId; readonly states: readonly State[] }

export type Space = {
  readonly questions: readonly SpaceQuestion[]
  readonly variableOf: ReadonlyMap<QuestionId, number>
  /** Where `answers` puts every variable; answers to questions outside the space are passed over. Read once per object. */
  place(answers: Answers): Places
  /** The same places with everything unanswered at "can't tell": what has been said so far, judged as it stands. */
  asItStands(places: Places): Places
  /** How a condition weighs places: 0 false, 1 unknown, 2 true. */
  weigher(condition: Condition): (places: Places) => number
}

/** `atoms`: the conditions by which each question's states were told apart. */
export function openSpace(questions: readonly SpaceQuestion[], atoms: ReadonlyMap<QuestionId, readonly Atom[]>): Space {
  const variableOf = new Map(questions.map((question, i) => [question.id, i]))
  const finders = questions.map(question => finderOf(question, atoms.get(question.id) ?? []))
  const unsure = questions.map(({ states }) =>
    states.findIndex(state => state.answers.some(one => one.kind === 'cant-tell')),
  )
  const placed = new WeakMap<Answers, Places>()

  function place(answers: Answers): Places {
    const known = placed.get(answers)
    if (known) return known
    const places: number[] = []
    for (let i = 0; i < questions.length; i++) {
      const answer = answers[(questions[i] as SpaceQuestion).id]
      places.push(answer === undefined ? -1 : (finders[i] as Finder)(answer))
    }
    placed.set(answers, places)
    return places
  }

  function weigher(condition: Condition): (places: Places) => number {
    if ('question' in condition) {
      const variable = variableOf.get(condition.question)
      const question = variable === undefined ? undefined : questions[variable]
      if (variable === undefined || !question) throw new RangeError(`no question ${condition.question}`)
      const truths = question.states.map(state => rank[weighAtom(condition, state.answers[0])])
      return places => {
        const state = places[variable] as number
        return state < 0 ? 1 : (truths[state] as number)
      }
    }
    if (condition.op === 'not') {
      const of = weigher(condition.of)
      return places => 2 - of(places)
    }
    const parts = condition.of.map(weigher)
    const [first, limit] = condition.op === 'all' ? [2, 0] : [0, 2]
    const better = condition.op === 'all' ? Math.min : Math.max
    return places => {
      let truth = first
      for (let i = 0; i < parts.length && truth !== limit; i++)
        truth = better(truth, (parts[i] as (p: Places) => number)(places))
      return truth
    }
  }

  const asItStands = (places: Places): Places => places.map((state, i) => (state < 0 ? (unsure[i] as number) : state))

  return { questions, variableOf, place, asItStands, weigher }
}

const rank = { false: 0, unknown: 1, true: 2 } as const

type Finder = (answer: Answer) => number

/** Finds the state of an answer: options and "can't tell" by name, readings by how they lie to the limits. */
function finderOf(question: SpaceQuestion, atoms: readonly Atom[]): Finder {
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
