// What facts, known fakes and figures may hold: to the last that fits, and not one more.
import { describe, expect, test } from 'vitest'
import { aboutSentence } from '../../src/families/derive/sentences.ts'
import { factsSchema, figuresSchema, knownFakeSchema } from '../../src/families/facts/facts-schema.ts'
import { bare, traits } from './bare-family.ts'
import { anyCell } from './base.ts'

const many = <T>(count: number, one: T) => Object.fromEntries(Array.from({ length: count }, (_, i) => [`f${i}`, one]))
const list = (count: number) => Array.from({ length: count }, (_, i) => `o${i}`)
const fits = (facts: object) => factsSchema.safeParse({ ...bare, ...facts }).success
const against = (count: number) =>
  Array.from({ length: count }, () => ({ options: ['a'], tells: 'weak', from: 'moderator' }))

describe('a known fake', () => {
  const fake = { id: 'seen', title: 'Seen', since: '2026-W45', look: { legs: ['four'] }, says: 'x' }
  const isOne = (change: object) => knownFakeSchema.safeParse({ ...fake, ...change }).success
  test.each<[object, object]>([
    [{ look: many(1, ['a']) }, { look: {} }],
    [{ look: many(8, ['a']) }, { look: many(9, ['a']) }],
    [{ look: { legs: list(20) } }, { look: { legs: list(21) } }],
    [{ copies: list(8) }, { copies: list(9) }],
    [{ since: '2026-W53' }, { since: '2026-W54' }],
    [{ since: '2026-W01' }, { since: '2026-W00' }],
    [{ title: 'x'.repeat(60) }, { title: 'x'.repeat(61) }],
    [{ says: { en: 'x'.repeat(300) } }, { says: { en: 'x'.repeat(301) } }],
    [{ id: 'a-b-c' }, { id: 'A b' }],
  ])('may have %j, and not %j', (good, bad) => {
    expect([isOne(good), isOne(bad)]).toEqual([true, false])
  })
  test('is seen until it is retired, and copies nothing where nothing is said', () => {
    expect(knownFakeSchema.parse(fake)).toEqual({ ...fake, copies: [], state: 'seen' })
  })
})

test.each<[object, object]>([
  [{ traits: many(25, {}) }, { traits: many(26, {}) }],
  [{ traits: { legs: { made: list(5) } } }, { traits: { legs: { made: list(6) } } }],
  [{ traits: { legs: { against: against(4) } } }, { traits: { legs: { against: against(5) } } }],
  [{ show: many(16, 1) }, { show: many(17, 1) }],
  [{ alsoEnough: list(16) }, { alsoEnough: list(17) }],
])('facts may have %j, and not %j', (good, bad) => {
  expect([fits(good), fits(bad)]).toEqual([true, false])
})

test.each([
  ['capacity', { typical: 50 }, { typical: 49 }],
  ['capacity', { typical: 50_000 }, { typical: 50_001 }],
  ['currents', [{ amps: 0.1, cutOff: 40 }], [{ amps: 0.09, cutOff: 40 }]],
  ['currents', [{ amps: 500, cutOff: 120 }], [{ amps: 500, cutOff: 121 }]],
  ['currents', [{ amps: 5, cutOff: 'none' }], []],
  ['mass', { middle: 5, cells: 1, from: 'sheet' }, { middle: 5, cells: 0, from: 'sheet' }],
  ['mass', { middle: 200, cells: 50, from: 'references' }, { middle: 201, cells: 50, from: 'references' }],
  ['size', { diameter: 60, length: 120 }, { diameter: 61, length: 120 }],
  ['resistance', { usual: 0.5 }, { usual: 0.4 }],
])('of %s may be said %j, and not %j', (figure, good, bad) => {
  expect([good, bad].map(one => figuresSchema.safeParse({ [figure]: one }).success)).toEqual([true, false])
})

test('what is known of how it is made is cut to three hundred letters, and not before', () => {
  const name = 'f'
  const said = (length: number) => {
    // “f: ” before it and a full stop behind it.
    const facts = { ...bare, traits: traits({ [name]: { made: ['x'.repeat(length - name.length - 3)] } }) }
    return aboutSentence(anyCell, facts).en
  }
  expect(said(300)).toBe(`f: ${'x'.repeat(296)}.`)
  expect(said(301)).toBe(`f: ${'x'.repeat(296)}…`)
})
