// What people type is read as they meant it, or asked back: units, commas, missing units, and nonsense.
import fc from 'fast-check'
import Quantities from 'js-quantities'
import { describe, expect, test } from 'vitest'
import { type MeasuredQuantity, measuredQuantities, measuredUnit } from '../../../src/ground/quantities.ts'
import { readTyped } from '../../../src/readings/read-typed.ts'
import { plausible } from '../../../src/readings/typed/plausible.ts'
import { type Unit, units, unitsOf } from '../../../src/readings/typed/units.ts'

const value = (text: string, quantity: MeasuredQuantity, locale = 'en-US') => {
  const read = readTyped(text, quantity, locale)
  return read.ok ? read.value : read.refusal.code
}
const asked = (text: string, quantity: MeasuredQuantity, locale = 'en-US') => {
  const read = readTyped(text, quantity, locale)
  if (read.ok || read.refusal.code !== 'ambiguous') return read
  return read.refusal.readings.map(({ value, number, writtenUnit }) => [value, `${number} ${writtenUnit}`])
}

describe('units as they are typed', () => {
  test.each<[string, MeasuredQuantity, number]>([
    ['3.2Ah', 'capacity', 3200],
    ['3200 mAh', 'capacity', 3200],
    ['3200MAH', 'capacity', 3200],
    ['3,2 Ah', 'capacity', 3200],
    ['3200 milliampere-hours', 'capacity', 3200],
    ['3,2 Amperestunden', 'capacity', 3200],
    ['3,2 ampères-heures', 'capacity', 3200],
    ['44,7 g', 'mass', 44.7],
    ['~44.7g', 'mass', 44.7],
    ['ca. 44,7 Gramm', 'mass', 44.7],
    ['0.0447 kg', 'mass', 44.7],
    ['1.6 oz', 'mass', 45.359237],
    ['0.018 ohm', 'ac-resistance', 18],
    ['18mΩ', 'ac-resistance', 18],
    ['18 mΩ', 'ac-resistance', 18],
    ['18 milliohm', 'dc-resistance', 18],
    ['18 miliohmios', 'dc-resistance', 18],
    ['0R018', 'dc-resistance', 18],
    ['R = 18 mohm', 'dc-resistance', 18],
    ['0,65 in', 'diameter', 16.51],
    ['0.72"', 'diameter', 18.288],
    ['Ø 18.3 mm', 'diameter', 18.3],
    ['1,83 cm', 'diameter', 18.3],
    ['65.2', 'length', 65.2],
    ['2.56 Zoll', 'length', 65.024],
    ['4180 mV', 'voltage', 4.18],
    ['4,18', 'voltage', 4.18],
    ['0', 'voltage', 0],
    ['500 mA', 'current', 0.5],
    ['72F', 'temperature', 22.2222222222],
    ['22 °C', 'temperature', 22],
    ['22 ºC', 'temperature', 22],
    ['22 ℃', 'temperature', 22],
    ['295.15 K', 'temperature', 22],
    ['1h30', 'rest-time', 1.5],
    ['1 h 30 min', 'rest-time', 1.5],
    ['1:30:00', 'rest-time', 1.5],
    ['90 minutos', 'rest-time', 1.5],
    ['2 Tage', 'rest-time', 48],
    ['700 Wh/dm³', 'energy-per-volume', 700],
    ['265 Wh/kg', 'energy-per-mass', 265],
    ['1,8e1 mΩ', 'ac-resistance', 18],
  ])('%s as %s is %d', (text, quantity, expected) => {
    expect(value(text, quantity)).toBe(expected)
    expect(value(text, quantity, 'de')).toBe(expected)
  })
})

describe('numbers of several places', () => {
  test.each<[string, string, MeasuredQuantity, number]>([
    ['1.234,5 mAh', 'de', 'capacity', 1234.5],
    ['1,234.5 mAh', 'en-US', 'capacity', 1234.5],
    ["1'234.5 mAh", 'de-CH', 'capacity', 1234.5],
    ['3 200 mAh', 'fr', 'capacity', 3200],
    ['3\u202f200,0 mAh', 'fr', 'capacity', 3200],
    ['３２００ mAh', 'ja', 'capacity', 3200],
    ['٣٢٠٠ mAh', 'ar', 'capacity', 3200],
    ['3.742 V', 'de', 'voltage', 3.742],
    ['3,742 V', 'en-US', 'voltage', 3.742],
    ['0.018 Ohm', 'de', 'ac-resistance', 18],
    ['44.70', 'no such locale', 'mass', 44.7],
  ])('%s in %s', (text, locale, quantity, expected) => {
    expect(value(text, quantity, locale)).toBe(expected)
  })
})

describe('asked back, never guessed', () => {
  test('a comma before three digits, when both readings can be one cell', () => {
    expect(asked('1.200 mΩ', 'ac-resistance', 'de')).toEqual([
      [1200, '1200 mΩ'],
      [1.2, '1.2 mΩ'],
    ])
    expect(asked('1.200 mΩ', 'ac-resistance', 'en-GB')).toEqual([
      [1.2, '1.2 mΩ'],
      [1200, '1200 mΩ'],
    ])
  })

  test('a comma before three digits without a unit, when both readings can be', () => {
    expect(asked('1.500', 'rest-time', 'de')).toEqual([
      [1.5, '1.5 h'],
      [1500, '1500 h'],
      [0.416666666667, '1500 s'],
    ])
  })

  test('both readings of "3.200" mean the same capacity, so there is nothing to ask', () => {
    expect(value('3.200', 'capacity', 'de')).toBe(3200)
  })

  test('a number without a unit that is odd in the unit asked for', () => {
    expect(asked('1.6', 'mass')).toEqual([[45.359237, '1.6 oz']])
    expect(asked('72', 'temperature')).toEqual([
      [72, '72 °C'],
      [22.2222222222, '72 °F'],
    ])
    expect(asked('0.018', 'ac-resistance')).toEqual([[18, '0.018 Ω']])
    expect(asked('3.2', 'capacity')).toEqual([[3200, '3.2 Ah']])
    expect(asked('30', 'rest-time')).toEqual([
      [30, '30 h'],
      [0.5, '30 min'],
    ])
  })

  test('MΩ, which a meter shows for an open circuit', () => {
    expect(asked('18 MΩ', 'ac-resistance')).toEqual([[18, '18 mΩ']])
    expect(value('18 Milliohm', 'ac-resistance')).toBe(18)
  })

  test('1:30 without a unit', () => {
    expect(asked('1:30', 'rest-time')).toEqual([
      [1.5, '1.5 h'],
      [0.025, '0.025 h'],
    ])
  })
})

describe('refusals say what is wrong', () => {
  test.each<[string, MeasuredQuantity, string]>([
    ['', 'mass', 'nothing-typed'],
    ['   ', 'mass', 'nothing-typed'],
    ['x'.repeat(61), 'mass', 'too-long'],
    ['heavy', 'mass', 'not-a-number'],
    ['1.2.3 g', 'mass', 'not-a-number'],
    ['>44 g', 'mass', 'not-a-number'],
    ['44-45 g', 'mass', 'range'],
    ['44 – 45 g', 'mass', 'range'],
    ['2500mAh-3000mAh', 'capacity', 'range'],
    ['2500 to 3000 mAh', 'capacity', 'range'],
    ['2500 bis 3000', 'capacity', 'range'],
    ['3.6..3.7 V', 'voltage', 'range'],
    ['44 g 45 g', 'mass', 'several-numbers'],
    ['44-45-46 g', 'mass', 'several-numbers'],
    ['12.95 Wh', 'capacity', 'unit-does-not-fit'],
    ['3400 mWh', 'capacity', 'unit-does-not-fit'],
    ['44.7 ± 0.1 g', 'mass', 'several-numbers'],
    ['44.7 stone', 'mass', 'unknown-unit'],
    ['44.7 mm', 'mass', 'unit-does-not-fit'],
    ['3000 mA', 'capacity', 'unit-does-not-fit'],
    ['0.2C', 'current', 'unit-does-not-fit'],
    ['-4.1', 'voltage', 'negative'],
    ['8.4', 'voltage', 'out-of-range'],
    ['4 kg', 'mass', 'out-of-range'],
    ['1e999 g', 'mass', 'not-a-number'],
    ['Infinity', 'mass', 'not-a-number'],
    ['=1+1', 'mass', 'several-numbers'],
  ])('%s as %s: %s', (text, quantity, code) => {
    expect(value(text, quantity)).toBe(code)
  })
})

test('no text at all makes it throw, and every value lies in the plausible range', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string({ unit: 'binary', maxLength: 70 }),
        fc.string({ unit: fc.constantFrom(...'0123456789.,\' -+eRhmΩ°FCVAgkin":') }),
      ),
      fc.constantFrom(...measuredQuantities),
      fc.constantFrom('en-US', 'de', 'fr', 'es-ES', 'hi', 'x'),
      (text, quantity, locale) => {
        const read = readTyped(text, quantity, locale)
        if (!read.ok) return
        expect(read.value).toBeGreaterThanOrEqual(plausible[quantity].lowest)
        expect(read.value).toBeLessThanOrEqual(plausible[quantity].highest)
        expect(read.unit).toBe(measuredUnit[quantity])
      },
    ),
    { numRuns: 2000 },
  )
})

test('a value written out in any locale and any unit comes back', () => {
  const cases = fc
    .constantFrom(...measuredQuantities)
    .chain(quantity =>
      fc.tuple(
        fc.constant(quantity),
        fc.constantFrom(...unitsOf(quantity)),
        fc.double({ min: 0, max: 1, noNaN: true }),
      ),
    )
  fc.assert(
    fc.property(
      cases,
      fc.constantFrom('en-US', 'de', 'fr', 'es-ES', 'de-CH', 'hi'),
      ([quantity, unit, part], locale) => {
        const { usualFrom, usualTo } = plausible[quantity]
        const canonical = usualFrom * 1.01 + part * (usualTo - usualFrom) * 0.98
        const number = (canonical - (unit.offset ?? 0)) / unit.factor
        const written = new Intl.NumberFormat(locale, {
          minimumSignificantDigits: 6,
          maximumSignificantDigits: 6,
        }).format(number)
        const read = readTyped(`${written} ${unit.symbol}`, quantity, locale)
        if (!read.ok) {
          expect(read.refusal.code).toBe('ambiguous')
          return
        }
        expect(Math.abs(read.value - canonical)).toBeLessThanOrEqual(6e-6 * Math.abs(number) * unit.factor)
      },
    ),
    { numRuns: 2000 },
  )
})

// Outside check: js-quantities, a general unit library from the npm registry.
describe('factors agree with a general unit library', () => {
  const theirs: Record<string, string> = {
    g: 'g',
    mg: 'mg',
    kg: 'kg',
    oz: 'oz',
    lb: 'lbs',
    mm: 'mm',
    cm: 'cm',
    m: 'm',
    in: 'in',
    V: 'V',
    mV: 'mV',
    mΩ: 'mOhm',
    Ω: 'Ohm',
    µΩ: 'uOhm',
    mAh: 'mAh',
    Ah: 'Ah',
    A: 'A',
    mA: 'mA',
    '°C': 'tempC',
    '°F': 'tempF',
    K: 'tempK',
    h: 'h',
    min: 'min',
    s: 's',
    ms: 'ms',
    d: 'd',
    'Wh/L': 'Wh/l',
    'kWh/m³': 'kWh/m3',
    'Wh/cm³': 'Wh/cm3',
    'Wh/kg': 'Wh/kg',
    'Wh/g': 'Wh/g',
  }
  const measured = units.filter(unit => !['energy', 'power', 'frequency'].includes(unit.measures))
  test.each(measured.map(unit => [unit.symbol, unit] as [string, Unit]))('%s', (symbol, unit) => {
    const own = units.find(each => each.measures === unit.measures)!
    const expected = Quantities(12.5, theirs[symbol]!).to(theirs[own.symbol]!).scalar
    // Its ounce carries seven digits.
    expect((12.5 * unit.factor + (unit.offset ?? 0)) / expected).toBeCloseTo(1, 6)
  })
})

test('watt-hours are never taken for ampere-hours, nor milliwatt-hours for milliampere-hours', () => {
  for (const written of ['Wh', 'wh', 'W h', 'Wattstunden', 'watt hours', 'mWh', 'mwh'])
    expect(readTyped(`3000 ${written}`, 'capacity', 'en-US')).toMatchObject({
      ok: false,
      refusal: { code: 'unit-does-not-fit', measures: 'energy', accepted: ['mAh', 'Ah'] },
    })
})
