// Which words of a question the entries in a language have: enough to tell the language it is in, and quicker than its index.
import { type Entry, type Language, textFor } from './entry.ts'
import { bare, wordsOf } from './terms.ts'
import { vocabularies } from './words/vocabularies.ts'

export type KnownWords = {
  /** The share of a text's words, small ones left out, that titles or keywords have; 0 if it has none. */
  share(text: string): number
  /** Whether a title or a keyword has the word, in one or in many. */
  names(word: string): boolean
}

export function wordsIn(entries: readonly Entry[], language: Language): KnownWords {
  const { small, ours } = vocabularies[language]
  const smallWords = new Set(small.split(' '))
  const texts = entries.map(entry => textFor(entry, language)).filter(text => text.language === language)
  const known = new Set([
    ...ours.split(' '),
    ...wordsOf(bare(texts.flatMap(({ title, keywords }) => [title, ...keywords]).join(' '))),
  ])
  const named = (word: string) => known.has(word) || smallWords.has(word)
  return {
    names: word => numbers(word).some(named),
    share: text => {
      const words = wordsOf(bare(text)).filter(word => !smallWords.has(word))
      return words.length === 0 ? 0 : words.filter(word => known.has(word)).length / words.length
    },
  }
}

/** A word as it stands, and as it would be if it stood for one or for many; its gender stays, which tells a bag from a handbag. */
const numbers = (word: string): string[] => [
  word,
  ...['s', 'es', 'n', 'en', 'e', 'er'].flatMap(end =>
    word.endsWith(end) ? [word.slice(0, -end.length)] : [word + end],
  ),
]
