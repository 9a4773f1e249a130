// How sure the search is of its best entry, from what it shares with the question; below a line it says that it has none.
import type { CautionKind } from './entry.ts'

/** What is compared, all between 0 and 1. */
export type Signs = {
  /** How much the entry's title and keywords have of the question: a sum, since one rare word in common is little. */
  readonly mass: number
  /** 1 if question and nearest phrasing share at least two terms. */
  readonly twice: number
  /** 1 if the question is one of the entry's own phrasings, of two terms or more, and no other entry's. */
  readonly exact: number
  /** Half for each of the two rankings, by words and by phrasings, that puts the entry first. */
  readonly agreed: number
  /** Share of the question that no entry knows anything of. */
  readonly strange: number
  /** How close the nearest of what people also ask and no entry is about is. */
  readonly elsewhere: number
}

/**
 * A logistic regression over the signs. Its weights were fitted on the fresh questions of `tests/answers/own-questions.yaml`,
 * never on a set that is held back; `node tests/answers/fit-confidence.ts` fits them again and says what to expect of them. Only
 * `exact` was not fitted: it is set so that one of an entry's own phrasings, typed as it stands, finds it.
 */
const weights: Signs & { readonly constant: number } = {
  constant: -2.4,
  mass: 4,
  twice: 0.7,
  exact: 4.5,
  agreed: 2.3,
  strange: -0.9,
  elsewhere: -6.2,
}

/**
 * From here on an answer is shown; below, only the nearest topics. A wrong answer costs more than a second tap, but not where
 * something may be burning: there, a needless “get away” costs less than a missing one.
 */
const sureFrom: Record<CautionKind, number> = { line: 0.85, full: 0.85, emergency: 0.2 }

export const isSure = (confidence: number, caution: CautionKind): boolean => confidence >= sureFrom[caution]

export function confidenceOf(signs: Signs): number {
  let sum = weights.constant
  for (const sign of Object.keys(signs) as (keyof Signs)[]) sum += weights[sign] * signs[sign]
  return 1 / (1 + Math.exp(-sum))
}
