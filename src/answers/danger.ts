// Whether a question tells of a cell that may burn, and whether it is about quite other things: told by its words alone.
import type { Language } from './entry.ts'
import { bare, wordsOf } from './terms.ts'
import { vocabularies } from './words/vocabularies.ts'

/** Whether the entries name a word, as it stands, in a title or a way to ask. */
export type Names = (word: string) => boolean

/** Nothing in it is a cell, and something in it is a thing that people ask about elsewhere, or a thing that no entry names. */
export function speaksOfOtherThings(question: string, language: Language, names: Names): boolean {
  return isElsewhere(plain(question), language, names)
}

/** Whether a cell, or what holds or charges one, is named. */
export function namesCells(question: string, language: Language): boolean {
  const text = plain(question)
  return vocabularies[language].holders.test(text) || hasCells(text, language)
}

/**
 * The words that are a sign of danger, unless it is one of something else that smokes, swells or leaks. Too many alarms cost a glance, a missing one
 * may cost more: where a cell is named, or what holds or charges one, every sign counts, and a search that is unsure must not be in
 * the way.
 */
export function signsOfDanger(question: string, language: Language): readonly string[] {
  const { danger, holders, signedThings } = vocabularies[language]
  const text = plain(question)
  const isSign = (part: string) => danger.some(sign => sign.test(part))
  const told = danger.flatMap(sign => wordsAround(text, sign.exec(text)))
  if (told.length === 0) return []
  return holders.test(text) || !isElsewhere(text, language, word => signedThings.test(word) || isSign(word)) ? told : []
}

/** The whole words that a match touches. */
function wordsAround(text: string, match: RegExpExecArray | null): string[] {
  if (!match) return []
  const start = text.lastIndexOf(' ', match.index) + 1
  const end = text.indexOf(' ', match.index + match[0].length)
  return text.slice(start, end < 0 ? undefined : end).split(' ')
}

const plain = (question: string): string => wordsOf(bare(question)).join(' ')

function isElsewhere(text: string, language: Language, isOurs: Names): boolean {
  const { otherThings, places, otherWorlds, subject, doer, small } = vocabularies[language]
  if (hasCells(text, language)) return false
  const smallWords = small.split(' ')
  const things = [subject, doer].flatMap(pattern => pattern.exec(text)?.[1] ?? [])
  const isOther = things.some(thing => !smallWords.includes(thing) && !isOurs(thing))
  return otherWorlds.test(text) || otherThings.test(text.replace(places, ' ')) || isOther
}

/** Words of ours, less those that mean something else in the world that the question is from. */
function hasCells(text: string, language: Language): boolean {
  const { ours, double, otherWorlds } = vocabularies[language]
  const cells = new Set(ours.split(' '))
  if (otherWorlds.test(text)) for (const word of double.split(' ')) cells.delete(word)
  return text.split(' ').some(word => cells.has(word))
}
