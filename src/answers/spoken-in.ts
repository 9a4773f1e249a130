// Which language a question is in, told by its small words, where it may be in several.
import type { Language } from './entry.ts'
import { bare, wordsOf } from './terms.ts'
import { vocabularies } from './words/vocabularies.ts'

/** The languages of which the question has most small words: several if they come out even, all of them if it has none. */
export function spokenIn(question: string, languages: readonly Language[]): readonly Language[] {
  const words = wordsOf(bare(question))
  const counted = languages.map(language => ({
    language,
    count: words.filter(word => smallWords[language].has(word)).length,
  }))
  const most = Math.max(...counted.map(one => one.count))
  return counted.filter(one => one.count === most).map(one => one.language)
}

const smallOf = (language: Language) => new Set(vocabularies[language].small.split(' '))
const smallWords = { en: smallOf('en'), de: smallOf('de'), es: smallOf('es') }
