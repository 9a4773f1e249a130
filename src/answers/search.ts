// Finds the entry that answers a question: BM25 over all entries, the nearest phrasing among the best, and how sure that is.
import { openRanking } from './bm25.ts'
import { confidenceOf, type Signs } from './confidence.ts'
import { type Entry, type Language, textFor } from './entry.ts'
import { openTerms, type Term } from './terms.ts'
import { german } from './words/de.ts'
import { english } from './words/en.ts'
import { spanish } from './words/es.ts'

export type Found = { readonly entry: Entry; readonly confidence: number; readonly signs: Signs }

export type AnswerSearch = {
  /** The best entries for a question in a language, at most eight, the best first; each with how sure it would be as the answer. */
  find(query: string, language: Language): readonly Found[]
}

const vocabularies = { en: english, de: german, es: spanish }
const boosts = { title: 3, keywords: 3, body: 1 }
/** What a term counts that was only guessed from a mistyped word. */
const guessedCounts = 0.8
const mostFound = 8
/** Of how many the nearest phrasing is looked for. */
const looked = 2 * mostFound
/** Longer questions are read up to here. */
const longestQuery = 400

export function openAnswerSearch(entries: readonly Entry[]): AnswerSearch {
  const opened = new Map<Language, (query: string) => readonly Found[]>()
  return {
    find(query, language) {
      // A language is indexed when the first asks in it.
      const find = opened.get(language) ?? openLanguage(entries, language)
      opened.set(language, find)
      return find(query.slice(0, longestQuery))
    },
  }
}

type Has = { has(term: string): boolean }
type Indexed = {
  readonly entry: Entry
  readonly all: ReadonlySet<string>
  readonly named: ReadonlySet<string>
  readonly phrasings: readonly ReadonlySet<string>[]
}
type Telling = (term: string) => number

function openLanguage(entries: readonly Entry[], language: Language): (query: string) => readonly Found[] {
  const texts = entries.map(entry => textFor(entry, language))
  const terms = openTerms(
    vocabularies[language],
    texts.flatMap(({ title, body, keywords }) => [title, body, ...keywords]),
  )
  const fields = texts.map(({ title, keywords, body }) => ({
    title: terms.ofText(title),
    keywords: keywords.flatMap(terms.ofText),
    body: terms.ofText(body),
  }))
  const rank = openRanking(fields, boosts)
  const indexed = entries.map((entry, i): Indexed => {
    const { title = [], keywords = [], body = [] } = fields[i] ?? {}
    const phrasings = [texts[i]?.title ?? '', ...(texts[i]?.keywords ?? [])].map(one => new Set(terms.ofText(one)))
    const named = new Set([...title, ...keywords])
    return { entry, named, all: new Set([...named, ...body]), phrasings }
  })
  const rarity = new Map<string, number>()
  for (const { all } of indexed) for (const term of all) rarity.set(term, (rarity.get(term) ?? 0) + 1)
  /** How much a term tells: one that no entry has tells most, and nobody has it. */
  const telling: Telling = term => Math.log(1 + (entries.length + 0.5) / ((rarity.get(term) ?? 0) + 0.5))

  return query => {
    const asked = distinct(terms.ofQuery(query))
    const ranked = rank(asked.map(one => ({ term: one.term, counts: counts(one) }))).slice(0, looked)
    const best = ranked[0]?.score ?? 1
    const hits = ranked
      .flatMap(({ place, score }) => {
        const one = indexed[place]
        if (!one) return []
        const phrased = nearestPhrasing(asked, one, telling)
        const covered = share(asked, one.all, telling)
        return [{ one, phrased, covered, score: score / best + phrased + covered }]
      })
      .toSorted((a, b) => b.score - a.score)
      .slice(0, mostFound)
    const ofTheQuestion = {
      strange: 1 - share(asked, rarity, telling),
      alone: asked.length === 1 ? 1 : 0,
      matter: asked.some(one => terms.isMatter(one.term)) ? 1 : 0,
    }
    return hits.map(({ one, phrased, covered, score }, i): Found => {
      const named = share(asked, one.named, telling)
      const ahead = (score - (hits[i + 1]?.score ?? 0)) / score
      const signs = { covered, named, phrased, ahead, ...ofTheQuestion }
      return { entry: one.entry, signs, confidence: confidenceOf(signs) }
    })
  }
}

const distinct = (terms: readonly Term[]): Term[] =>
  terms.filter((one, i) => terms.findIndex(other => other.term === one.term) === i)

const counts = (one: Term): number => (one.guessed ? guessedCounts : 1)

/** What the terms tell together, as far as `has` holds them. */
const weigh = (asked: readonly Term[], telling: Telling, has?: Has): number =>
  asked.reduce((sum, one) => {
    if (has && !has.has(one.term)) return sum
    return sum + telling(one.term) * (has ? counts(one) : 1)
  }, 0)

/** Which share of the question, by weight, is among `has`. */
const share = (asked: readonly Term[], has: Has, telling: Telling): number =>
  asked.length === 0 ? 0 : weigh(asked, telling, has) / weigh(asked, telling)

/** Dice's coefficient, weighed by how much each term tells, between the question and the nearest of the entry's phrasings. */
function nearestPhrasing(asked: readonly Term[], { phrasings }: Indexed, telling: Telling): number {
  const whole = weigh(asked, telling)
  let nearest = 0
  for (const phrasing of phrasings) {
    let size = 0
    for (const term of phrasing) size += telling(term)
    if (size > 0) nearest = Math.max(nearest, (2 * weigh(asked, telling, phrasing)) / (whole + size))
  }
  return nearest
}
