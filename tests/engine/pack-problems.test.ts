// What is wrong with a pack says where it is, what is meant, and what is there instead.
import { describe, expect, test } from 'vitest'
import type { Pack } from '../../src/engine/pack/pack.ts'
import type { PackProblem } from '../../src/engine/pack/problems.ts'
import { findUnknown, readPack } from '../../src/engine/pack/read-pack.ts'
import { changed, packOf, type Raw, smallPack } from './small-pack.ts'

const problems = (raw: unknown, others: readonly Pack[] = []): readonly PackProblem[] => {
  const read = readPack(raw, others)
  return read.ok ? [] : read.problems
}
const small = packOf(smallPack)
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
    const pack = packOf(second, [small])
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
