// Says one fact of a picture in the reader's language, for those who cannot see it.
import { IntlMessageFormat } from 'intl-messageformat'
import { altEn } from './alt-en.ts'
import type { Say } from './say.ts'

const messages = new Map<string, IntlMessageFormat>()

/** The sentence for a fact's code; nothing for a code that has none (a test holds that every code has one). */
export function sayAltFact(say: Say, code: string, values: Readonly<Record<string, string | number>> = {}): string {
  const key = `${say.locale} ${code}`
  let message = messages.get(key)
  if (!message) {
    message = new IntlMessageFormat(altEn[code] ?? '', say.locale, undefined, { ignoreTag: true })
    messages.set(key, message)
  }
  return String(message.format(values))
}
