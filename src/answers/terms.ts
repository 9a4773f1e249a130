// Turns a text into the terms it is searched by: no small words, one word for all that mean the same, without its ending.
import { closest, distance } from 'fastest-levenshtein'
import { atOnce } from './at-once.ts'
import { figures, type Vocabulary } from './words/vocabulary.ts'

/** A term, and whether it was only guessed from a mistyped word. */
export type Term = { readonly term: string; readonly guessed: boolean }

export type Terms = {
  /** The terms of a text of ours, in order. */
  ofText(text: string): string[]
  /** The terms of what a person has typed: mistyped words are taken for the nearest known one. */
  ofQuery(text: string): Term[]
  /** The term of one word. */
  ofWord(word: string): string
}

/** Lower case, without accents and apostrophes, so that what is typed in a hurry meets what is written with care. */
export const bare = (text: string): string =>
  text
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/(?<=\p{L})['’](?=\p{L})/gu, '')
    // Written out in a fright: hissss, fireeee.
    .replace(/(\p{L})\1{2,}/gu, '$1$1')

export const wordsOf = (text: string): string[] => text.match(/[\p{L}\p{N}]+/gu) ?? []

export const openTerms = (vocabulary: Vocabulary, texts: readonly string[]): Terms =>
  atOnce(openingTerms(vocabulary, texts))

/** `texts` are all texts that are searched: their words are the known ones. A slice a text. */
export function* openingTerms(vocabulary: Vocabulary, texts: readonly string[]): Generator<void, Terms> {
  const small = new Set(vocabulary.small.split(' '))
  const standsFor = new Map<string, string>()
  const stemOf = remember(vocabulary.stem)
  for (const group of vocabulary.same) {
    const [first = '', ...others] = group.split(' ')
    for (const word of [first, ...others]) if (!standsFor.has(stemOf(word))) standsFor.set(stemOf(word), stemOf(first))
  }
  const termOf = (word: string): string => standsFor.get(stemOf(word)) ?? stemOf(word)
  const plainWords = (text: string): string[] => wordsOf(prepared(vocabulary, text)).filter(word => !small.has(word))
  const known = new Set(vocabulary.same.join(' ').split(' '))
  for (const text of texts) {
    for (const word of plainWords(text)) known.add(word)
    yield
  }
  const terms = new Set([...known].map(termOf))
  const spelt = [...known].filter(word => word.length >= 4 && !/\d/.test(word))

  const split = (word: string): string[] => {
    if (!vocabulary.compounds || word.length < 8) return []
    for (let i = word.length - 4; i >= 4; i--) {
      const head = word.slice(0, i)
      const tail = word.slice(i)
      if (!known.has(tail)) continue
      const whole = [head, head.replace(/(?:s|n|en)$/, '')].find(one => one.length >= 4 && known.has(one))
      if (whole) return [whole, tail]
    }
    return []
  }
  const withParts = (word: string): string[] => [word, ...split(word)].map(termOf)
  const guess = remember((word: string): string => {
    if (word.length < 5 || /\d/.test(word)) return ''
    const near = closest(word, spelt)
    return distance(word, near) <= (word.length >= 8 ? 2 : 1) ? near : ''
  })
  return {
    ofWord: termOf,
    ofText: text => plainWords(text).flatMap(withParts),
    ofQuery: text =>
      plainWords(text).flatMap((word): Term[] => {
        if (terms.has(termOf(word))) return withParts(word).map(term => ({ term, guessed: false }))
        const parts = split(word)
        if (parts.length > 0) return parts.map(part => ({ term: termOf(part), guessed: false }))
        const near = guess(word)
        return [near ? { term: termOf(near), guessed: true } : { term: termOf(word), guessed: false }]
      }),
  }
}

function prepared({ together }: Vocabulary, text: string): string {
  let out = bare(text)
  for (const [pattern, word] of together) out = out.replace(pattern, word)
  for (const [pattern, word] of figures)
    out = out.replace(pattern, (_, value: string) => word(Number(value.replace(',', '.'))))
  return out
}

/** How many words are remembered: more than any one language has here, and a bound on what people can make us keep. */
const mostRemembered = 20_000

function remember(work: (word: string) => string): (word: string) => string {
  const known = new Map<string, string>()
  return word => {
    const before = known.get(word)
    if (before !== undefined) return before
    const value = work(word)
    if (known.size >= mostRemembered) known.clear()
    known.set(word, value)
    return value
  }
}
