// Packs from strangers: ids that JavaScript has a meaning for, links that hide where they lead, characters that nobody sees.
import { describe, expect, test } from 'vitest'
import { packSchema, packWordsSchema } from '../../src/engine/pack/schema.ts'

const problemsOf = (raw: unknown): string => JSON.stringify(packSchema.safeParse(raw).error?.issues ?? [])

const question = (id: string, ask: string) => ({
  id,
  ask,
  care: 'look',
  effort: 1,
  answer: {
    kind: 'options',
    options: [
      { id: 'yes', label: 'Yes' },
      { id: 'no', label: 'No' },
    ],
  },
})
const packWith = (one: object) => ({
  pack: 'mine',
  version: '1.0.0',
  language: 'en',
  questions: [one],
  rules: [],
  sources: {},
})

test('a question that is called constructor is refused in words', () => {
  expect(problemsOf(packWith(question('constructor', 'Does it?')))).toMatch(/choose another id/)
  expect(problemsOf(packWith(question('construction', 'Does it?')))).not.toMatch(/choose another id/)
})

describe.each([
  ['a link that hides where it leads', 'Look [here](https://example.org/x) first', /write a link as it is/],
  ['the same with a space', 'Look [here] (https://example.org/x) first', /write a link as it is/],
  ['a character that turns the text around', 'Is it \u202egnorw?', /nobody sees/],
  ['an isolate', 'Is it \u2067x\u2069?', /nobody sees/],
  ['a space of no width', 'Is\u200b it?', /nobody sees/],
])('%s', (_, text, sentence) => {
  test('in a question', () => expect(problemsOf(packWith(question('legs', text)))).toMatch(sentence))
  test('in another language', () => {
    const read = packWordsSchema.safeParse({ questions: { legs: { ask: text } } })
    expect(JSON.stringify(read.error?.issues ?? [])).toMatch(sentence)
  })
})

test('accents, umlauts and signs are text like any other', () => {
  expect(problemsOf(packWith(question('legs', '¿Cuántas patas? Größe ≥ 18 mm (3,6 V) — ok')))).not.toMatch(
    /nobody sees|write a link/,
  )
})
