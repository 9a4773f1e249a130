// What the search knows of each language.
import type { Language } from '../entry.ts'
import { german } from './de.ts'
import { english } from './en.ts'
import { spanish } from './es.ts'
import type { Vocabulary } from './vocabulary.ts'

export const vocabularies: Readonly<Record<Language, Vocabulary>> = { en: english, de: german, es: spanish }
