// The pseudo-language: English with accents on every letter, a third longer and in brackets, so that what is hard-coded stands out.
//
// A person whose locale is `qps-ploc` is spoken to in it, once `openPseudo` was called; CELLWARY_PSEUDO does so, for tests only. The
// name is that of Windows (https://learn.microsoft.com/windows/win32/intl/using-pseudo-locales-for-localization-testing); CLDR's own
// `en-XA` would make it a kind of English, whose packs need no translation.
import type { Letters, Pack, PackWords, Question } from '../engine/pack/pack.ts'
import { type Parsed, speakPseudo } from './message.ts'

export const pseudoLocale = 'qps-ploc'
/** As packs name languages. */
const language = 'qps'

const plain = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ'
const accented = [...'áƀçðéƒǵĥíĵķłɱñóþɋŕšţúṽŵẋýžÁƁÇÐÉƑǴĤÍĴĶŁṀÑÓÞɊŔŠŢÚṼŴẊÝŽ']
const vowels = 'aeiouAEIOU'
const [opening, closing] = ['⟦', '⟧']

/** Gives every letter an accent and every vowel twice, which makes English about a third longer; the rest stays as it is. */
export function disguiseText(text: string): string {
  return [...text]
    .map(letter => (accented[plain.indexOf(letter)] ?? letter).repeat(vowels.includes(letter) ? 2 : 1))
    .join('')
}

const bracketed = (text: string): string => `${opening}${disguiseText(text)}${closing}`

/** What stands outside of placeholders, also inside the branches of a choice; arguments and keys of choices stay. */
function disguise(message: Parsed): Parsed {
  return message.map(element => {
    if ('options' in element) {
      const told = Object.entries(element.options).map(([key, one]) => [key, { ...one, value: disguise(one.value) }])
      return { ...element, options: Object.fromEntries(told) }
    }
    return isLiteral(element) ? { ...element, value: disguiseText(element.value) } : element
  })
}

type Element = Parsed[number]
const literal = 0
const isLiteral = (element: Element): element is Extract<Element, { type: typeof literal }> => element.type === literal
const mark = (value: string): Element => ({ type: literal, value })

/** Switches the pseudo-language on in this process. */
export function openPseudo(): void {
  speakPseudo(pseudoLocale, message => [mark(opening), ...disguise(message), mark(closing)])
}

/** The pack with words in the pseudo-language, too. Names of makers and families stay: they are names. */
export function inPseudo(pack: Pack): Pack {
  const words: PackWords = {
    questions: Object.fromEntries(pack.questions.map(question => [question.id, wordsOf(question)])),
    rules: Object.fromEntries(pack.rules.map(rule => [rule.id, bracketed(rule.says)])),
    families: Object.fromEntries(
      pack.families.flatMap(({ id, about }) => (about === undefined ? [] : [[id, bracketed(about)]])),
    ),
    sources: Object.fromEntries(
      Object.entries(pack.sources).map(([id, { text }]) => [id, bracketed(text.split(/[:;] /)[0] ?? '')]),
    ),
  }
  const { en } = pack.letters ?? {}
  return {
    ...pack,
    words: { ...pack.words, [language]: words },
    ...(en && { letters: { ...pack.letters, [language]: toldIn(en) } }),
  }
}

function toldIn({ questions, rules }: Letters): Letters {
  const each = <From, To>(all: Readonly<Record<string, From>>, to: (one: From) => To) =>
    Object.fromEntries(Object.entries(all).map(([id, one]) => [id, to(one)]))
  return {
    rules: each(rules, bracketed),
    questions: each(
      questions,
      told =>
        told && {
          ...(told.is !== undefined && { is: bracketed(told.is) }),
          options: each(told.options, one => one && bracketed(one)),
        },
    ),
  }
}

function wordsOf({ ask, look, answer }: Question): PackWords['questions'][string] {
  const options = answer.kind === 'options' ? answer.options : []
  return {
    ask: bracketed(ask),
    ...(look !== undefined && { look: bracketed(look) }),
    options: Object.fromEntries(
      options.map(({ id, label, hint }) => [
        id,
        { label: bracketed(label), ...(hint !== undefined && { hint: bracketed(hint) }) },
      ]),
    ),
  }
}
