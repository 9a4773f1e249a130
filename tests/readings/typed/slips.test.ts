// Slips of the hand in a typed figure: a digit too many or too few is asked about, groups of thousands are read only where they are some.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type FormatName, formatNames } from '../../../src/ground/formats.ts'
import type { MeasuredQuantity, Quantity } from '../../../src/ground/quantities.ts'
import { readTyped } from '../../../src/readings/read-typed.ts'
import { readNumber } from '../../../src/readings/typed/read-number.ts'
import { tenTimesOff } from '../../../src/readings/typed/ten-times.ts'

test.each<[string, MeasuredQuantity, number | null]>([
  ['42 V', 'voltage', 4.2],
  ['37.1 V', 'voltage', 3.71],
  ['99 V', 'voltage', null],
  ['1.2 g', 'mass', 12],
  ['800 g', 'mass', 80],
  ['9 kg', 'mass', null],
  ['183 mm', 'diameter', 18.3],
])('a slip by ten is asked about: "%s" as %s, meant %s', (text, quantity, meant) => {
  expect(readTyped(text, quantity, 'en-US')).toMatchObject({ refusal: { code: 'out-of-range', meant } })
})

describe('a digit too many or too few, for the format', () => {
  test.each<[Quantity, number, FormatName, number | null]>([
    ['claimed-capacity', 26_000, '18650', 2600],
    // Next to no 18650 has 990 mAh.
    ['claimed-capacity', 9900, '18650', null],
    ['claimed-capacity', 30_000, '18650', 3000],
    ['claimed-capacity', 300, '18650', 3000],
    ['claimed-capacity', 3000, '18650', null],
    ['claimed-capacity', 4200, '18650', null],
    // Ten times less is no better: nothing to ask.
    ['claimed-capacity', 99_000, '18650', null],
    ['claimed-capacity', 9900, '32700', null],
    ['capacity', 643, '18650', null],
    ['claimed-current', 200, '18650', 20],
    ['claimed-current', 30, '18650', null],
    ['mass', 451, '18650', 45.1],
    ['mass', 4.51, '18650', 45.1],
    ['mass', 32, '18650', null],
    ['length', 650, '18650', 65],
    ['length', 6.5, '18650', 65],
    ['length', 40, '18650', null],
    ['claimed-current', 0.4, '18650', 4],
    ['claimed-current', 0.6, '18650', null],
    ['diameter', 183, '18650', 18.3],
    ['diameter', 1.83, '18650', 18.3],
    ['voltage', 42, '18650', null],
  ])('%s of %d in %s: %s', (quantity, value, format, other) => {
    expect(tenTimesOff(quantity, value, format)).toBe(other)
  })

  test('what is asked about is never what was typed, and never corrected further than by one place', () => {
    const quantity = fc.constantFrom<Quantity>('claimed-capacity', 'claimed-current', 'mass', 'length', 'diameter')
    fc.assert(
      fc.property(
        quantity,
        fc.double({ min: 0.1, max: 1e6, noNaN: true }),
        fc.constantFrom(...formatNames),
        (q, v, f) => {
          const other = tenTimesOff(q, v, f)
          if (other === null) return
          expect([0.1, 10].some(times => Math.abs(other / v / times - 1) < 1e-9)).toBe(true)
          expect(tenTimesOff(q, other, f)).toBeNull()
        },
      ),
    )
  })
})

test.each<[string, readonly number[] | null]>([
  ['1,234', [1.234, 1234]],
  ['1,234,567', [1_234_567]],
  ['1.234.567', [1_234_567]],
  ["1'234.5", [1234.5]],
  ['1 234,5', [1234.5]],
  ['12,34,567', [1_234_567]],
  ['1,23,456', [123_456]],
  ['1,2345', [1.2345]],
  // Groups that are none: too short, too long, two kinds of mark, or a zero in front.
  ['1,23,45', null],
  ['1,2345,678', null],
  ['1234,567,890', null],
  ["1,234'567", null],
  ['0,123,456', null],
  ['1 23', null],
])('groups of thousands: "%s"', (text, values) => {
  const read = readNumber(text, 'de')
  expect(read.ok ? read.values : null).toEqual(values)
})
