// How sure the search is of its best entry, from what it shares with the question; below a line it says that it has none.
import type { CautionKind } from './entry.ts'

/** What is compared, all between 0 and 1. */
export type Signs = {
  /** How many of the question's terms the entry's title and keywords have, as a share of `muchInCommon`. */
  readonly common: number
  /** Dice's coefficient between the question and the nearest phrasing. */
  readonly close: number
  /** 1 if the question is one of the entry's own phrasings, of two terms or more, and no other entry's. */
  readonly exact: number
  /** A third for each of the three rankings, by words, by phrasings and by Bayes, that puts the entry first. */
  readonly agreed: number
  /** Share of the question that no entry knows anything of, where no word shows that it is about cells; otherwise 0. */
  readonly astray: number
  /** By how much Bayes puts the entry before the best of the others: two that are near each other are both doubtful. */
  readonly lead: number
  /** How close the nearest of what people also ask and no entry is about is. */
  readonly elsewhere: number
}

/** So many terms in common, and more, count as much as can be. */
export const muchInCommon = 4

/**
 * A logistic regression over the signs. Its weights were fitted on our own questions and on sets that are spent (the fresh ones of
 * `tests/answers/own-questions.yaml`, and the others beside it), never on a set that is held back; `node tests/answers/fit-confidence.ts` fits them again and
 * says what to expect of them. Only `exact` was not fitted: it is set so that one of an entry's own phrasings, typed as it stands,
 * finds it.
 */
const weights: Signs & { readonly constant: number } = {
  constant: -3.0,
  common: 3.0,
  close: 2.0,
  exact: 4.5,
  agreed: 1.8,
  astray: -1.0,
  lead: 2.2,
  elsewhere: -3.7,
}

/**
 * From here on an answer is shown; below, only the nearest topics. A wrong answer costs more than a second tap, but not where
 * something may be burning: there, a needless “get away” costs less than a missing one.
 */
const sureFrom: Record<CautionKind, number> = { line: 0.86, full: 0.86, emergency: 0.5 }
/** From here on a question is an entry's own phrasing but for a slip; below, one word in common is not enough. */
const nearlyExact = 0.9

/** What the sureness rests on; `confidence` is that of `signs`. */
type Judged = { readonly confidence: number; readonly signs: Signs }

export const isSure = ({ confidence, signs }: Judged, caution: CautionKind): boolean =>
  confidence >= sureFrom[caution] && (signs.common * muchInCommon >= 2 || signs.close >= nearlyExact)

export function confidenceOf(signs: Signs): number {
  let sum = weights.constant
  for (const sign of Object.keys(signs) as (keyof Signs)[]) sum += weights[sign] * signs[sign]
  return 1 / (1 + Math.exp(-sum))
}
