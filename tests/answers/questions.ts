// Reads a set of questions and counts what the search makes of it.
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import { isSure } from '../../src/answers/confidence.ts'
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
}

/** The questions of a file beside this one; undefined if it is not there. */
export function questionsOf(name: string): AskedQuestion[] | undefined {
  const path = join(import.meta.dirname, name)
  return existsSync(path) ? (parse(readFileSync(path, 'utf8')) as AskedQuestion[]) : undefined
}

export const shippedAnswers = async () => (await loadAnswers(answersIn(shippedRules))).entries
export const openShippedSearch = async (): Promise<AnswerSearch> => openAnswerSearch(await shippedAnswers())

export type Counts = {
  readonly asked: number
  /** Questions that some entry answers, and for how many of them a right one comes first. */
  readonly inScope: number
  readonly rightFirst: number
  /** Right ones first that are also shown, being above the line. */
  readonly rightShown: number
  /** Wrong ones that are shown, of all that were asked. */
  readonly wrongShown: number
}

export function count(search: AnswerSearch, questions: readonly AskedQuestion[]): Counts {
  const counts = { asked: questions.length, inScope: 0, rightFirst: 0, rightShown: 0, wrongShown: 0 }
  for (const { ask, language, right } of questions) {
    const [first] = search.find(ask, language)
    const isRight = first !== undefined && right.includes(first.entry.id)
    const shown = first !== undefined && isSure(first.confidence, first.entry.caution)
    if (right.length > 0) counts.inScope += 1
    if (isRight) counts.rightFirst += 1
    if (isRight && shown) counts.rightShown += 1
    if (!isRight && shown) counts.wrongShown += 1
  }
  return counts
}
