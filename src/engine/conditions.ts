// Conditions of rules: what they are once read from a pack, and how one is weighed against the answers given so far.
import { type Side, sideOf } from '../ground/guard-band.ts'
import type { Answer, Answers, OptionId, QuestionId } from './answers.ts'
import { and, not, or, type Truth } from './truth.ts'

export type Condition =
  | { readonly op: 'is'; readonly question: QuestionId; readonly options: readonly OptionId[] }
  /** Holds unless one of these was answered: not knowing excuses nothing, so "can't tell" leaves it true. */
  | { readonly op: 'unless'; readonly question: QuestionId; readonly options: readonly OptionId[] }
  | { readonly op: 'below' | 'above'; readonly question: QuestionId; readonly limit: number }
  | { readonly op: 'all' | 'any'; readonly of: readonly Condition[] }
  | { readonly op: 'not'; readonly of: Condition }

/** A condition about one question alone. */
export type Atom = Extract<Condition, { question: QuestionId }>

/** Whether "below" or "above" holds on that side. */
function truthOfSide(op: 'below' | 'above', side: Side): Truth {
  if (side === 'undecided') return 'unknown'
  return side === (op === 'below' ? 'less' : 'more') ? 'true' : 'false'
}

/** Weighs one atom against the answer to its question; no answer is unknown, and so is "can't tell" but for `unless`. */
export function weighAtom(atom: Atom, answer: Answer | undefined): Truth {
  if (atom.op === 'unless') {
    if (answer === undefined) return 'unknown'
    return answer.kind === 'option' && atom.options.includes(answer.option) ? 'false' : 'true'
  }
  if (answer === undefined || answer.kind === 'cant-tell') return 'unknown'
  if (atom.op === 'is') return answer.kind === 'option' && atom.options.includes(answer.option) ? 'true' : 'false'
  return answer.kind === 'reading' ? truthOfSide(atom.op, sideOf(answer.value, answer.u, atom.limit)) : 'unknown'
}

/**
 * Weighs a condition in Kleene's logic: "all" of nothing is true, "any" of nothing false. `otherwise` is taken for every question
 * that has no answer: nothing while it may still be asked, "can't tell" where what was said so far is to be judged.
 */
export function weigh(condition: Condition, answers: Answers, otherwise?: Answer): Truth {
  switch (condition.op) {
    case 'all': {
      let truth: Truth = 'true'
      for (let i = 0; i < condition.of.length && truth !== 'false'; i++)
        truth = and(truth, weigh(condition.of[i] as Condition, answers, otherwise))
      return truth
    }
    case 'any': {
      let truth: Truth = 'false'
      for (let i = 0; i < condition.of.length && truth !== 'true'; i++)
        truth = or(truth, weigh(condition.of[i] as Condition, answers, otherwise))
      return truth
    }
    case 'not':
      return not(weigh(condition.of, answers, otherwise))
    default:
      return weighAtom(condition, answers[condition.question] ?? otherwise)
  }
}

/** Every atom of a condition, in reading order. */
export function atomsOf(condition: Condition): Atom[] {
  if ('question' in condition) return [condition]
  return condition.op === 'not' ? atomsOf(condition.of) : condition.of.flatMap(atomsOf)
}

const read = new WeakMap<Condition, readonly QuestionId[]>()

/** The questions a condition reads, each once. */
export function questionsOf(condition: Condition): readonly QuestionId[] {
  const known = read.get(condition) ?? [...new Set(atomsOf(condition).map(atom => atom.question))]
  read.set(condition, known)
  return known
}
