// Joins facts into one alt text within a limit, leaving out the least telling ones first.
import type { AltFact } from './alt-fact.ts'

/** Turns a code and its values into one short sentence of the reader's language. */
export type Phrase = (code: string, values: Readonly<Record<string, string | number>>) => string

function text(facts: readonly AltFact[], phrase: Phrase): string {
  return facts
    .map(fact =>
      phrase(
        fact.code,
        fact.parts === undefined ? (fact.values ?? {}) : { ...fact.values, text: text(fact.parts, phrase) },
      ),
    )
    .filter(sentence => sentence !== '')
    .join(' ')
}

const highest = (facts: readonly AltFact[]): number =>
  Math.max(-Infinity, ...facts.map(fact => Math.max(fact.rank, highest(fact.parts ?? []))))

/** Leaves out the last fact of the given rank, inner facts before the ones that hold them. */
function without(facts: readonly AltFact[], rank: number): readonly AltFact[] {
  for (let i = facts.length - 1; i >= 0; i--) {
    const fact = facts[i] as AltFact
    if (fact.parts !== undefined && fact.parts.length > 1 && highest(fact.parts) === rank) {
      return facts.with(i, { ...fact, parts: without(fact.parts, rank) })
    }
    if (fact.rank === rank || (fact.parts !== undefined && highest(fact.parts) === rank)) return facts.toSpliced(i, 1)
  }
  return facts
}

// Never splits a surrogate pair.
const cut = (long: string, limit: number): string => {
  let short = ''
  for (const sign of long) {
    if (short.length + sign.length > limit - 1) break
    short += sign
  }
  return `${short.trimEnd()}…`
}

/**
 * The alt text of at most `limit` UTF-16 units (Discord allows 1024 characters in a gallery). Facts of the highest rank
 * go first, later ones before earlier ones; a single fact that is still too long is cut with an ellipsis.
 */
export function joinAlt(facts: readonly AltFact[], phrase: Phrase, limit = 1024): string {
  let kept = facts
  let joined = text(kept, phrase)
  while (joined.length > limit && kept.length > 1) {
    kept = without(kept, highest(kept))
    joined = text(kept, phrase)
  }
  return joined.length > limit ? cut(joined, limit) : joined
}
