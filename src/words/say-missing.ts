// The one line for a person whose language there is no catalogue for: that English stands in for it, and which others there are.
import { languages, type Say } from './say.ts'

/** Undefined for everybody whose language is spoken. */
export function sayMissing(say: Say): string | undefined {
  if (say.missing === undefined) return undefined
  const names = new Intl.DisplayNames(say.locale, { type: 'language' })
  const nameOf = (language: string): string => names.of(language) ?? language
  const others = new Intl.ListFormat(say.locale).format(languages.filter(one => one !== 'en').map(nameOf))
  return say('language.missing', { language: nameOf(say.missing), others })
}
