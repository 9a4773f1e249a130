// Whether a question tells that nothing is happening now, though a word of it sounds so; and whether it is about a pack that an entry does not name.
import type { EntryText, Language } from './entry.ts'
import { bare, wordsOf } from './terms.ts'
import { calmWords } from './words/calm-words.ts'

const plain = (text: string): string => wordsOf(bare(text)).join(' ')

/** Whether something that is done again and again does harm: a question of wear, unless somebody is in a hurry. */
export function asksOfHabit(question: string, language: Language): boolean {
  const { harm, habit, hurried } = calmWords[language]
  const text = plain(question)
  return harm.test(text) && habit.test(text) && !hurried.test(text)
}

/** Whether it asks who takes a battery of which nothing is told but that it is swollen, by no word of haste. */
export function asksWhoTakes(question: string, signs: readonly string[], language: Language): boolean {
  const { takers, hurried, swollen } = calmWords[language]
  const text = plain(question)
  return takers.test(text) && !hurried.test(text) && signs.every(sign => swollen.test(sign))
}

/** Whether it is about something with several cells in it that the text never names. */
export function isOfUnnamedPack(question: string, language: Language, { title, keywords, body }: EntryText): boolean {
  const asked = calmWords[language].packs.filter(pack => pack.test(plain(question)))
  const says = plain([title, ...keywords, body].join(' '))
  return asked.length > 0 && !asked.some(pack => pack.test(says))
}
