// The entries as one book: looked up by id, or by a question, which finds an entry only if the search is sure of it.
import { isSure } from './confidence.ts'
import type { Entry, EntryId, Language } from './entry.ts'
import { openAnswerSearch } from './search.ts'
import { spokenIn } from './spoken-in.ts'
import { bare, wordsOf } from './terms.ts'

/** `answer` is missing where no entry answers for sure; `near` are the others that come closest, the best first, but getting away before it where that is the second. */
export type LookedUp = { readonly answer?: Entry; readonly near: readonly Entry[] }

export type AnswerBook = {
  readonly entries: readonly Entry[]
  entry(id: EntryId): Entry | undefined
  /** Looks a question up in the one of these languages that it is in, as far as that can be told; an id or a title finds its entry. */
  lookUp(question: string, languages: readonly Language[]): LookedUp
}

export function openBook(entries: readonly Entry[]): AnswerBook {
  const search = openAnswerSearch(entries)
  const byId = new Map(entries.map(entry => [entry.id, entry]))
  const words = (text: string): string => wordsOf(bare(text)).join(' ')
  const byTitle = new Map(
    entries.flatMap(entry => Object.values(entry.texts).map(({ title }) => [words(title), entry] as const)),
  )
  return {
    entries,
    entry: id => byId.get(id),
    lookUp(question, languages) {
      const picked = byId.get(question) ?? byTitle.get(words(question))
      if (picked) return { answer: picked, near: [] }
      const lists = spokenIn(question, [...new Set(languages)]).map(language => search.find(question, language))
      // Where its small words do not tell, it is in the language that knows most of it.
      const strange = (list: (typeof lists)[number]) => list[0]?.signs.strange ?? 1
      const [found = []] = lists.toSorted((a, b) => strange(a) - strange(b))
      const [first, ...others] = found
      if (first && isSure(first.confidence, first.entry.caution))
        return { answer: first.entry, near: others.map(one => one.entry) }
      const near = found.map(one => one.entry)
      // Whoever may have to get away reads that first, where it comes as near as the second.
      const [one, two, ...more] = near
      return { near: one && two?.caution === 'emergency' ? [two, one, ...more] : near }
    },
  }
}
