// The figures of a batch as people type them: read with their units, or refused with the place of the first that cannot be.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { BatchQuantity } from '../../../src/readings/batch/lot-spread.ts'
import { readBatch } from '../../../src/readings/batch/read-batch.ts'

const read = (text: string, quantity: BatchQuantity = 'mass', locale = 'en-US') => readBatch(text, quantity, locale)

test.each<[string, readonly number[], number, string?, BatchQuantity?]>([
  ['43.1, 44.9, 46.8 g', [43.1, 44.9, 46.8], 0.1],
  ['43.1,44.9,46.8', [43.1, 44.9, 46.8], 0.1],
  ['43,1 44,9 46,8', [43.1, 44.9, 46.8], 0.1, 'de'],
  ['43,1; 44,9; 46,8 g', [43.1, 44.9, 46.8], 0.1, 'de'],
  ['43,1, 44,9, 46,8', [43.1, 44.9, 46.8], 0.1, 'es'],
  ['45,1\n45,3\n45,25', [45.1, 45.3, 45.25], 0.01, 'de'],
  ['45, 46, 47', [45, 46, 47], 1],
  ['45,46,47,48', [45, 46, 47, 48], 1],
  ['45.1g 45.2g', [45.1, 45.2], 0.1],
  ['2500 2510 2490 mAh', [2500, 2510, 2490], 1, 'en-US', 'capacity'],
  ['2.5 Ah 2.51 Ah', [2500, 2510], 10, 'en-US', 'capacity'],
])('"%s"', (text, values, resolution, locale = 'en-US', quantity = 'mass') => {
  expect(read(text, quantity, locale)).toEqual({ ok: true, values, resolution: expect.closeTo(resolution, 6) })
})

describe('refusals', () => {
  test.each<[string, object]>([
    ['', { code: 'too-few-values', count: 0 }],
    ['45.1 g', { code: 'too-few-values', count: 1 }],
    ['45 '.repeat(101), { code: 'too-many-values', count: 101 }],
    ['1,2,3', { code: 'commas', typed: '1,2,3' }],
    ['45,46,470', { code: 'commas' }],
    ['43,1,44,9,46,8', { code: 'commas', typed: '43,1,44,9,46,8' }],
    ['45 g 46 V', { code: 'value', place: 2, typed: '46 V', refusal: { code: 'unit-does-not-fit' } }],
    ['45 g 46 blorp', { code: 'value', place: 2, refusal: { code: 'unknown-unit' } }],
    ['45.1 460 45.2', { code: 'ten-times', place: 2, value: 460, other: 46, unit: 'g' }],
    ['45.1 45.2 4.53 g', { code: 'ten-times', place: 3, value: 4.53, other: 45.3 }],
  ])('"%s"', (text, refusal) => {
    expect(read(text)).toMatchObject({ ok: false, refusal })
  })
})

test('a hundred figures are taken, and a unit behind the last one holds for all', () => {
  expect(read(`${'45.1 '.repeat(99)}45.1 g`)).toMatchObject({ ok: true, values: { length: 100 } })
  expect(read('1.6 1.62 oz')).toMatchObject({ ok: true, values: [expect.closeTo(45.36, 2), expect.closeTo(45.93, 2)] })
})

test('masses written by any display are read back, whatever stands between them', () => {
  const masses = fc.array(fc.integer({ min: 400, max: 490 }), { minLength: 2, maxLength: 30 })
  fc.assert(
    fc.property(masses, fc.constantFrom('; ', ' ', '\n', ', '), fc.constantFrom('.', ','), (tenths, between, mark) => {
      const text = tenths.map(tenth => (tenth / 10).toFixed(1).replace('.', mark)).join(between)
      expect(read(text, 'mass', mark === ',' ? 'de' : 'en')).toMatchObject({
        ok: true,
        values: tenths.map(tenth => tenth / 10),
      })
    }),
  )
})
