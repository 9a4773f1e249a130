// How close a question comes to sets of terms, each term weighed by how much it tells.
import type { WeighedTerm } from './bm25.ts'
import type { Term } from './terms.ts'

export type Telling = (term: string) => number
/** One way to put a question: its terms, and what they tell together. */
export type Phrasing = { readonly terms: ReadonlySet<string>; readonly tells: number }
export type Has = { has(term: string): boolean }

/** What a term counts that was only guessed from a mistyped word. */
const guessedCounts = 0.8

export const distinctTerms = (terms: readonly Term[]): WeighedTerm[] => {
  const counts = new Map<string, number>()
  for (const { term, guessed } of terms) counts.set(term, Math.max(counts.get(term) ?? 0, guessed ? guessedCounts : 1))
  return [...counts].map(([term, counts]) => ({ term, counts }))
}

export function toPhrasing(terms: readonly string[], telling: Telling): Phrasing {
  const distinct = new Set(terms)
  return { terms: distinct, tells: [...distinct].reduce((sum, term) => sum + telling(term), 0) }
}

/** What the question's terms tell together, or only those that `has` holds, guessed ones for less. */
export const weigh = (asked: readonly WeighedTerm[], telling: Telling, has?: Has): number =>
  asked.reduce((sum, { term, counts }) => {
    if (!has) return sum + telling(term)
    return has.has(term) ? sum + telling(term) * counts : sum
  }, 0)

/** Which share of the question, by weight, is among `has`. */
export const share = (asked: readonly WeighedTerm[], has: Has, telling: Telling): number =>
  asked.length === 0 ? 0 : weigh(asked, telling, has) / weigh(asked, telling)

/** Dice's coefficient between the question and the nearest phrasing, and how many terms they share. */
export function nearest(
  asked: readonly WeighedTerm[],
  phrasings: readonly Phrasing[],
  telling: Telling,
): { readonly close: number; readonly shared: number } {
  const whole = weigh(asked, telling)
  let best = { close: 0, shared: 0 }
  for (const { terms, tells } of phrasings) {
    const close = (2 * weigh(asked, telling, terms)) / (whole + tells)
    if (close > best.close) best = { close, shared: asked.filter(one => terms.has(one.term)).length }
  }
  return best
}
