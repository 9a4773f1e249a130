// Turns a key and its values into words of the reader's language: ICU messages, English wherever a language lacks one.
import { IntlMessageFormat } from 'intl-messageformat'
import { english } from './en/english.ts'

export type Key = keyof typeof english
export type Values = Readonly<Record<string, string | number>>
export type Catalogue = Readonly<Record<Key, string>>
/** Says a key in one language. Values are put in as they are and never read as a message; what comes from people goes through `plain` first. */
export type Say = ((key: Key, values?: Values) => string) & { readonly locale: string }

const catalogues: Readonly<Record<string, Partial<Catalogue>>> = { en: english }

const sayers = new Map<string, Say>()

/** The words for a locale as Discord names it ("en-GB", "de"); an unknown one, or none, gets English. */
export function sayIn(locale: string | undefined): Say {
  const wanted = locale ?? 'en'
  const known = sayers.get(wanted)
  if (known) return known
  const language = wanted.split('-')[0] ?? 'en'
  const catalogue = catalogues[wanted] ?? catalogues[language] ?? english
  const speaking = catalogue === english && language !== 'en' ? 'en' : wanted
  const messages = new Map<Key, IntlMessageFormat>()
  /** Messages without values are the same each time. */
  const plain = new Map<Key, string>()
  const say = (key: Key, values?: Values): string => {
    const known = values ? undefined : plain.get(key)
    if (known !== undefined) return known
    let message = messages.get(key)
    if (!message) {
      message = new IntlMessageFormat(catalogue[key] ?? english[key], speaking, undefined, { ignoreTag: true })
      messages.set(key, message)
    }
    const said = String(message.format(values))
    if (!values) plain.set(key, said)
    return said
  }
  const sayer = Object.assign(say, { locale: speaking })
  sayers.set(wanted, sayer)
  return sayer
}
