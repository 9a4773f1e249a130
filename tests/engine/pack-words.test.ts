// Words and letters of a pack in another language: held against the pack, with what is missing named where it stands.
import { describe, expect, test } from 'vitest'
import type { PackProblem } from '../../src/engine/pack/problems.ts'
import { readLetters } from '../../src/engine/pack/read-letters.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'
import { joinWords, missingWords, readWords } from '../../src/engine/pack/read-words.ts'
import { smallPack } from './small-pack.ts'

describe('words and letters of a pack', () => {
  const pack = (() => {
    const made = readPack(smallPack)
    if (!made.ok) throw new Error('the good pack is not read')
    return made.pack
  })()
  const problemsOf = (reading: { ok: boolean; problems?: readonly PackProblem[] }) =>
    (reading.problems ?? []).map(({ code, at }) => `${code} ${at}`)
  const words = (raw: unknown) => {
    const reading = readWords(raw, pack)
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
    return reading.words
  }
  const german = {
    questions: {
      wrap: { ask: 'Ganz?', options: { whole: 'Ja', torn: { label: 'Nein', hint: 'Risse.' } } },
      mass: { ask: 'Wie schwer?' },
    },
    rules: { 'torn-wrap': 'Ein Riss kann kurzschließen.', light: 'Zu leicht.' },
  }

  test('are read as they stand, and nothing is missing then', () => {
    expect(words(german).questions['wrap']).toEqual({
      ask: 'Ganz?',
      options: { whole: { label: 'Ja' }, torn: { label: 'Nein', hint: 'Risse.' } },
    })
    expect(missingWords(pack, words(german))).toEqual([])
  })
  test('what has no words yet is named where it stands, in the order of the pack', () => {
    expect(missingWords(pack, words({}))).toEqual([
      ...['questions.wrap.ask', 'questions.wrap.options.whole', 'questions.wrap.options.torn'],
      ...['questions.mass.ask', 'rules.torn-wrap', 'rules.light'],
    ])
    const one = { ...german, questions: { ...german.questions, wrap: { ask: 'Ganz?', options: { whole: 'Ja' } } } }
    expect(missingWords(pack, words(one))).toEqual(['questions.wrap.options.torn'])
  })
  test.each([
    [{ questions: { wrp: { ask: 'x' } } }, 'unknown-name questions'],
    [{ questions: { wrap: { options: { tron: 'x' } } } }, 'unknown-name questions.wrap.options'],
    [{ questions: { mass: { options: { torn: 'x' } } } }, 'not-an-option-question questions.mass.options'],
    [{ rules: { ligt: 'x' } }, 'unknown-name rules'],
    [{ families: { two: 'x' } }, 'unknown-name families'],
    [{ sources: { trad: 'x' } }, 'unknown-name sources'],
  ])('%j fits nothing', (raw, problem) => {
    expect(problemsOf(readWords(raw, pack))).toEqual([problem])
  })
  test.each([
    [{ questions: { wrp: 'x' } }, 'unknown-name questions'],
    [{ questions: { wrap: { options: { tron: 'x' } } } }, 'unknown-name questions.wrap.options'],
    [{ questions: { mass: { options: { torn: 'x' } } } }, 'not-an-option-question questions.mass.options'],
    [{ rules: { ligt: 'x' } }, 'unknown-name rules'],
  ])('nor do letters with %j', (raw, problem) => {
    expect(problemsOf(readLetters(raw, pack))).toEqual([problem])
  })
  test('nor does what has another shape', () => {
    for (const raw of ['nonsense', { rules: 7 }, { questions: { wrap: 7 } }, { no: {} }]) {
      expect(problemsOf(readLetters(raw, pack)), JSON.stringify(raw)).not.toEqual([])
      expect(problemsOf(readWords(raw, pack)), JSON.stringify(raw)).not.toEqual([])
    }
    // A file that is empty has nothing wrong.
    expect(readLetters(null, pack).ok && readWords(null, pack).ok).toBe(true)
  })
  test('letters name a thing by its name, or leave it out', () => {
    const reading = readLetters({ questions: { wrap: 'the wrap', mass: false }, rules: { light: 'x' } }, pack)
    expect(reading).toEqual({
      ok: true,
      letters: { questions: { wrap: { is: 'the wrap', options: {} }, mass: false }, rules: { light: 'x' } },
    })
  })
  test('two files of a language together have each text once', () => {
    const { rules, ...questions } = german
    const joined = joinWords(words(questions), words({ rules }))
    expect(joined).toEqual({ ok: true, words: words(german) })
    expect(joinWords(undefined, words(german))).toEqual({ ok: true, words: words(german) })
    expect(problemsOf(joinWords(words(german), words({ rules })))).toEqual(['duplicate rules', 'duplicate rules'])
  })
})
