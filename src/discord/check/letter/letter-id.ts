// Custom ids of a letter to the seller: whose check it is about and in which language; nothing when the id is not one of ours.
//
// An id carries no authority: who holds the check, and whether it is finished, is looked up on every click.
import type { CheckId } from '../../../check/ids.ts'
import { isOpening, isOwnId } from '../../interaction/id-parts.ts'

/** The languages a letter can be written in. */
export const letterLanguages = ['en', 'de', 'es'] as const
export type LetterLanguage = (typeof letterLanguages)[number]

export type LetterAct =
  /** `write` opens it from a verdict, `language` is the menu. */
  | { readonly is: 'write' | 'language'; readonly check: CheckId }
  | { readonly is: 'change'; readonly check: CheckId; readonly language: LetterLanguage }
  /** The form sent in; `opening` makes each form's id new, since phones keep forms by id. */
  | { readonly is: 'changed'; readonly check: CheckId; readonly language: LetterLanguage; readonly opening: string }

const mark = 'clt1'

export function encodeLetter(act: LetterAct): string {
  const more = act.is === 'changed' ? [act.language, act.opening] : act.is === 'change' ? [act.language] : []
  return [mark, act.is, act.check, ...more].join('.')
}

/** Decodes a custom id; undefined for anything that `encodeLetter` cannot have written. */
export function decodeLetter(id: string): LetterAct | undefined {
  const [version, is, check = '', language, opening = '', ...more] = id.split('.')
  if (version !== mark || more.length > 0 || !isOwnId(check)) return undefined
  const count = id.split('.').length
  if ((is === 'write' || is === 'language') && count === 3) return { is, check }
  if (!isLetterLanguage(language)) return undefined
  if (is === 'change' && count === 4) return { is, check, language }
  return is === 'changed' && isOpening(opening) ? { is, check, language, opening } : undefined
}

export const isLetterLanguage = (text: string | undefined): text is LetterLanguage =>
  (letterLanguages as readonly (string | undefined)[]).includes(text)
