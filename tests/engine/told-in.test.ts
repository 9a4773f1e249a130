// Texts of packs in another language: which are taken, which are marked as in their own, and words that do not fit their pack.
import { describe, expect, test } from 'vitest'
import { compile, type Program } from '../../src/engine/compile.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import type { Pack, PackWords } from '../../src/engine/pack/pack.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'
import { missingWords, namedSources, readWords } from '../../src/engine/pack/read-words.ts'
import { sayProblem } from '../../src/words/problem-words.ts'
import { sayIn } from '../../src/words/say.ts'
import { lanternPack } from '../check/lantern-pack.ts'
import { smallPack } from './small-pack.ts'

const day = '2026-11-25'
const programOf = (packs: readonly Pack[], family?: string): Program => {
  const result = compile(packs, day, family)
  if (!result.ok) throw new Error('does not compile')
  return result.program
}

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

describe('each text of a pack', () => {
  const read = readPack({
    ...smallPack,
    sources: {
      trade: { kind: 'common-practice', text: 'common practice' },
      office: { kind: 'published', text: 'An office, 2021', seen: 'text' },
      other: { kind: 'published', text: 'Another, 2020', seen: 'text' },
    },
    questions: [
      {
        ...smallPack.questions[0],
        look: 'At the edge.',
        options: [
          { id: 'whole', label: 'Whole', hint: 'No gap.' },
          { id: 'torn', label: 'Torn' },
        ],
      },
      smallPack.questions[1],
    ],
    rules: [
      { ...smallPack.rules[0], source: ['trade', 'office'] },
      { ...smallPack.rules[1], source: ['office', 'other'] },
    ],
    families: [{ ...smallPack.families[0], about: 'About one.' }],
  })
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  const full: PackWords = {
    questions: {
      wrap: {
        ask: 'Ganz?',
        look: 'Am Rand.',
        options: { whole: { label: 'Ja', hint: 'Kein Spalt.' }, torn: { label: 'Nein' } },
      },
      mass: { ask: 'Wie schwer?', options: {} },
    },
    rules: { 'torn-wrap': 'Ein Riss.', light: 'Zu leicht.' },
    families: { one: 'Über eins.' },
    sources: { office: 'Ein Amt, 2021', trade: 'Brauch' },
  }
  const told = (words: PackWords | undefined, language = 'de') => {
    const pack: Pack = { ...read.pack, words: words ? { de: words } : {} }
    const program = inLanguage(programOf([pack], 'one'), language)
    const wrap = program.questions.get('wrap')
    return {
      ask: [wrap?.ask, wrap?.look, program.questions.get('mass')?.ask],
      options:
        wrap?.answer.kind === 'options' ? wrap.answer.options.map(({ id, label, hint }) => [id, label, hint]) : [],
      rules: program.rules.map(one => one.says),
      about: program.family?.about,
      sources: Object.values(program.sources['small'] ?? {}).map(one => one.text),
    }
  }
  test('is the translated one where there is one; of sources only those that are published', () => {
    expect(told(full)).toEqual({
      ask: ['Ganz?', 'Am Rand.', 'Wie schwer?'],
      options: [
        ['whole', 'Ja', 'Kein Spalt.'],
        ['torn', 'Nein', undefined],
      ],
      rules: ['Ein Riss.', 'Zu leicht.'],
      about: 'Über eins.',
      sources: ['common practice', 'Ein Amt, 2021', 'Another, 2020'],
    })
  })
  test('is its own with its language before it where there is none', () => {
    const own = {
      ask: ['[en] Is the wrap whole?', '[en] At the edge.', '[en] How heavy?'],
      options: [
        ['whole', '[en] Whole', '[en] No gap.'],
        ['torn', '[en] Torn', undefined],
      ],
      rules: ['[en] A torn wrap can short.', '[en] Too light.'],
      about: '[en] About one.',
      sources: ['common practice', 'An office, 2021', 'Another, 2020'],
    }
    expect(told(undefined)).toEqual(own)
    expect(told(full, 'fr')).toEqual(own)
    expect(told({ questions: {}, rules: {}, families: {}, sources: {} })).toEqual(own)
    const plain = told(full, 'en')
    expect(plain.ask).toEqual(['Is the wrap whole?', 'At the edge.', 'How heavy?'])
  })
  test('that is missing is named by where it stands; published sources, as far as findings name them first', () => {
    expect(missingWords(read.pack, full)).toEqual([])
    expect(missingWords(read.pack, { questions: {}, rules: {}, families: {}, sources: {} })).toEqual([
      ...['questions.wrap.ask', 'questions.wrap.look', 'questions.wrap.options.whole', 'questions.wrap.options.torn'],
      ...['questions.mass.ask', 'rules.torn-wrap', 'rules.light', 'families.one', 'sources.office'],
    ])
    const hintless = { ...full.questions['wrap'], options: { whole: { label: 'Ja' }, torn: { label: 'Nein' } } }
    expect(missingWords(read.pack, { ...full, questions: { ...full.questions, wrap: hintless } })).toEqual([
      'questions.wrap.options.whole.hint',
    ])
    expect(namedSources(read.pack)).toEqual(['office'])
  })
  test('of a family in a pack of that language stays; one that nobody knows has nothing to tell', () => {
    const german: Pack = { ...read.pack, language: 'de' }
    expect(inLanguage(programOf([german], 'one'), 'de').family?.about).toBe('About one.')
    const silent: Pack = { ...read.pack, families: read.pack.families.map(({ about: _, ...one }) => one) }
    expect(inLanguage(programOf([silent], 'one'), 'de').family).not.toHaveProperty('about')
    // It is told by its own pack, whichever other is in another language too.
    const other = { ...lanternPack, families: [], rules: lanternPack.rules.map(one => ({ ...one, id: `x-${one.id}` })) }
    const apart = lanternPack.questions.map(one => ({ ...one, id: `x-${one.id}` }))
    const two = programOf(
      [
        { ...other, questions: apart, rules: [] },
        { ...read.pack, words: { de: full } },
      ],
      'one',
    )
    expect(inLanguage(two, 'de').family?.about).toBe('Über eins.')
    const general: Pack = { ...read.pack, families: [] }
    expect(inLanguage(programOf([general]), 'de').family).toBeUndefined()
  })
})
