// Turns a key and its values into words of the reader's language: ICU messages, English wherever a language lacks one.
import type { IntlMessageFormat } from 'intl-messageformat'
import type { Catalogue, Key } from './catalogue.ts'
import { german } from './de/german.ts'
import { english } from './en/english.ts'
import { spanish } from './es/spanish.ts'
import { isPseudo, openMessage } from './message.ts'

export type Values = Readonly<Record<string, string | number>>
/** Says a key in one language. Values are put in as they are and never read as a message; what comes from people goes through `plain` first. */
export type Say = ((key: Key, values?: Values) => string) & {
  readonly locale: string
  /** The language that was asked for and that English stands in for, such as "fr". */
  readonly missing?: string
}

const catalogues: Readonly<Record<string, Partial<Catalogue>>> = { en: english, de: german, es: spanish }

/** Every language there is a catalogue for. */
export const languages: readonly string[] = Object.keys(catalogues)

const sayers = new Map<string, Say>()

/** How many sentences of one language are remembered. */
const mostSaid = 2000

/** The words for a locale as Discord names it ("en-GB", "de"); an unknown one, or none, gets English. */
export function sayIn(locale: string | undefined): Say {
  const wanted = locale ?? 'en'
  const known = sayers.get(wanted)
  if (known) return known
  const language = wanted.split('-')[0] ?? 'en'
  const catalogue = catalogues[wanted] ?? catalogues[language] ?? english
  const speaking = catalogue === english && language !== 'en' && !isPseudo(wanted) ? 'en' : wanted
  const messages = new Map<Key, IntlMessageFormat>()
  /** What was said before with the same values, or none: formatting costs more than remembering. */
  const said = new Map<string, string>()
  const say = (key: Key, values?: Values): string => {
    let memo: string = key
    for (const name in values) memo += `\n${values[name]}`
    const known = said.get(memo)
    if (known !== undefined) return known
    let message = messages.get(key)
    if (!message) {
      message = openMessage(catalogue[key] ?? english[key], speaking)
      messages.set(key, message)
    }
    const sentence = String(message.format(values))
    if (said.size >= mostSaid) said.clear()
    said.set(memo, sentence)
    return sentence
  }
  const missing = speaking !== wanted && /^[a-z]{2,3}$/.test(language) ? { missing: language } : {}
  const sayer = Object.assign(say, { locale: speaking, ...missing })
  sayers.set(wanted, sayer)
  return sayer
}
