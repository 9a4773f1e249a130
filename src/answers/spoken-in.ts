// Which language a question is in: the one that knows most of its words.
import { type Language, languages } from './entry.ts'
import { bare, wordsOf } from './terms.ts'
import { vocabularies } from './words/vocabularies.ts'

/** A language that somebody reads is taken to be the one they write in, as long as no other knows more than half a word more. */
const ownCounts = 0.5

/**
 * The language of a question. `reads` are those of the person and the server, the person's first; `knows` says which share of the
 * words that are no small words the answers in a language know.
 */
export function spokenIn(
  question: string,
  reads: readonly Language[],
  knows: (language: Language) => number,
): Language {
  const words = wordsOf(bare(question))
  const ranked = [...new Set([...reads, ...languages])].map(language => {
    const small = words.filter(word => smallWords[language].has(word)).length
    return {
      language,
      known: small + (words.length - small) * knows(language) + (reads.includes(language) ? ownCounts : 0),
    }
  })
  return ranked.toSorted((a, b) => b.known - a.known)[0]?.language ?? 'en'
}

const smallOf = (language: Language) => new Set(vocabularies[language].small.split(' '))
const smallWords = { en: smallOf('en'), de: smallOf('de'), es: smallOf('es') }
