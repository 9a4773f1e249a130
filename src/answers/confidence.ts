// How sure the search is of its best entry, from what it shares with the question; below a line it says that it has none.

/** What is compared, all between 0 and 1. */
export type Signs = {
  /** Share of the question, weighed by how rare its terms are, that the entry has anywhere. */
  readonly covered: number
  /** The same, in the entry's title and keywords alone. */
  readonly named: number
  /** How close the nearest of the entry's own phrasings is. */
  readonly phrased: number
  /** How far the entry lies before the next one. */
  readonly ahead: number
  /** Share of the question that no entry knows anything of. */
  readonly strange: number
  /** 1 if only one term of the question says anything. */
  readonly alone: number
  /** 1 if the question names something that the answers are about. */
  readonly matter: number
}

/**
 * A logistic regression over the signs. Its weights were fitted on `tests/answers/own-questions.yaml` (never on the set that
 * is held back) and rounded; `node tests/answers/fit-confidence.ts` prints them again.
 */
export const weights: Signs & { readonly constant: number } = {
  constant: -6,
  covered: 3,
  named: 3,
  phrased: 6,
  ahead: 3,
  strange: 0,
  alone: 0,
  matter: 0,
}

/** From here on an answer is shown; below, only the nearest topics. */
export const sureFrom = 0.5

export function confidenceOf(signs: Signs): number {
  let sum = weights.constant
  for (const sign of Object.keys(signs) as (keyof Signs)[]) sum += weights[sign] * signs[sign]
  return 1 / (1 + Math.exp(-sum))
}
