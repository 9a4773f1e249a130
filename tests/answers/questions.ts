// Reads a set of questions and counts what the search makes of it.
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import { type AnswerBook, openBook } from '../../src/answers/book.ts'
import type { EntryId, Language } from '../../src/answers/entry.ts'
import { type AnswerSearch, openAnswerSearch } from '../../src/answers/search.ts'
import { answersIn, loadAnswers } from '../../src/packs/load-answers.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'

/** A question in somebody's words; `right` lists every entry that answers it, and is empty if none does. */
export type AskedQuestion = {
  readonly ask: string
  readonly language: Language
  readonly right: readonly EntryId[]
  /** Written after the entries' keywords, and so not among them: only these can tell how sure the search may be. */
  readonly fresh?: boolean
  /** Somebody may be in danger: an entry that says to get away has to be the answer. */
  readonly emergency?: boolean
}

/** The questions of a file beside this one; undefined if it is not there. */
export function questionsOf(name: string): AskedQuestion[] | undefined {
  const path = join(import.meta.dirname, name)
  return existsSync(path) ? (parse(readFileSync(path, 'utf8')) as AskedQuestion[]) : undefined
}

export const shippedAnswers = async () => (await loadAnswers(answersIn(shippedRules))).entries
export const openShippedBook = async (): Promise<AnswerBook> => openBook(await shippedAnswers())
export const openShippedSearch = async (): Promise<AnswerSearch> => openAnswerSearch(await shippedAnswers())

export type Counts = {
  readonly asked: number
  /** Questions that some entry answers, and for how many of them a right one comes first. */
  readonly inScope: number
  readonly rightFirst: number
  /** Right ones first that are also shown as the answer. */
  readonly rightShown: number
  /** Wrong ones that are shown, of all that were asked, and how many of those where no entry answers. */
  readonly wrongShown: number
  readonly offTopicShown: number
  /** Questions of somebody in danger, and for how many of them getting away is the answer. */
  readonly emergencies: number
  readonly emergenciesFirst: number
}

/** What somebody reads who asks in their own language. */
export function count(book: AnswerBook, questions: readonly AskedQuestion[]): Counts {
  const judged = questions.map(({ ask, language, right, emergency = false }) => {
    const { answer, near } = book.lookUp(ask, [language])
    const first = answer ?? near[0]
    return {
      inScope: right.length > 0,
      isRight: first !== undefined && right.includes(first.id),
      shown: answer !== undefined,
      emergency,
      saysToGetAway: answer?.caution === 'emergency',
    }
  })
  const times = (is: (one: (typeof judged)[number]) => boolean) => judged.filter(is).length
  return {
    asked: questions.length,
    inScope: times(one => one.inScope),
    rightFirst: times(one => one.isRight),
    rightShown: times(one => one.isRight && one.shown),
    wrongShown: times(one => !one.isRight && one.shown),
    offTopicShown: times(one => !one.inScope && one.shown),
    emergencies: times(one => one.emergency),
    emergenciesFirst: times(one => one.emergency && one.saysToGetAway),
  }
}
