// Whether a question tells that somebody is hurt, as by a cell: by two words together, slips of the hand and all, mostly without one for a cell.
import { namesCells } from './danger.ts'
import type { Language } from './entry.ts'
import { isSlipOf } from './slips.ts'
import { bare, wordsOf } from './terms.ts'
import { type HurtWords, hurtWords } from './words/hurt-words.ts'

export function tellsOfHurt(question: string, language: Language): boolean {
  const words = hurtWords[language]
  const text = words.together.reduce((said, [many, one]) => said.replace(many, one), wordsOf(bare(question)).join(' '))
  if (onlySoundsHurt(question, language)) return false
  const asked = text.split(' ')
  const { has } = listsOf(words)
  const places = (list: string) => asked.flatMap((word, i) => (has(list, word) ? [i] : []))
  if (places(words.withCells).length > 0 && namesCells(question, language)) return true
  return words.pairs.some(([left, right]) => {
    const here = places(left)
    if (here.length === 0) return false
    const there = places(right)
    // One word is not counted on both sides.
    return there.length > 0 && new Set([...here, ...there]).size > 1
  })
}

/** Whether it sounds as if somebody were hurt, and is about the sun, sport or the like; never where a cell is named. */
export const onlySoundsHurt = (question: string, language: Language): boolean =>
  hurtWords[language].never.test(wordsOf(bare(question)).join(' ')) && !namesCells(question, language)

type Lists = { has(list: string, typed: string): boolean }
const kept = new Map<HurtWords, Lists>()

function listsOf(words: HurtWords): Lists {
  const known = kept.get(words)
  if (known) return known
  const noSlips = new Set(words.noSlips.split(' '))
  const split = new Map([...words.pairs.flat(), words.withCells].map(list => [list, list.split(' ')]))
  const lists: Lists = {
    has: (list, typed) => {
      const known = split.get(list) ?? []
      return known.includes(typed) || (!noSlips.has(typed) && known.some(word => isSlipOf(typed, word)))
    },
  }
  kept.set(words, lists)
  return lists
}
