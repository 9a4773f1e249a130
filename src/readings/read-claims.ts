// Reads what a listing or a wrap claims out of its text: "9900mAh 18650 30A 38g" becomes facts.
import { chemistryWords, count, dimensions, price, protectionWords } from './claims/claim-words.ts'
import { type Fact, longestClaim, mostFacts } from './claims/facts.ts'
import { batteriesOf, findBatteries } from './claims/find-batteries.ts'
import { findCodes } from './claims/find-codes.ts'
import { findFigures } from './claims/find-figures.ts'
import { type Stretches, spanOf, stretches } from './claims/stretches.ts'

/**
 * All facts of a text, in its order; prices are left out, what can be read in two ways is `unclear`.
 *
 * The numbers follow the locale, the words are English, German, Spanish or French. Text beyond 4,000 characters is not
 * looked at, nor more than 60 facts. Every fact carries the stretch of text it came from. The work grows with the length of
 * the text and no faster.
 */
export function readClaims(text: string, locale: string): readonly Fact[] {
  const looked = text.slice(0, longestClaim)
  const taken = stretches(looked.length)
  const codes = findCodes(looked, taken)
  const batteries = findBatteries(looked, taken)
  for (const pattern of [price, dimensions])
    for (const match of looked.matchAll(pattern)) if (taken.isFree(spanOf(match))) taken.take(spanOf(match))
  const counts = findCounts(looked, taken)
  const words = findWords(looked)
  const figures = findFigures(
    looked,
    locale,
    taken,
    counts.map(({ span }) => span),
  )
  const read = [...codes, ...batteries, ...counts, ...figures]
  const facts = [...read, ...batteriesOf(looked, read), ...words]
  return facts.sort((a, b) => a.span.from - b.span.from).slice(0, mostFacts)
}

function findCounts(text: string, taken: Stretches): Fact[] {
  const facts: Fact[] = []
  for (const match of text.matchAll(count)) {
    const span = spanOf(match)
    const cells = Number(match[1] ?? match[2])
    if (cells < 2 || !taken.isFree(span)) continue
    taken.take(span)
    facts.push({ kind: 'count', cells, span })
  }
  return facts
}

/** Words that say something by themselves; they stay where they are for the figures beside them. */
function findWords(text: string): Fact[] {
  const said = stretches(text.length)
  const facts: Fact[] = []
  const each = (pattern: RegExp, factOf: (span: Fact['span']) => Fact) => {
    for (const match of text.matchAll(pattern)) {
      const span = spanOf(match)
      if (!said.isFree(span)) continue
      said.take(span)
      facts.push(factOf(span))
    }
  }
  each(protectionWords.none, span => ({ kind: 'protection', protected: false, span }))
  each(protectionWords.some, span => ({ kind: 'protection', protected: true, span }))
  for (const chemistry of ['iron-phosphate', 'sodium-ion', 'titanate', 'lithium-ion'] as const)
    each(chemistryWords[chemistry], span => ({ kind: 'chemistry', chemistry, span }))
  return facts
}
