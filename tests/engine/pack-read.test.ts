// What a pack becomes once read: every field where it belongs, defaults where nothing is written, and problems that say where.
import { expect, test } from 'vitest'
import type { Condition } from '../../src/engine/conditions.ts'
import { changed, packOf, smallPack } from './small-pack.ts'

const small = packOf(smallPack)

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
  const pack = packOf({
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
  expect(packOf(changed(raw => Object.assign(raw.rules[0]!, { when }))).rules[0]?.when).toEqual(read)
})
