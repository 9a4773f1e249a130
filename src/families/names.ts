// Names of families: read as text, compared by what the eye sees, so that two of them are never taken for one another.
import { remove } from 'confusables'
import type { FactProblem } from './facts/fact-problems.ts'

/** Spaces as one, no control characters, no heaps of marks. */
export const tidyName = (typed: string): string =>
  typed
    .normalize('NFKC')
    .replace(/[\p{Cc}\p{Zl}\p{Zp}\s]+/gu, ' ')
    .replace(/\p{Cf}/gu, '')
    .replace(/(\p{M}{2})\p{M}+/gu, '$1')
    .trim()

/** What is left of a name when letters that look alike are one: two names with one skeleton are the same to a reader. */
export const skeletonOf = (name: string): string =>
  remove(tidyName(name))
    .toLowerCase()
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/0/g, 'o')
    .replace(/[1|i]/g, 'l')
    .replace(/rn/g, 'm')
    .replace(/[^\p{L}\p{N}]/gu, '')

const scripts = [
  /\p{Script=Latin}/u,
  /\p{Script=Cyrillic}/u,
  /\p{Script=Greek}/u,
  /\p{Script=Han}/u,
  /\p{Script=Arabic}/u,
]

/** What is wrong with a name, or with words of a moderator's: letters of two alphabets, something that reads like a link. */
export function nameProblems(name: string): FactProblem[] {
  return [
    ...(scripts.filter(script => script.test(name)).length > 1
      ? [{ code: 'name-of-two-alphabets' as const, name }]
      : []),
    ...(readsLikeLink(name) ? [{ code: 'name-reads-like-link' as const, name }] : []),
  ]
}

/** An address, a mention or a server's invitation in words that are shown to everybody. */
export const readsLikeLink = (text: string): boolean =>
  /:\/\/|\bwww\.|<[@#:]|@everyone|@here|\[[^[\]]*\]\(|(?<![\p{L}\p{N}-])[\p{L}\p{N}-]+\.(?:com|net|org|shop|store|gg|io|de|es|cn|ru|xyz|info|eu|uk)\b/iu.test(
    text,
  )
