// Reads what a listing or a wrap claims out of its text: "9900mAh 18650 30A 38g" becomes facts.
import { chemistryWords, count, price, protectionWords } from './claims/claim-words.ts'
import type { Fact, Span } from './claims/facts.ts'
import { findCodes } from './claims/find-codes.ts'
import { findFigures } from './claims/find-figures.ts'

/** The longest text looked at; listings have their claims in the title. */
export const longestClaim = 4000

/**
 * All facts of a text, in its order; prices are left out, what can be read in two ways is `unclear`.
 *
 * The numbers follow the locale, the words are English, German, Spanish or French. Text beyond 4,000 characters is not
 * looked at. Every fact carries the stretch of text it came from.
 */
export function readClaims(text: string, locale: string): readonly Fact[] {
  const looked = text.slice(0, longestClaim)
  const codes = findCodes(looked)
  const prices = spansOf(looked, price)
  const counts = [...looked.matchAll(count)].flatMap((match): Fact[] => {
    const cells = Number(match[1] ?? match[2])
    const span = { from: match.index, to: match.index + match[0].length }
    const clear = [...codes, ...prices.map(each => ({ span: each }))].every(each => !overlap(each.span, span))
    return clear && cells >= 2 ? [{ kind: 'count', cells, span }] : []
  })
  const unprotected = spansOf(looked, protectionWords.none)
  const guarded = spansOf(looked, protectionWords.some).filter(span => unprotected.every(each => !overlap(each, span)))
  const words: Fact[] = [
    ...unprotected.map(span => ({ kind: 'protection', protected: false, span }) as const),
    ...guarded.map(span => ({ kind: 'protection', protected: true, span }) as const),
    ...spansOf(looked, chemistryWords['iron-phosphate']).map(
      span => ({ kind: 'chemistry', chemistry: 'iron-phosphate', span }) as const,
    ),
    ...spansOf(looked, chemistryWords['lithium-ion']).map(
      span => ({ kind: 'chemistry', chemistry: 'lithium-ion', span }) as const,
    ),
  ]
  const taken = [...codes, ...counts].map(fact => fact.span)
  const figures = findFigures(looked, locale, [...taken, ...prices])
  return [...codes, ...counts, ...words, ...figures].sort((a, b) => a.span.from - b.span.from)
}

function spansOf(text: string, pattern: RegExp): Span[] {
  return [...text.matchAll(pattern)].map(match => ({ from: match.index, to: match.index + match[0].length }))
}

function overlap(a: Span, b: Span): boolean {
  return a.from < b.to && b.from < a.to
}
