// Whether a question tells of a cell that may burn, and whether it is about quite other things: told by its words alone.
import type { Language } from './entry.ts'
import { bare, wordsOf } from './terms.ts'
import { vocabularies } from './words/vocabularies.ts'

/** Nothing in it is a cell, and something in it is a thing that people ask about elsewhere. */
export function speaksOfOtherThings(question: string, language: Language): boolean {
  const { otherThings, ours } = vocabularies[language]
  const text = bare(question)
  const cells = new Set(ours.split(' '))
  return otherThings.test(text) && !wordsOf(text).some(word => cells.has(word))
}

/**
 * A sign of danger, unless it is one of something else that smokes, swells or leaks. Too many alarms cost a glance, a missing one
 * may cost more: where a cell is named, every sign counts, and a search that is unsure must not be in the way.
 */
export function tellsOfDanger(question: string, language: Language): boolean {
  const text = bare(question)
  return vocabularies[language].danger.some(sign => sign.test(text)) && !speaksOfOtherThings(question, language)
}
