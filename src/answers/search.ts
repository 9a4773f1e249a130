// Finds the entry that answers a question: BM25 and Bayes over all entries, the nearest phrasing among the best, and how sure that is.

import { atOnce } from './at-once.ts'
import { openBayes } from './bayes.ts'
import { openRanking, type Ranked } from './bm25.ts'
import { distinctTerms, nearest, type Phrasing, share, type Telling, toPhrasing } from './closeness.ts'
import { confidenceOf, muchInCommon, type Signs } from './confidence.ts'
import { type Entry, type Language, longestQuery, textFor } from './entry.ts'
import { type KnownWords, wordsIn } from './known-words.ts'
import { bare, openingTerms, wordsOf } from './terms.ts'
import { vocabularies } from './words/vocabularies.ts'

export type Found = { readonly entry: Entry; readonly confidence: number; readonly signs: Signs }

export type AnswerSearch = {
  /** The best entries for a question in a language, at most eight, the best first; each with how sure it would be as the answer. */
  find(query: string, language: Language, only?: Only): readonly Found[]
  /** Which share of a question's words, small ones left out, the entries in a language know. */
  knows(query: string, language: Language): number
  /** Whether a title or a keyword in a language has a word. */
  names(word: string, language: Language): boolean
  /** Makes the index of a language in slices, which whoever asks meanwhile finishes at once. */
  opening(language: Language): Generator<void>
}
/** Which entries count; the others are left out before the best are taken. */
export type Only = (entry: Entry) => boolean

const boosts = { title: 3, keywords: 3, body: 1 }
/** What the nearest phrasing and Bayes count beside the ranking by words: found on keywords that were left out of the entries in turn. */
const phrasingCounts = 1.5
const bayesCounts = 2

const mostFound = 8
/** For how many the nearest phrasing is looked up. */
const looked = 3 * mostFound
/** From here on question and phrasing have the same terms: closeness is a sum of fractions. */
const nearlyOne = 0.999

export function openAnswerSearch(entries: readonly Entry[]): AnswerSearch {
  const opened = new Map<Language, OneLanguage>()
  const words = new Map<Language, KnownWords>()
  const begun = new Map<Language, Generator<void, OneLanguage>>()
  const slicesOf = (language: Language) => {
    const slices = begun.get(language) ?? openingLanguage(entries, language)
    begun.set(language, slices)
    return slices
  }
  const keep = (language: Language, one: OneLanguage): OneLanguage => {
    opened.set(language, one)
    begun.delete(language)
    return one
  }
  // A language is indexed when the first asks in it.
  const open = (language: Language): OneLanguage => opened.get(language) ?? keep(language, atOnce(slicesOf(language)))
  const wordsOfLanguage = (language: Language): KnownWords => {
    const known = words.get(language) ?? wordsIn(entries, language)
    words.set(language, known)
    return known
  }
  return {
    find: (query, language, only) => open(language)(query.slice(0, longestQuery), only),
    knows: (query, language) => wordsOfLanguage(language).share(query.slice(0, longestQuery)),
    names: (word, language) => wordsOfLanguage(language).names(word),
    *opening(language) {
      wordsOfLanguage(language)
      yield
      // Whoever asks in between comes to the end of it.
      while (!opened.has(language)) {
        const slice = slicesOf(language).next()
        if (slice.done) keep(language, slice.value)
        yield
      }
    },
  }
}

type OneLanguage = (query: string, only?: Only) => readonly Found[]

type Indexed = {
  readonly entry: Entry
  readonly all: ReadonlySet<string>
  readonly named: ReadonlySet<string>
  readonly phrasings: readonly Phrasing[]
}

/** A slice for each text, and for each of the larger steps. */
function* openingLanguage(entries: readonly Entry[], language: Language): Generator<void, OneLanguage> {
  const texts = entries.map(entry => ({ entry, ...textFor(entry, language) }))
  const vocabulary = vocabularies[language]
  const terms = yield* openingTerms(
    vocabulary,
    texts.flatMap(({ title, body, keywords }) => [title, body, ...keywords]),
  )
  const fields = []
  for (const { entry, title, keywords, body } of texts) {
    const asked = keywords.map(terms.ofText)
    const titled = terms.ofText(title)
    fields.push({ entry, title: titled, keywords: asked.flat(), body: terms.ofText(body), phrased: [titled, ...asked] })
    yield
  }
  const rank = openRanking(
    fields.map(({ title, keywords, body }) => ({ title, keywords, body })),
    boosts,
  )
  const spokenWords = (text: string) => wordsOf(bare(text)).map(terms.ofWord)
  yield
  const spoken = []
  for (const { title, keywords, body } of texts) {
    spoken.push({ phrasings: [title, title, ...keywords].map(spokenWords), body: spokenWords(body) })
    yield
  }
  const fitting = openBayes(spoken)
  yield
  const sets = fields.map(({ entry, title, keywords, body, phrased }) => {
    const named = new Set([...title, ...keywords])
    return { entry, named, all: new Set([...named, ...body]), phrased }
  })
  const rarity = new Map<string, number>()
  for (const { all } of sets) for (const term of all) rarity.set(term, (rarity.get(term) ?? 0) + 1)
  /** How much a term tells: one that no entry has tells most. */
  const telling: Telling = term => Math.log(1 + (entries.length + 0.5) / ((rarity.get(term) ?? 0) + 0.5))
  const phrasingsOf = (list: readonly (readonly string[])[]) => list.map(one => toPhrasing(one, telling))
  const indexed = sets.map(({ phrased, ...one }): Indexed => ({ ...one, phrasings: phrasingsOf(phrased) }))
  const ours = new Set(vocabulary.ours.split(' ').map(terms.ofWord))
  const elsewhere = phrasingsOf(vocabulary.elsewhere.flatMap(line => line.split(', ')).map(terms.ofText))

  function find(query: string, only?: Only): readonly Found[] {
    const asked = distinctTerms(terms.ofQuery(query))
    const counts = ({ place }: Ranked) => !only || entries.slice(place, place + 1).some(only)
    const ranked = rank(asked).filter(counts).slice(0, looked)
    const best = ranked[0]?.score ?? 1
    const fits = fitting(spokenWords(query))
    const hits = ranked
      .flatMap(({ place, score }) => {
        const one = indexed[place]
        if (!one) return []
        const near = nearest(asked, one.phrasings, telling)
        const covered = share(asked, one.all, telling)
        const fit = fits[place] ?? 0
        const sum = score / best + phrasingCounts * near.close + bayesCounts * fit + covered
        return [{ one, near, fit, bm25: score, score: sum }]
      })
      .toSorted((a, b) => b.score - a.score)
      .slice(0, mostFound)
    const [closest = 0, next = 0] = hits.map(hit => hit.near.close).toSorted((a, b) => b - a)
    // What was only guessed from a mistyped word may be a word of another matter.
    const strangers = new Set(asked.filter(one => one.counts < 1 || !rarity.has(one.term)).map(one => one.term))
    const ofTheQuestion = {
      elsewhere: nearest(asked, elsewhere, telling).close,
      astray: asked.some(one => ours.has(one.term)) ? 0 : share(asked, strangers, telling),
    }
    const [fittest = 0, fitNext = 0] = hits.map(hit => hit.fit).toSorted((a, b) => b - a)
    return hits.map(({ one, near, fit, bm25 }): Found => {
      const common = asked.filter(({ term }) => one.named.has(term)).length
      const signs: Signs = {
        common: Math.min(1, common / muchInCommon),
        close: near.close,
        exact: near.shared > 1 && near.close > nearlyOne && next < near.close ? 1 : 0,
        agreed: [near.close === closest, bm25 === best, fit === fittest].filter(Boolean).length / 3,
        ...ofTheQuestion,
        lead: Math.max(0, fit - (fit === fittest ? fitNext : fittest)),
      }
      return { entry: one.entry, signs, confidence: confidenceOf(signs) }
    })
  }

  return find
}
