// What letters say of the shipped packs: every question and firing option has a form, in every language, with the same figures.
import { describe, expect, test } from 'vitest'
import { atomsOf } from '../../src/engine/conditions.ts'
import type { Letters, Pack, Question } from '../../src/engine/pack/pack.ts'
import { readLetters } from '../../src/engine/pack/read-letters.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { accusationIn } from '../../src/words/accusing.ts'
import { figuresIn } from '../discord/compare-words.ts'

const packs = (await loadPacks(shippedRules, { cases: false })).packs.map(loaded => loaded.pack)
const all = packs.flatMap(pack => ['en', 'de', 'es'].map(language => [pack.id, language, pack] as const))
const lettersOf = (pack: Pack, language: string): Letters => pack.letters?.[language] ?? { questions: {}, rules: {} }
/** What stays out of letters stays out in every language; it is written once. */
const formOf = (pack: Pack, language: string, question: string) =>
  lettersOf(pack, 'en').questions[question] === false ? false : lettersOf(pack, language).questions[question]

/** The options of a question that a counting rule of the pack can fire on. */
function telling(pack: Pack, question: Question): string[] {
  const counting = pack.rules.filter(rule => rule.kind !== 'no-bearing')
  const atoms = counting.flatMap(rule => atomsOf(rule.when)).filter(atom => atom.question === question.id)
  return [...new Set(atoms.flatMap(atom => (atom.op === 'is' ? atom.options : [])))]
}

describe.each(all)('%s in %s', (_, language, pack) => {
  test('every question, and every option that can speak against a cell, has a form of its own', () => {
    const lacking = pack.questions.flatMap(question => {
      const form = formOf(pack, language, question.id)
      if (form === false) return []
      if (form === undefined) return [question.id]
      const options = question.answer.kind === 'options' ? telling(pack, question) : ['reading']
      return options
        .filter(one => form.is === undefined && form.options[one] === undefined)
        .map(one => `${question.id}.${one}`)
    })
    expect(lacking).toEqual([])
  })

  test('has the rules and options of English, with the same figures', () => {
    const [mine, english] = [lettersOf(pack, language), lettersOf(pack, 'en')]
    expect(Object.keys(mine.rules)).toEqual(Object.keys(english.rules))
    for (const [id, said] of Object.entries(english.rules))
      expect(figuresIn(language, mine.rules[id] ?? ''), id).toEqual(figuresIn('en', said))
    for (const [id, form] of Object.entries(english.questions)) {
      const told = formOf(pack, language, id)
      if (!form || !told) continue
      expect(Object.keys(told.options), id).toEqual(Object.keys(form.options))
      for (const [option, said] of Object.entries(form.options))
        if (said !== false)
          expect(figuresIn(language, String(told.options[option])), `${id}.${option}`).toEqual(figuresIn('en', said))
    }
  })

  test('asks nothing, accuses nobody, and speaks to nobody', () => {
    const { questions, rules } = lettersOf(pack, language)
    const forms = Object.values(questions).flatMap(form =>
      form === false ? [] : [form.is ?? '', ...Object.values(form.options).map(String)],
    )
    for (const said of [...forms, ...Object.values(rules)]) {
      expect(said).not.toMatch(/[?¿]|\b(you|your|du|dein|deine|dir|tu|tus|te)\b/i)
      expect(accusationIn(said), said).toBeUndefined()
    }
  })
})

test('names that the pack does not know are problems', () => {
  const [pack] = packs
  if (!pack) throw new Error('no pack')
  const read = readLetters(
    { questions: { nothing: 'X', legs: { options: { nine: 'X' } } }, rules: { none: 'X' } },
    pack,
  )
  expect(read.ok ? [] : read.problems.map(one => ('name' in one ? one.name : one.code))).toEqual([
    'nothing',
    'none',
    'nine',
  ])
  const typed = readLetters({ questions: { mass: { is: 'X', options: { nine: 'X' } } } }, pack)
  expect(typed.ok ? [] : typed.problems.map(one => one.code)).toEqual(['not-an-option-question'])
})
