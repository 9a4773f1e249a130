// The space of a program's answers: which state each question is in, as small numbers that rules and groups are read from.

import type { Answers, QuestionId } from '../answers.ts'
import { type Condition, questionsOf } from '../conditions.ts'
import type { Variable } from './bench.ts'
import type { Places, Weigher } from './places.ts'

export type SpaceQuestion = { readonly id: QuestionId; readonly variable: Variable }

export type Space = {
  readonly questions: readonly SpaceQuestion[]
  /** Where a question stands among them. */
  readonly indexOf: ReadonlyMap<QuestionId, number>
  /** Where `answers` puts every variable; answers to questions outside the space are passed over. Read once per object. */
  place(answers: Answers): Places
  /** The same places with everything unanswered at "can't tell": what has been said so far, judged as it stands. */
  asItStands(places: Places): Places
  /** How a condition weighs places: 0 false, 1 unknown, 2 true. */
  weigher(condition: Condition): Weigher
}

/** `kept`: weighers that spaces share, by condition and by where its questions stand. */
export function openSpace(
  questions: readonly SpaceQuestion[],
  kept: WeakMap<Condition, Map<string, Weigher>> = new WeakMap(),
): Space {
  const indexOf = new Map(questions.map((question, i) => [question.id, i]))
  const placed = new WeakMap<Answers, Places>()

  function place(answers: Answers): Places {
    const known = placed.get(answers)
    if (known) return known
    const places: number[] = []
    for (const { id, variable } of questions) {
      const answer = answers[id]
      places.push(answer === undefined ? -1 : variable.stateOf(answer))
    }
    placed.set(answers, places)
    return places
  }

  const asItStands = (places: Places): Places =>
    places.map((state, i) => (state < 0 ? (questions[i] as SpaceQuestion).variable.unsure : state))

  function weigher(condition: Condition): Weigher {
    const mine = kept.get(condition) ?? new Map<string, Weigher>()
    kept.set(condition, mine)
    const key = questionsOf(condition)
      .map(id => `${indexOf.get(id)} ${questions[indexOf.get(id) ?? -1]?.variable.number}`)
      .join()
    const known = mine.get(key) ?? make(condition)
    mine.set(key, known)
    return known
  }

  function make(condition: Condition): Weigher {
    if ('question' in condition) {
      const index = indexOf.get(condition.question)
      const question = index === undefined ? undefined : questions[index]
      if (index === undefined || !question) throw new RangeError(`no question ${condition.question}`)
      const truths = question.variable.truthsOf(condition)
      return places => {
        const state = places[index] as number
        return state < 0 ? 1 : (truths[state] as number)
      }
    }
    if (condition.op === 'not') {
      const of = make(condition.of)
      return places => 2 - of(places)
    }
    const parts = condition.of.map(make)
    const [first, limit] = condition.op === 'all' ? [2, 0] : [0, 2]
    const better = condition.op === 'all' ? Math.min : Math.max
    return places => {
      let truth = first
      for (let i = 0; i < parts.length && truth !== limit; i++) truth = better(truth, (parts[i] as Weigher)(places))
      return truth
    }
  }

  return { questions, indexOf, place, asItStands, weigher }
}
