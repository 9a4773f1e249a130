// Whether a question tells of a cell that may burn, and whether it is about quite other things: told by its words alone.
import type { Language } from './entry.ts'
import { isSlipOf } from './slips.ts'
import { bare, wordsOf } from './terms.ts'
import { dangerWords, noises } from './words/danger-words.ts'
import { otherThings } from './words/other-things.ts'
import { vocabularies } from './words/vocabularies.ts'

/** Whether the entries name a word, as it stands, in a title or a way to ask. */
export type Names = (word: string) => boolean

/** Nothing in it is a cell, and something in it is a thing that people ask about elsewhere, or a thing that no entry names. */
export function speaksOfOtherThings(question: string, language: Language, names: Names): boolean {
  const text = plain(question)
  return isElsewhere(text, language, names) || strangersIn(text, language, names).everyday
}

/** Whether it names a thing, as after an article, that no entry names and none of our lists has; never where a cell is named. */
export const namesStranger = (question: string, language: Language, names: Names): boolean =>
  strangersIn(plain(question), language, names).led

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
export function signsOfDanger(question: string, language: Language, names: Names): readonly string[] {
  const { danger, signedThings } = vocabularies[language]
  const text = plain(question)
  const ofThing = namesCells(question, language) || namesDevice(text, language)
  const signs = ofThing ? [...danger, ...dangerWords[language].ofThings] : danger
  const told = signs.flatMap(sign => wordsAround(text, sign.exec(text)))
  if (told.length === 0 || ofThing) return told
  const isSign = (word: string) => danger.some(sign => sign.test(word))
  const isOurs = (word: string) => signedThings.test(word) || isSign(word)
  const strange = strangersIn(text, language, word => isOurs(word) || names(word))
  return isElsewhere(text, language, isOurs) || strange.everyday || strange.led ? [] : told
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

/** Whether something that holds or charges cells is named, slips and all, in no other world. */
const namesDevice = (text: string, language: Language): boolean =>
  !vocabularies[language].otherWorlds.test(text) && text.split(' ').some(word => isDevice(word, language))

function isDevice(word: string, language: Language): boolean {
  const { devices, beside, others } = listsOf[language]
  if (devices.has(word) || devices.has(word.replace(diminutive, '$1'))) return true
  if (beside.has(word) || singles(word).some(one => others.has(one))) return false
  const isCompound =
    dangerWords[language].compounds &&
    (endsAs(word, devices, language) || [...devices].some(one => one.length > 4 && word.startsWith(one)))
  return isCompound || [...devices].some(one => one.length >= leastForSlip && isSlipOf(word, one))
}

/** In Spanish, a small one of its kind. */
const diminutive = /it([oa]s?)$/

/** A shorter word is too often another one. */
const leastForSlip = 7

/** Whether something in it is in none of our lists and no entry's words: a thing of every day, or what stands after an article or the like. */
function strangersIn(
  text: string,
  language: Language,
  isOurs: Names,
): { readonly everyday: boolean; readonly led: boolean } {
  if (hasCells(text, language)) return { everyday: false, led: false }
  const { small, leads, beside, others } = listsOf[language]
  const isNear = (word = '') =>
    beside.has(word) || isDevice(word, language) || vocabularies[language].signedThings.test(word)
  const isKnown = (word: string) =>
    word.length < 3 || /\d/.test(word) || small.has(word) || noises.test(word) || isNear(word) || isOurs(word)
  const isVerb = (lead: string, word: string) => dangerWords[language].verbs.test(`${lead} ${word}`)
  const words = text.split(' ').map((word, i, all) => ({ word, lead: all[i - 1] ?? '', next: all[i + 1] }))
  const strangers = words.filter(({ word }) => !isKnown(word))
  return {
    everyday: strangers.some(
      ({ word }) => singles(word).some(one => others.has(one)) || endsAs(word, others, language),
    ),
    // Before one of ours it only says which.
    led: strangers.some(({ word, lead, next }) => leads.has(lead) && !isVerb(lead, word) && !isNear(next)),
  }
}

/** Whether a word is put together with one of these at its end, which tells what it is. */
const endsAs = (word: string, among: ReadonlySet<string>, language: Language): boolean =>
  dangerWords[language].compounds && [...among].some(one => one.length > 4 && word.endsWith(one))

const singles = (word: string): string[] => [
  word,
  ...['s', 'es', 'n', 'en', 'e'].flatMap(end => (word.endsWith(end) ? [word.slice(0, -end.length)] : [])),
]

const setOf = (list: string) => new Set(list.split(' '))
const openLists = (language: Language) => {
  const { devices, beside, leads } = dangerWords[language]
  return {
    devices: setOf(devices),
    beside: setOf(beside),
    leads: setOf(leads),
    others: setOf(otherThings[language]),
    small: setOf(vocabularies[language].small),
  }
}
const listsOf = { en: openLists('en'), de: openLists('de'), es: openLists('es') }
