// What a pack becomes once read: every field where it belongs, defaults where nothing is written, and problems that say where.
import { describe, expect, test } from 'vitest'
import type { Condition } from '../../src/engine/conditions.ts'
import type { Pack } from '../../src/engine/pack/pack.ts'
import type { PackProblem } from '../../src/engine/pack/problems.ts'
import { findUnknown, readPack } from '../../src/engine/pack/read-pack.ts'
import { smallPack } from './small-pack.ts'

type Raw = Record<string, unknown>
const made = (raw: unknown, others: readonly Pack[] = []): Pack => {
  const read = readPack(raw, others, 'abc')
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.pack
}
const problems = (raw: unknown, others: readonly Pack[] = []): readonly PackProblem[] => {
  const read = readPack(raw, others)
  return read.ok ? [] : read.problems
}
const changed = (change: (raw: typeof smallPack & Raw) => void): typeof smallPack & Raw => {
  const copy = structuredClone(smallPack) as typeof smallPack & Raw
  change(copy)
  return copy
}
const small = made(smallPack)

test('what is not written is as usual: in English, not quick, as likely as the others, half as likely not to be told', () => {
  expect(small).toEqual({
    id: 'small',
    version: '1.0.0',
    digest: 'abc',
    written: '2026-11-25',
    title: 'A small pack',
    about: 'For tests.',
    language: 'en',
    uses: [],
    sources: smallPack.sources,
    words: {},
    questions: [
      {
        ...{ id: 'wrap', ask: 'Is the wrap whole?', care: 'look', effort: 1, quick: false, unsureOdds: 0.5 },
        answer: {
          kind: 'options',
          options: [
            { id: 'whole', label: 'Whole', odds: 1, show: {} },
            { id: 'torn', label: 'Torn', odds: 1, show: {} },
          ],
        },
      },
      {
        ...{ id: 'mass', ask: 'How heavy?', care: 'meter', effort: 2, quick: false, unsureOdds: 0.5 },
        answer: { kind: 'reading', quantity: 'mass', unit: 'g', least: 5, most: 200 },
      },
    ],
    rules: [
      {
        ...{ id: 'torn-wrap', pack: 'small', kind: 'hazard', act: 'isolate', says: 'A torn wrap can short.' },
        when: { op: 'is', question: 'wrap', options: ['torn'] },
        source: ['trade'],
      },
      {
        ...{ id: 'light', pack: 'small', kind: 'sign', strength: 'strong', says: 'Too light.', source: ['trade'] },
        when: { op: 'below', question: 'mass', limit: 42 },
      },
    ],
    families: [{ id: 'one', pack: 'small', name: 'One', maker: 'Nobody', given: {}, enough: ['light'], show: {} }],
  })
})

test('what is written stays', () => {
  const option = { id: 'torn', label: 'Torn', hint: 'Look at the edge.', odds: 3, show: { wrap: 'torn' } }
  const question = {
    ...{ id: 'ring', ask: 'Ring?', look: 'At the top.', care: 'unwrap', effort: 3, quick: true, topic: 'label' },
    ...{ needs: ['scale'], toldBy: ['scale'], unsureOdds: 2 },
    picture: { view: 'side', pointAt: 'ring', show: { ring: 'red' } },
    options: [option, { id: 'no', label: 'No' }],
  }
  const scale = { ...smallPack.questions[1], id: 'again', picture: { measuring: 'scale' } }
  const plain = { ...smallPack.questions[0], id: 'plain', picture: { view: 'top' } }
  const rules = [
    { ...smallPack.rules[1], id: 'aged', validUntil: '2027-01-01', families: ['one'] },
    {
      ...{ id: 'not-so', kind: 'must', means: 'salvaged', says: 'No.', source: ['trade'], families: ['one'] },
      when: { ring: 'torn' },
    },
    { id: 'nothing', kind: 'no-bearing', when: { ring: 'torn' }, says: 'No.', source: ['trade'] },
  ]
  const family = {
    ...smallPack.families[0],
    ...{ about: 'About one.', show: { wrap: 'red' }, waives: ['aged'], first: ['ring'] },
    ...{ notWhile: ['not-so'], openEnded: true, given: { wrap: 'whole' } },
  }
  const pack = made({
    ...smallPack,
    language: 'de',
    questions: [...smallPack.questions, question, scale, plain],
    rules: [...smallPack.rules, ...rules],
    families: [family],
  })
  expect(pack.language).toBe('de')
  expect(pack.questions.slice(2)).toEqual([
    {
      ...{ id: 'ring', ask: 'Ring?', look: 'At the top.', care: 'unwrap', effort: 3, quick: true, topic: 'label' },
      ...{ needs: ['scale'], toldBy: ['scale'], unsureOdds: 2 },
      picture: { kind: 'cell', view: 'side', pointAt: 'ring', show: { ring: 'red' } },
      answer: { kind: 'options', options: [option, { id: 'no', label: 'No', odds: 1, show: {} }] },
    },
    expect.objectContaining({ id: 'again', picture: { kind: 'measuring', measuring: 'scale' } }),
    expect.objectContaining({ id: 'plain', picture: { kind: 'cell', view: 'top', show: {} } }),
  ])
  expect(pack.rules.slice(2)).toEqual([
    {
      ...{ id: 'aged', pack: 'small', kind: 'sign', strength: 'strong', says: 'Too light.', source: ['trade'] },
      ...{ families: ['one'], validUntil: '2027-01-01', when: { op: 'below', question: 'mass', limit: 42 } },
    },
    {
      ...{ id: 'not-so', pack: 'small', kind: 'must', means: 'salvaged', says: 'No.', source: ['trade'] },
      ...{ families: ['one'], when: { op: 'is', question: 'ring', options: ['torn'] } },
    },
    {
      ...{ id: 'nothing', pack: 'small', kind: 'no-bearing', says: 'No.', source: ['trade'] },
      when: { op: 'is', question: 'ring', options: ['torn'] },
    },
  ])
  expect(pack.families).toEqual([{ ...family, pack: 'small' }])
})

test.each<[string, object, Condition]>([
  ['one answer', { wrap: 'torn' }, { op: 'is', question: 'wrap', options: ['torn'] }],
  ['one of several', { wrap: ['whole', 'torn'] }, { op: 'is', question: 'wrap', options: ['whole', 'torn'] }],
  ['unless', { wrap: { unless: 'torn' } }, { op: 'unless', question: 'wrap', options: ['torn'] }],
  ['unless several', { wrap: { unless: ['torn'] } }, { op: 'unless', question: 'wrap', options: ['torn'] }],
  ['above', { mass: { above: 60 } }, { op: 'above', question: 'mass', limit: 60 }],
  [
    'several side by side must all hold',
    { wrap: 'torn', mass: { below: 42 } },
    {
      op: 'all',
      of: [
        { op: 'is', question: 'wrap', options: ['torn'] },
        { op: 'below', question: 'mass', limit: 42 },
      ],
    },
  ],
  [
    'any, all and not, one in another',
    { any: [{ not: { wrap: 'torn' } }, { all: [{ mass: { below: 42 } }] }] },
    {
      op: 'any',
      of: [
        { op: 'not', of: { op: 'is', question: 'wrap', options: ['torn'] } },
        { op: 'all', of: [{ op: 'below', question: 'mass', limit: 42 }] },
      ],
    },
  ],
])('a condition: %s', (_, when, read) => {
  expect(made(changed(raw => Object.assign(raw.rules[0]!, { when }))).rules[0]?.when).toEqual(read)
})

describe('a problem says where it is, what is meant, and what is there', () => {
  const rule = (change: Raw) => changed(raw => Object.assign(raw.rules[0]!, change))
  const family = (change: Raw) => changed(raw => Object.assign(raw.families[0]!, change))
  const unknown = (at: string, what: string, name: string, ...known: string[]) => ({
    ...{ code: 'unknown-name', at, what, name, known },
  })
  const inRule = 'rules[0] (torn-wrap)'
  const inFamily = 'families[0] (one)'
  test.each<[string, unknown, readonly object[]]>([
    ['a source', rule({ source: ['trad'] }), [unknown(`${inRule}.source`, 'source', 'trad', 'trade')]],
    ['a family', rule({ families: ['two'] }), [unknown(`${inRule}.families`, 'family', 'two', 'one')]],
    [
      'a question deep in a condition',
      rule({ when: { any: [{ wrap: 'torn' }, { not: { wrp: 'torn' } }] } }),
      [unknown(`${inRule}.when.any[1].not.wrp`, 'question', 'wrp', 'wrap', 'mass')],
    ],
    [
      'an option in a condition',
      rule({ when: { wrap: ['torn', 'tron'] } }),
      [unknown(`${inRule}.when.wrap`, 'option', 'tron', 'whole', 'torn')],
    ],
    [
      'a limit of a question that is not there',
      rule({ when: { mas: { below: 42 } } }),
      [unknown(`${inRule}.when.mas`, 'question', 'mas', 'wrap', 'mass')],
    ],
    [
      'a limit of what has options',
      rule({ when: { wrap: { above: 1 } } }),
      [{ code: 'not-a-reading-question', at: `${inRule}.when.wrap`, name: 'wrap' }],
    ],
    [
      'an option of what is measured',
      rule({ when: { mass: 'torn' } }),
      [{ code: 'not-an-option-question', at: `${inRule}.when.mass`, name: 'mass' }],
    ],
    ...[5, 200].map((limit): [string, unknown, object[]] => [
      `a limit of ${limit}`,
      rule({ when: { mass: { above: limit } } }),
      [{ code: 'limit-out-of-range', at: `${inRule}.when.mass`, name: 'mass', limit, least: 5, most: 200 }],
    ]),
    ['what is given', family({ given: { wrp: 'a' } }), [unknown(inFamily, 'question', 'wrp', 'wrap', 'mass')]],
    ['what it is given as', family({ given: { wrap: 'a' } }), [unknown(inFamily, 'option', 'a', 'whole', 'torn')]],
    [
      'what is measured and given',
      family({ given: { mass: 'a' }, enough: ['torn-wrap'] }),
      [{ code: 'not-an-option-question', at: inFamily, name: 'mass' }],
    ],
    [
      'what is enough',
      family({ enough: ['ligt'] }),
      [unknown(`${inFamily}.enough`, 'rule', 'ligt', 'torn-wrap', 'light')],
    ],
    [
      'what is waived',
      family({ waives: ['ligt'] }),
      [unknown(`${inFamily}.waives`, 'rule', 'ligt', 'torn-wrap', 'light')],
    ],
    [
      'what keeps it open',
      family({ notWhile: ['ligt'] }),
      [unknown(`${inFamily}.notWhile`, 'rule', 'ligt', 'torn-wrap', 'light')],
    ],
    ['what comes first', family({ first: ['wrp'] }), [unknown(`${inFamily}.first`, 'question', 'wrp', 'wrap', 'mass')]],
    [
      'enough that is waived',
      family({ waives: ['light'] }),
      [{ code: 'enough-cannot-be-met', at: inFamily, name: 'light' }],
    ],
    [
      'enough that is given',
      family({ enough: ['torn-wrap'], given: { wrap: 'whole' } }),
      [{ code: 'enough-cannot-be-met', at: inFamily, name: 'torn-wrap' }],
    ],
    [
      'a hazard that is waived',
      family({ waives: ['torn-wrap'] }),
      [{ code: 'hazard-cannot-be-waived', at: inFamily, name: 'torn-wrap' }],
    ],
    [
      'twice the same',
      changed(raw => {
        raw.questions.push(structuredClone(raw.questions[0]!))
        raw.rules.push(structuredClone(raw.rules[0]!))
        raw.families.push(structuredClone(raw.families[0]!))
      }),
      [
        { code: 'duplicate', at: 'questions', what: 'question', name: 'wrap' },
        { code: 'duplicate', at: 'rules', what: 'rule', name: 'torn-wrap' },
        { code: 'duplicate', at: 'families', what: 'family', name: 'one' },
      ],
    ],
    [
      'an option twice',
      changed(raw => raw.questions[0]?.options?.push({ id: 'torn', label: 'Again' })),
      [{ code: 'duplicate', at: 'questions[0].options', what: 'option', name: 'torn' }],
    ],
    ['a key nobody knows', rule({ sayz: 'x' }), [{ code: 'unknown-key', at: 'rules.0', name: 'sayz' }]],
    [
      'a key at the top',
      changed(raw => Object.assign(raw, { rulez: [] })),
      [{ code: 'unknown-key', at: '(top)', name: 'rulez' }],
    ],
  ])('%s', (_, raw, expected) => {
    expect(problems(raw)).toEqual(expected)
  })
  test('of another shape, in words', () => {
    expect(problems(rule({ says: '' }))).toEqual([{ code: 'shape', at: 'rules.0.says', says: expect.any(String) }])
  })
})

describe('a pack that builds on another', () => {
  const second = {
    ...smallPack,
    ...{ pack: 'second', uses: ['small'], questions: [], families: [{ ...smallPack.families[0], id: 'two' }] },
    rules: [{ ...smallPack.rules[0], id: 'torn-too' }],
  }
  test('knows its questions and rules, and keeps its own alone', () => {
    const pack = made(second, [small])
    expect(pack).toMatchObject({ uses: ['small'], questions: [], rules: [{ id: 'torn-too' }] })
  })
  test('says again nothing that is there', () => {
    expect(problems({ ...smallPack, pack: 'second', uses: ['small'] }, [small])).toEqual([
      { code: 'duplicate', at: 'questions', what: 'question', name: 'wrap' },
      { code: 'duplicate', at: 'questions', what: 'question', name: 'mass' },
      { code: 'duplicate', at: 'rules', what: 'rule', name: 'torn-wrap' },
      { code: 'duplicate', at: 'rules', what: 'rule', name: 'light' },
      { code: 'duplicate', at: 'families', what: 'family', name: 'one' },
    ])
  })
  test('builds on one that is there', () => {
    expect(problems({ ...smallPack, pack: 'second', uses: ['smal'] }, [small])).toEqual([
      { code: 'missing-pack', at: 'uses', name: 'smal', known: ['small'] },
    ])
  })
})

test('a family is enough with rules of its own alone', () => {
  const two = { ...smallPack.families[0]!, id: 'two', enough: ['torn-wrap'] }
  const raw = changed(pack => {
    pack.families.push(two)
    Object.assign(pack.rules[1]!, { families: ['two'] })
  })
  expect(problems(raw)).toEqual([
    { code: 'unknown-name', at: 'families[0] (one).enough', what: 'rule', name: 'light', known: ['torn-wrap'] },
  ])
  Object.assign(raw.rules[1]!, { families: ['one', 'two'] })
  expect(problems(raw)).toEqual([])
})

test('names that are known make no problem', () => {
  const found: PackProblem[] = []
  findUnknown('at', 'rule', ['a', 'b'], ['b', 'a'], found)
  expect(found).toEqual([])
})
