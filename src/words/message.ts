// Makes a message of a catalogue ready to be said; in the pseudo-language of the tests, from what stands in English.
import { IntlMessageFormat } from 'intl-messageformat'

export type Parsed = ReturnType<IntlMessageFormat['getAst']>

/** The pseudo-language, where the tests have switched it on. */
let pseudo: { readonly locale: string; disguise(message: Parsed): Parsed } | undefined

/** From now on `locale` is spoken too: English, disguised. */
export function speakPseudo(locale: string, disguise: (message: Parsed) => Parsed): void {
  pseudo = { locale, disguise }
}

export const isPseudo = (locale: string): boolean => locale === pseudo?.locale

/** Tags are text: what looks like one is written by nobody but us. */
const options = { ignoreTag: true }

export function openMessage(message: string, locale: string): IntlMessageFormat {
  if (!pseudo || locale !== pseudo.locale) return new IntlMessageFormat(message, locale, undefined, options)
  const english = new IntlMessageFormat(message, 'en', undefined, options)
  return new IntlMessageFormat(pseudo.disguise(english.getAst()), 'en', undefined, options)
}
