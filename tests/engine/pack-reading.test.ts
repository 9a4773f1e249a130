// Packs with mistakes: each is named where it is, in one sentence that says what to change, and the pack is not used.
import { describe, expect, test } from 'vitest'
import { compile } from '../../src/engine/compile.ts'
import type { PackProblem } from '../../src/engine/pack/problems.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'
import { parseYaml } from '../../src/packs/read-yaml.ts'
import { sayProblem } from '../../src/words/problem-words.ts'
import { sayIn } from '../../src/words/say.ts'
import { smallPack as good } from './small-pack.ts'

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
    ['a duplicate rule', raw => raw.rules.push(raw.rules[0] as never), /rule “torn-wrap” appears twice/],
    ['a duplicate question', raw => raw.questions.push(raw.questions[0] as never), /question “wrap” appears twice/],
    [
      'a duplicate option',
      raw => (raw.questions[0] as { options: unknown[] }).options.push({ id: 'torn', label: 'Torn' }),
      /option “torn” appears twice/,
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
