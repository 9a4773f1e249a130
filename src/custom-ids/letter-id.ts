// Custom ids of a letter to the seller: whose check it is about and in which language.
import { z } from 'zod'
import { type IdOf, idKind } from './id-kind.ts'
import { opening, ownId } from './id-parts.ts'

/** The languages a letter can be written in. */
export const letterLanguages = ['en', 'de', 'es'] as const
export type LetterLanguage = (typeof letterLanguages)[number]
const language = z.enum(letterLanguages)

export const letterIds = idKind(
  'clt1',
  /** `write` opens it from a verdict, `language` is the menu. */
  { is: z.enum(['write', 'language']), check: ownId },
  { is: z.literal('change'), check: ownId, language },
  /** The form sent in; `opening` makes each form's id new, since phones keep forms by id. */
  { is: z.literal('changed'), check: ownId, language, opening },
)

export type LetterAct = IdOf<typeof letterIds>
export const { write: encodeLetter, read: decodeLetter } = letterIds

export const isLetterLanguage = (text: string | undefined): text is LetterLanguage =>
  (letterLanguages as readonly (string | undefined)[]).includes(text)
