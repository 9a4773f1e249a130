// What a catalogue of words is: every key that English has, and one topic of it in another language.
import type { english } from './en/english.ts'

export type Key = keyof typeof english
export type Catalogue = Readonly<Record<Key, string>>
/** One topic in another language: a key that English lacks is a type error, one that is missing is listed by a test. */
export type InWordsOf<English> = { readonly [key in keyof English]?: string }
