// Packs in other languages: only texts change, what is missing is shown in the pack's own language and says so.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { screenOf } from '../../src/check/screen.ts'
import { start, step } from '../../src/check/step.ts'
import type { Answer, Answers } from '../../src/engine/answers.ts'
import { compile, type Program } from '../../src/engine/compile.ts'
import { explain } from '../../src/engine/explain.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import { judge } from '../../src/engine/judge.ts'
import type { Pack, PackWords } from '../../src/engine/pack/pack.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'
import { missingWords, readWords } from '../../src/engine/pack/read-words.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { sayProblem } from '../../src/words/problem-words.ts'
import { sayIn } from '../../src/words/say.ts'
import { lanternPack } from '../check/lantern-pack.ts'

const now = Date.UTC(2026, 10, 25)
const day = '2026-11-25'
const programOf = (packs: readonly Pack[], family?: string): Program => {
  const result = compile(packs, day, family)
  if (!result.ok) throw new Error('does not compile')
  return result.program
}
const shipped = (await loadPacks(shippedRules)).packs.map(loaded => loaded.pack)
const programs = [undefined, ...shipped.flatMap(pack => pack.families.map(one => one.id))].map(family =>
  programOf(shipped, family),
)

const explained = (program: Program, answers: Answers) => {
  const { changes, ...rest } = explain(program, answers, judge(program, answers))
  return { ...rest, changes: changes() }
}

/** Everything a text could hide behind, taken out: what is left is what was judged. */
const judged = (program: Program, answers: Answers): string =>
  JSON.stringify([judge(program, answers), explained(program, answers)], (key, value) =>
    ['says', 'ask', 'look', 'label', 'hint', 'about'].includes(key) ? undefined : value,
  )

const answersOf = (program: Program, picks: readonly number[]): Answers => {
  const all = [...program.states]
  return Object.fromEntries(
    picks.flatMap(pick => {
      const [question, states] = all[pick % all.length] ?? ['', []]
      const answer: Answer | undefined = states[pick % Math.max(1, states.length)]?.answers[0]
      return answer ? [[question, answer] as const] : []
    }),
  )
}

test.each(['de', 'es-419', 'fr'])('in %s everything is judged, explained and asked as before', locale => {
  fc.assert(
    fc.property(
      fc.constantFrom(...programs),
      fc.array(fc.nat({ max: 100_000 }), { maxLength: 25 }),
      (program, picks) => {
        const told = inLanguage(program, locale)
        const answers = answersOf(program, picks)
        expect(judged(told, answers)).toBe(judged(program, answers))
        expect(told.outlook(answers).reachable).toEqual(program.outlook(answers).reachable)
        expect([...told.questions.keys()]).toEqual([...program.questions.keys()])
      },
    ),
    { numRuns: 150 },
  )
})

test('a walk through a check asks the same questions in every language', () => {
  const walk = (program: Program): string[] => {
    const who = { id: 'c', holder: 'h', server: null, family: program.family?.id ?? null }
    const begun = start(program, { ...who, mode: 'full', cells: 1 }, now)
    if (!begun.ok) throw new Error('not begun')
    const asked: string[] = []
    let { check } = begun
    for (let i = 0; i < 30 && screenOf(program, check).kind === 'question'; i++) {
      const question = 'question' in check.phase ? check.phase.question : ''
      asked.push(question)
      const stepped = step(program, check, { is: 'answer', question, answer: { kind: 'cant-tell' } }, now)
      if (!stepped.ok) break
      check = stepped.check
    }
    return asked
  }
  for (const program of programs) expect(walk(inLanguage(program, 'de'))).toEqual(walk(program))
})

describe('texts', () => {
  const words: PackWords = {
    questions: { [lanternPack.questions[0]?.id ?? '']: { ask: 'Auf Deutsch?', options: {} } },
    rules: { [lanternPack.rules[0]?.id ?? '']: 'Auf Deutsch.' },
    families: {},
    sources: { office: 'Ein Amt, 2021' },
  }
  const published: Pack['sources'][string] = { kind: 'published', text: 'An office, 2021: leave it.', seen: 'text' }
  const pack: Pack = {
    ...lanternPack,
    sources: { ...lanternPack.sources, office: published },
    rules: lanternPack.rules.map((rule, i) => (i === 0 ? { ...rule, source: ['office', 's'] } : rule)),
  }
  const program = programOf([{ ...pack, words: { de: words } }], 'lamp')
  const [question] = lanternPack.questions

  test('are the translated ones where there are some, and the own ones, marked, where there are none', () => {
    const told = inLanguage(program, 'de-AT')
    const first = told.questions.get(question?.id ?? '')
    expect(first?.ask).toBe('Auf Deutsch?')
    if (first?.answer.kind !== 'options') throw new Error('no options')
    for (const option of first.answer.options) expect(option.label).toMatch(/^\[en\] /)
    expect(told.rules[0]?.says).toBe('Auf Deutsch.')
    expect(told.rules[1]?.says).toBe(`[en] ${program.rules[1]?.says}`)
    for (const rule of told.enough) expect(told.rules).toContain(rule)
  })

  test('name a published source as that language does, and are incomplete where a reason would name it in another', () => {
    expect(inLanguage(program, 'de').sources[pack.id]?.['office']?.text).toBe('Ein Amt, 2021')
    expect(inLanguage(program, 'es').sources[pack.id]?.['office']).toEqual(published)
    expect(missingWords(pack, words)).not.toContain('sources.office')
    expect(missingWords(pack, { ...words, sources: {} })).toContain('sources.office')
    expect(missingWords(lanternPack, { ...words, sources: {} })).not.toContain('sources.s')
  })

  test('are left alone in the pack’s own language, and the program is the same one every time', () => {
    expect(inLanguage(program, 'en-GB')).toBe(program)
    expect(inLanguage(program, 'de')).toBe(inLanguage(program, 'de'))
    const german = programOf([{ ...lanternPack, language: 'de' }], 'lamp')
    expect(inLanguage(german, 'de')).toBe(german)
    expect(inLanguage(german, 'en').rules[0]?.says).toMatch(/^\[de\] /)
  })
})

describe('words that do not fit their pack', () => {
  const sentences = (raw: unknown): string[] => {
    const read = readWords(raw, lanternPack)
    return read.ok ? [] : read.problems.map(problem => sayProblem(sayIn('en'), problem))
  }
  const [question] = lanternPack.questions
  const known = question?.id ?? ''

  test.each([
    ['a question that is not there', { questions: { nowhere: { ask: 'x' } } }, /no question “nowhere”/],
    ['an option that is not there', { questions: { [known]: { options: { nope: 'x' } } } }, /no option “nope”/],
    ['a rule that is not there', { rules: { nope: 'x' } }, /no rule “nope”/],
    ['a family that is not there', { families: { nope: 'x' } }, /no family “nope”/],
    ['a source that is not there', { sources: { nope: 'x' } }, /no source “nope”/],
    ['a key that is not there', { question: {} }, /nothing here is called “question”/],
    ['a label that is too long', { questions: { [known]: { options: { a: 'x'.repeat(81) } } } }, /80/],
    ['no text', { rules: { [lanternPack.rules[0]?.id ?? '']: '' } }, /./],
  ])('%s', (_, raw, sentence) => {
    expect(sentences(raw).join('\n')).toMatch(sentence)
  })

  test('an empty file is every text missing, not a problem', () => {
    const read = readWords(null, lanternPack)
    if (!read.ok) throw new Error('a problem')
    const missing = missingWords(lanternPack, read.words)
    expect(missing).toContain(`questions.${known}.ask`)
    expect(missing).toContain(`rules.${lanternPack.rules[0]?.id}`)
  })

  test('a pack says which language it is written in, and its language must be one', () => {
    const read = readPack({ pack: 'p', version: '1.0.0', written: day, title: 't', about: 'a', language: 'German' })
    expect(read.ok ? '' : read.problems.map(one => sayProblem(sayIn('en'), one)).join()).toMatch(/such as de/)
  })
})
