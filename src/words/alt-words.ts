// Says one fact of a picture in the reader's language, for those who cannot see it.
import type { IntlMessageFormat } from 'intl-messageformat'
import { altDe } from './de/alt.ts'
import { altEn } from './en/alt.ts'
import { altEs } from './es/alt.ts'
import { openMessage } from './message.ts'
import type { Say } from './say.ts'

const catalogues: Readonly<Record<string, Readonly<Record<string, string>>>> = { en: altEn, de: altDe, es: altEs }

const messages = new Map<string, IntlMessageFormat>()

/**
 * The sentence for a fact's code, in English where the language lacks it; nothing for a code that has none (a test holds that
 * every code has one).
 */
export function sayAltFact(say: Say, code: string, values: Readonly<Record<string, string | number>> = {}): string {
  const key = `${say.locale} ${code}`
  let message = messages.get(key)
  if (!message) {
    const words = catalogues[say.locale.split('-')[0] ?? 'en']
    message = openMessage(words?.[code] ?? altEn[code] ?? '', say.locale)
    messages.set(key, message)
  }
  return String(message.format(values))
}
