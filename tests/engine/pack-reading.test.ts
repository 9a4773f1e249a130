// Packs with mistakes: each is named where it is, in one sentence that says what to change, and the pack is not used.
import { describe, expect, test } from 'vitest'
import { compile } from '../../src/engine/compile.ts'
import type { PackProblem } from '../../src/engine/pack/problems.ts'
import { readLetters } from '../../src/engine/pack/read-letters.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'
import { joinWords, missingWords, readWords } from '../../src/engine/pack/read-words.ts'
import { parseYaml } from '../../src/packs/read-yaml.ts'
import { sayProblem } from '../../src/words/problem-words.ts'
import { sayIn } from '../../src/words/say.ts'

const good = {
  pack: 'small',
  version: '1.0.0',
  written: '2026-11-25',
  title: 'A small pack',
  about: 'For tests.',
  sources: { trade: { kind: 'common-practice', text: 'common practice' } },
  questions: [
    {
      id: 'wrap',
      ask: 'Is the wrap whole?',
      care: 'look',
      effort: 1,
      options: [
        { id: 'whole', label: 'Whole' },
        { id: 'torn', label: 'Torn' },
      ],
    },
    { id: 'mass', ask: 'How heavy?', care: 'meter', effort: 2, reading: { quantity: 'mass', least: 5, most: 200 } },
  ],
  rules: [
    {
      id: 'torn-wrap',
      kind: 'hazard',
      act: 'isolate',
      when: { wrap: 'torn' },
      says: 'A torn wrap can short.',
      source: ['trade'],
    },
    {
      id: 'light',
      kind: 'sign',
      strength: 'strong',
      when: { mass: { below: 42 } },
      says: 'Too light.',
      source: ['trade'],
    },
  ],
  families: [{ id: 'one', name: 'One', maker: 'Nobody', given: {}, enough: ['light'] }],
}
type Raw = Record<string, unknown>
const changed = (change: (raw: typeof good & Raw) => void): unknown => {
  const copy = structuredClone(good)
  change(copy as typeof good & Raw)
  return copy
}
const sentences = (raw: unknown): string[] => {
  const result = readPack(raw)
  return result.ok ? [] : result.problems.map(problem => sayProblem(sayIn('en'), problem))
}

test('the pack without a mistake is read', () => {
  expect(sentences(good)).toEqual([])
})

describe('a mistake is named', () => {
  const cases: [string, (raw: typeof good & Raw) => void, RegExp][] = [
    [
      'a misspelt key',
      raw => Object.assign(raw.rules[0] as Raw, { strenght: 'weak' }),
      /rules\.0.*“strenght”.*spelling/,
    ],
    ['a missing key', raw => delete (raw.rules[0] as Raw)['says'], /rules\.0\.says/],
    ['a duplicate rule', raw => raw.rules.push(raw.rules[0] as never), /rule “torn-wrap” is there twice/],
    ['a duplicate question', raw => raw.questions.push(raw.questions[0] as never), /question “wrap” is there twice/],
    [
      'a duplicate option',
      raw => (raw.questions[0] as { options: unknown[] }).options.push({ id: 'torn', label: 'Torn' }),
      /option “torn” is there twice/,
    ],
    [
      'an unknown question',
      raw => Object.assign(raw.rules[0] as Raw, { when: { wrp: 'torn' } }),
      /no question “wrp”; did you mean “wrap”\?/,
    ],
    [
      'an unknown option',
      raw => Object.assign(raw.rules[0] as Raw, { when: { wrap: 'tron' } }),
      /no option “tron”; did you mean “torn”\?/,
    ],
    [
      'an unknown source',
      raw => Object.assign(raw.rules[0] as Raw, { source: ['trad'] }),
      /no source “trad”; did you mean “trade”\?/,
    ],
    [
      'an option asked of a reading',
      raw => Object.assign(raw.rules[0] as Raw, { when: { mass: 'torn' } }),
      /“mass” is answered with a reading/,
    ],
    [
      'a limit on an option question',
      raw => Object.assign(raw.rules[0] as Raw, { when: { wrap: { below: 3 } } }),
      /“wrap” is answered with one of its options/,
    ],
    [
      'a limit no reading can pass',
      raw => Object.assign(raw.rules[1] as Raw, { when: { mass: { below: 4 } } }),
      /limit 4 for “mass” must lie between its least \(5\) and its most \(200\)/,
    ],
    [
      'a limit that is not a number',
      raw => Object.assign(raw.rules[1] as Raw, { when: { mass: { below: Number.NaN } } }),
      /rules\.1\.when/,
    ],
    [
      'a rule listed as enough that is not there',
      raw => Object.assign(raw.families[0] as Raw, { enough: ['ligt'] }),
      /no rule “ligt”; did you mean “light”\?/,
    ],
    [
      'a question that comes first and is not there',
      raw => Object.assign(raw.families[0] as Raw, { first: ['wrp'] }),
      /no question “wrp”; did you mean “wrap”\?/,
    ],
    [
      'a rule of no bearing as enough',
      raw => {
        const { strength: _, ...rest } = raw.rules[1] as Raw
        raw.rules[1] = { ...rest, kind: 'no-bearing' } as never
      },
      /“light”/,
    ],
    [
      'as enough a rule whose questions are all given',
      raw => Object.assign(raw.families[0] as Raw, { enough: ['torn-wrap'], given: { wrap: 'whole' } }),
      /“torn-wrap”/,
    ],
    [
      'a hazard that is waived though no other reads the same',
      raw => Object.assign(raw.families[0] as Raw, { waives: ['torn-wrap'] }),
      /“torn-wrap”/,
    ],
    [
      'a rule that is enough and waived',
      raw => Object.assign(raw.families[0] as Raw, { waives: ['light'] }),
      /“light”/,
    ],
    [
      'a waived rule that is not there',
      raw => Object.assign(raw.families[0] as Raw, { waives: ['ligt'] }),
      /no rule “ligt”; did you mean “light”\?/,
    ],
    [
      'a rule while which nothing is found, and that is not there',
      raw => Object.assign(raw.families[0] as Raw, { notWhile: ['ligt'] }),
      /no rule “ligt”; did you mean “light”\?/,
    ],
    ['an empty condition', raw => Object.assign(raw.rules[0] as Raw, { when: {} }), /empty condition says nothing/],
    [
      'a question with both options and a reading',
      raw => Object.assign(raw.questions[0] as Raw, { reading: { quantity: 'mass', least: 0, most: 1 } }),
      /either options or a reading/,
    ],
    ['an unknown base pack', raw => Object.assign(raw, { uses: ['any-cel'] }), /pack “any-cel” is not here/],
    ['no pack at all', raw => Object.keys(raw).map(key => delete raw[key]), /pack/],
  ]
  test.each(cases)('%s', (_, change, sentence) => {
    const found = sentences(changed(change))
    expect(found.join('\n')).toMatch(sentence)
    for (const one of found) expect(one).toMatch(/[.?]$/)
  })
})

test('a hazard is waived where another one still reads the same question, and a sign anyhow', () => {
  const doubly = changed(raw => {
    raw.rules.push({ ...raw.rules[0], id: 'torn-too' } as never)
    Object.assign(raw.families[0] as Raw, { waives: ['torn-wrap'] })
  })
  expect(sentences(doubly)).toEqual([])
  const sign = changed(raw => Object.assign(raw.families[0] as Raw, { waives: ['light'], enough: ['torn-wrap'] }))
  expect(sentences(sign)).toEqual([])
})

describe('words and letters of a pack', () => {
  const pack = (() => {
    const made = readPack(good)
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

describe('YAML that must not get in', () => {
  const codes = (text: string) => parseYaml(text).problems.map(problem => problem.code)
  test('an alias bomb', () => {
    const levels = Array.from({ length: 12 }, (_, i) => `a${i + 1}: &a${i + 1} [${Array(9).fill(`*a${i}`).join(', ')}]`)
    expect(codes(`a0: &a0 [x]\n${levels.join('\n')}`)).toEqual(['yaml'])
  })
  test('a key written twice', () => expect(codes('pack: one\npack: two')).toEqual(['yaml']))
  test('a tag that would run code', () => expect(codes('a: !!js/function "function () {}"')).not.toEqual([]))
  test('a half-written file, with its line', () => {
    expect(sayProblem(sayIn('en'), parseYaml('a: 1\nb: [1, 2').problems[0] as PackProblem)).toMatch(
      /^line 2: this is not valid YAML/,
    )
  })
})

test('a pack too tangled to judge exactly is refused, naming rules and questions', () => {
  const size = 26
  const options = Array.from({ length: 5 }, (_, i) => ({ id: `o${i}`, label: `${i}` }))
  const questions = Array.from({ length: size }, (_, i) => ({
    id: `q${i}`,
    ask: 'x',
    care: 'look',
    effort: 1,
    options,
  }))
  const rules = Array.from({ length: 70 }, (_, r) => ({
    id: `r${r}`,
    kind: 'sign',
    strength: 'weak',
    when: {
      [`q${(r * 7) % size}`]: `o${r % 5}`,
      [`q${(r * 11 + 3) % size}`]: [`o${(r + 1) % 5}`, `o${(r + 3) % 5}`],
      [`q${(r * 5 + 9) % size}`]: `o${(r * 3) % 5}`,
    },
    says: 'x',
    source: ['trade'],
  }))
  const read = readPack({ ...good, questions, rules, families: [] })
  if (!read.ok) throw new Error('must be read')
  const compiled = compile([read.pack], '2026-11-25')
  expect(compiled.ok).toBe(false)
  if (compiled.ok) return
  expect(sayProblem(sayIn('en'), compiled.problems[0] as PackProblem)).toMatch(
    /hang together too tightly.*r0, r1.*q0, q1/s,
  )
}, 120_000)

test('a measured question held against more figures than can be told apart is refused, and one fewer is not', () => {
  const against = (figures: number) => {
    const read = readPack(
      changed(raw => {
        raw.rules.push(
          ...Array.from({ length: figures - 1 }, (_, i) => ({
            id: `light-${i}`,
            kind: 'sign',
            strength: 'weak',
            when: { mass: { below: 50 + i } },
            says: 'Too light.',
            source: ['trade'],
          })),
        )
      }),
    )
    if (!read.ok) throw new Error(JSON.stringify(read.problems))
    return compile([read.pack], '2026-11-25', 'one')
  }
  expect(against(88).ok).toBe(true)
  const many = against(90)
  expect(many.ok ? [] : many.problems.map(problem => sayProblem(sayIn('en'), problem))).toEqual([
    'rules: the rules tell 4,276 kinds of answers to “mass” apart, and 4,096 is the limit. Hold it against fewer different figures.',
  ])
})
