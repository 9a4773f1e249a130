// Whether a question tells of a cell that may burn: told by its words alone, since a search that is unsure must not be in the way.
import type { Language } from './entry.ts'
import { bare, wordsOf } from './terms.ts'
import { vocabularies } from './words/vocabularies.ts'

/**
 * A sign of danger, unless it is one of something else that smokes, swells or leaks. Too many alarms cost a glance, a missing one
 * may cost more: where a cell is named, every sign counts.
 */
export function tellsOfDanger(question: string, language: Language): boolean {
  const { danger, otherThings, ours } = vocabularies[language]
  const text = bare(question)
  if (!danger.some(sign => sign.test(text))) return false
  const cells = new Set(ours.split(' '))
  return wordsOf(text).some(word => cells.has(word)) || !otherThings.test(text)
}
