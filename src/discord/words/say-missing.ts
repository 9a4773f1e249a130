// The one line for a person whose language there is no catalogue for: that English stands in for it, and which others there are.
import type { Say } from './say.ts'

/** Undefined for everybody whose language is spoken. */
export function sayMissing(say: Say): string | undefined {
  if (say.missing === undefined) return undefined
  const name = new Intl.DisplayNames(say.locale, { type: 'language' }).of(say.missing)
  return say('language.missing', { language: name ?? say.missing })
}
