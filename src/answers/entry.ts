// What an answered question is: one entry, in as many languages as somebody has written it.

export const languages = ['en', 'de', 'es'] as const
export type Language = (typeof languages)[number]
export type EntryId = string

/** Longer questions are read up to here, and whoever asks is told so. */
export const longestQuery = 400

/** What stands under an answer beside the line that is always there: the whole caution, or above it that one gets away. */
export const cautions = ['line', 'full', 'emergency'] as const
export type CautionKind = (typeof cautions)[number]

/** Where an answer comes from; published texts are named with their year, or that they bear none. */
export type EntrySource =
  | { readonly kind: 'published' | 'relayed'; readonly text: string; readonly told: Partial<Record<Language, string>> }
  | { readonly kind: 'common-practice' | 'memory' | 'this-bot' }

/** An entry in one language: the body is Markdown, the keywords are ways in which people put the question. */
export type EntryText = { readonly title: string; readonly body: string; readonly keywords: readonly string[] }

export type Entry = {
  readonly id: EntryId
  readonly caution: CautionKind
  /** Whether somebody who asks this has a cell before them, so that checking it is the first thing to offer. */
  readonly inHand: boolean
  /** Whether it says what to do for somebody who is hurt, and so is read before every other. */
  readonly forHurt: boolean
  readonly related: readonly EntryId[]
  readonly sources: readonly EntrySource[]
  /** English is always there. */
  readonly texts: { readonly en: EntryText } & Partial<Record<Language, EntryText>>
}

/** The text of an entry for a reader, and the language it is in: English where theirs is missing. */
export function textFor(entry: Entry, language: Language): EntryText & { readonly language: Language } {
  const own = entry.texts[language]
  return own ? { ...own, language } : { ...entry.texts.en, language: 'en' }
}

/** The language of a locale as Discord names it ("de", "es-419"); English for those we have no answers in. */
export function languageOf(locale: string): Language {
  const base = locale.split('-')[0]
  return languages.find(one => one === base) ?? 'en'
}
