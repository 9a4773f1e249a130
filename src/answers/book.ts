// The entries as one book: looked up by id, or by a question, which finds an entry only if the search is sure of it or somebody may be in danger.
import { asksOfHabit, asksWhoTakes, isOfUnnamedPack } from './calm.ts'
import { isSure } from './confidence.ts'
import { namesCells, namesStranger, signsOfDanger, speaksOfOtherThings } from './danger.ts'
import { type Entry, type EntryId, type Language, languages, textFor } from './entry.ts'
import { onlySoundsHurt, tellsOfHurt } from './hurt.ts'
import { type Found, openAnswerSearch } from './search.ts'
import { spokenIn } from './spoken-in.ts'
import { bare, wordsOf } from './terms.ts'
import { vocabularies } from './words/vocabularies.ts'

/**
 * `answer` is missing where no entry answers for sure; `near` are the others that come closest, the best first, but getting away
 * before it where that is the second. `language` is the one that was asked in.
 */
export type LookedUp = { readonly answer?: Entry; readonly near: readonly Entry[]; readonly language: Language }

export type AnswerBook = {
  readonly entries: readonly Entry[]
  entry(id: EntryId): Entry | undefined
  /** Looks a question up in the language that it is in, whatever its writer reads (theirs first, then the server's); an id or a title finds its entry. */
  lookUp(question: string, reads: readonly Language[]): LookedUp
  /** Makes the index of a language in slices, so that nobody who asks waits for it, nor anybody else meanwhile. */
  opening(language: Language): Generator<void>
}

/** Where a cell is named and getting away comes first, it is the answer from here on: far below any other. */
const alarmFrom = 0.2

/** Where it is asked who takes a swollen battery, the first of the others is the answer from here on. */
const takerFrom = 0.5

/** Where a thing is named that nobody here knows, it may be what the question is about: only from here on the first is the answer. */
const strangeFrom = 0.95

const urgent = (entry: Entry): boolean => entry.caution === 'emergency'

export function openBook(entries: readonly Entry[]): AnswerBook {
  const search = openAnswerSearch(entries)
  const byId = new Map(entries.map(entry => [entry.id, entry]))
  const words = (text: string): string => wordsOf(bare(text)).join(' ')
  const byTitle = new Map(
    entries.flatMap(entry =>
      Object.entries(entry.texts).map(
        ([language, { title }]) => [words(title), { entry, language: language as Language }] as const,
      ),
    ),
  )

  function lookUp(question: string, reads: readonly Language[]): LookedUp {
    const [own = 'en'] = reads
    const picked = byId.get(question)
    if (picked) return { answer: picked, near: [], language: own }
    const titled = byTitle.get(words(question))
    if (titled) return { answer: titled.entry, near: [], language: titled.language }
    const spoken = spokenIn(question, reads, one => search.knows(question, one))
    // Whoever writes that somebody is hurt is understood in any language, with few words and those mistyped.
    const hurt = [spoken, ...languages].find(one => tellsOfHurt(question, one))
    const language = hurt ?? spoken
    const found = search.find(question, language)
    const aid = hurt && entries.find(entry => entry.forHurt)
    const answer = aid ?? answerTo(question, language, found)
    const near = found.map(one => one.entry).filter(entry => entry !== answer)
    if (answer) return { answer, near, language }
    // Whoever may have to get away reads that first, where it comes as near as the second.
    const [one, two, ...more] = near
    return { near: one && two && urgent(two) ? [two, one, ...more] : near, language }
  }

  /** Getting away goes before everything else that is sure; a sign of danger needs no sureness at all. */
  function answerTo(question: string, language: Language, found: readonly Found[]): Entry | undefined {
    const names = (word: string) => search.names(word, language)
    const isOther = onlySoundsHurt(question, language)
    const signs = isOther ? [] : signsOfDanger(question, language, names)
    if (signs.length > 0)
      return handingIn(question, signs, language) ?? gettingAway(question, signs, language) ?? found[0]?.entry
    if (isOther || speaksOfOtherThings(question, language, names))
      return found.find(one => one.signs.exact === 1)?.entry
    const [first] = found
    const isCalm = asksOfHabit(question, language)
    if (!isCalm && first && urgent(first.entry) && first.confidence >= alarmFrom && namesCells(question, language))
      return first.entry
    const isStrange = namesStranger(question, language, names)
    const isOurs = ({ entry, confidence, signs }: Found) =>
      confidence >= strangeFrom ||
      signs.exact === 1 ||
      !(isStrange || isOfUnnamedPack(question, language, textFor(entry, language)))
    const sure = found.filter(
      (one, i) =>
        isOurs(one) &&
        (i === 0 ? isSure(one, isCalm ? 'full' : one.entry.caution) : urgent(one.entry) && isSure(one, 'full')),
    )
    return (sure.find(one => urgent(one.entry)) ?? sure[0])?.entry
  }

  /** What is sure to tell who takes a swollen battery, where it is all that is asked; its own text asks first whether it happens now. */
  function handingIn(question: string, signs: readonly string[], language: Language): Entry | undefined {
    if (!asksWhoTakes(question, signs, language)) return undefined
    const [first] = search.find(question, language, entry => !urgent(entry))
    return first && first.confidence >= takerFrom ? first.entry : undefined
  }

  /** Of those that say to get away, the nearest to the question, or to its signs; the most general one where none has a word of them. */
  function gettingAway(question: string, signs: readonly string[], language: Language): Entry | undefined {
    for (const text of [signs.join(' '), question, vocabularies[language].alarm]) {
      const near = search.find(text, language, urgent)[0]
      if (near && near.signs.common > 0) return near.entry
    }
    return undefined
  }

  return { entries, entry: id => byId.get(id), lookUp, opening: search.opening }
}
