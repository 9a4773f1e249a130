// Claims as listings write them, in four languages, become facts; designations follow IEC 61960-3.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { formatOf } from '../../../src/readings/claims/designated-format.ts'
import { type Fact, factsOf } from '../../../src/readings/claims/facts.ts'
import { readClaims } from '../../../src/readings/read-claims.ts'

const bare = (text: string, locale = 'en-US') => readClaims(text, locale).map(({ span: _, ...fact }) => fact)

describe('texts of listings', () => {
  test('9900mAh 18650 30A 38g', () => {
    expect(bare('9900mAh 18650 30A 38g')).toEqual([
      { kind: 'capacity', mAh: 9900, grade: 'unsaid' },
      { kind: 'format', format: '18650', from: 'trade-code' },
      { kind: 'current', A: 30, sort: 'unsaid', seconds: null },
      { kind: 'mass', g: 38 },
    ])
  })

  test('21700 5000 mah 45A pulse', () => {
    expect(bare('21700 5000 mah 45A pulse')).toEqual([
      { kind: 'format', format: '21700', from: 'trade-code' },
      { kind: 'capacity', mAh: 5000, grade: 'unsaid' },
      { kind: 'current', A: 45, sort: 'pulse', seconds: null },
    ])
  })

  test('a German listing: price left out, comma, protection', () => {
    expect(bare('4x 18650 Akku 3,7V 9.900 mAh Li-Ion, 12,99 € mit Schutzschaltung, 44,7 g', 'de')).toEqual([
      { kind: 'count', cells: 4 },
      { kind: 'format', format: '18650', from: 'trade-code' },
      { kind: 'voltage', V: 3.7 },
      { kind: 'capacity', mAh: 9900, grade: 'unsaid' },
      { kind: 'chemistry', chemistry: 'lithium-ion' },
      { kind: 'protection', protected: true },
      { kind: 'mass', g: 44.7 },
    ])
  })

  test('a French and a Spanish listing', () => {
    expect(bare('Accu IFR26650 3 300 mAh 3,2V courant continu 10A, crête 20 A, 85 grammes, 9,90 EUR', 'fr')).toEqual([
      { kind: 'format', format: '26650', from: 'trade-code' },
      { kind: 'chemistry', chemistry: 'IFR' },
      { kind: 'capacity', mAh: 3300, grade: 'unsaid' },
      { kind: 'voltage', V: 3.2 },
      { kind: 'current', A: 10, sort: 'continuous', seconds: null },
      { kind: 'current', A: 20, sort: 'pulse', seconds: null },
      { kind: 'mass', g: 85 },
    ])
    expect(bare('Pila 21700 sin protección 5,0 amperios hora descarga continua 15 A pico 30 A', 'es-ES')).toEqual([
      { kind: 'format', format: '21700', from: 'trade-code' },
      { kind: 'protection', protected: false },
      { kind: 'capacity', mAh: 5000, grade: 'unsaid' },
      { kind: 'current', A: 15, sort: 'continuous', seconds: null },
      { kind: 'current', A: 30, sort: 'pulse', seconds: null },
    ])
  })

  test.each<[string, readonly string[]]>([
    ['20A continuous 35A peak', ['20 continuous', '35 pulse']],
    ['pulse 45A continuous 30A', ['45 pulse', '30 continuous']],
    ['45A (10 s) / 30A CDR', ['45 pulse 10', '30 continuous']],
    ['max 40A', ['40 max']],
    ['40A max continuous', ['40 continuous']],
    ['max. continuous discharge 8A, charge current 1.5A', ['8 continuous', '1.5 charge']],
    ['Dauerstrom 10 A, Ladestrom 2 A', ['10 continuous', '2 charge']],
    ['25A', ['25 unsaid']],
    ['10C continuous', []],
  ])('currents of "%s"', (text, expected) => {
    const currents = factsOf(readClaims(text, 'en-US'), 'current')
    expect(currents.map(({ A, sort, seconds }) => [A, sort, seconds].filter(each => each !== null).join(' '))).toEqual(
      expected,
    )
  })

  test.each<[string, readonly string[]]>([
    ['2500mAh min. 2600mAh typ.', ['2500 minimum', '2600 typical']],
    ['min 3350 mAh, typ 3500 mAh', ['3350 minimum', '3500 typical']],
    ['3.5Ah rated', ['3500 typical']],
    ['18650 3 500 mAh', ['3500 unsaid']],
    ['18650 300 mAh', ['300 unsaid']],
    ['6800 milliamp hours', ['6800 unsaid']],
    ['4INR19/66-2 6800mAh', ['6800 unsaid']],
    ['4INR19/66-2 680mAh', ['680 unsaid']],
    ['2 500 mAh', ['2500 unsaid']],
    ['9900', []],
  ])('capacities of "%s"', (text, expected) => {
    const capacities = factsOf(readClaims(text, 'en-US'), 'capacity')
    expect(capacities.map(({ mAh, grade }) => `${mAh} ${grade}`)).toEqual(expected)
  })

  test.each([
    ['$9.99 18650', 1],
    ['18650 9,99 € 45g', 2],
    ['EUR 45 per cell', 0],
    ['de 30 à 40 cells', 1],
    ['from 30 a 18650', 1],
    ['call 18650123 or 218650', 0],
    ['order 5 pcs 18650', 2],
  ])('"%s" holds %d facts', (text, facts) => {
    expect(readClaims(text, 'en-US')).toHaveLength(facts)
  })

  test('a comma that can be read in two ways is unclear, and both ways are given', () => {
    expect(bare('resistance 1.200 mΩ', 'de')).toEqual([{ kind: 'unclear', of: 'resistance', readings: [1200, 1.2] }])
  })
})

// IEC 61960-3:2017, 5.1 as told by a secondary page: N2 and N4 are the largest diameter and height, each rounded up.
describe('designations of IEC 61960-3', () => {
  test.each([
    ['INR19/66', 'INR', 19, 66, 1, 1, '18650'],
    ['INR19/65', 'INR', 19, 65, 1, 1, '18650'],
    ['ICR18/65', 'ICR', 18, 65, 1, 1, '18650'],
    ['INR22/71', 'INR', 22, 71, 1, 1, '21700'],
    ['INR21/71', 'INR', 21, 71, 1, 1, '20700'],
    ['IFR27/66', 'IFR', 27, 66, 1, 1, '26650'],
    ['ICR15/51', 'ICR', 15, 51, 1, 1, '14500'],
    ['4INR19/66-2', 'INR', 19, 66, 4, 2, '18650'],
    ['3icr19/66', 'ICR', 19, 66, 3, 1, '18650'],
  ])('%s', (text, chemistry, diameter_mm, height_mm, inSeries, inParallel, format) => {
    const [found] = factsOf(readClaims(`pack of cells ${text}, new`, 'en-US'), 'designation')
    expect(found?.designation).toEqual({ chemistry, diameter_mm, height_mm, inSeries, inParallel })
    expect(found?.format).toBe(format)
  })

  test('a size no trade format has stays without one', () => {
    expect(formatOf({ chemistry: 'INR', diameter_mm: 50, height_mm: 90, inSeries: 1, inParallel: 1 })).toBeNull()
  })
})

test('every fact points at its own piece of any text, and no text is too odd', () => {
  const piece = fc.constantFrom(
    '18650',
    '9900mAh',
    '30A',
    ' ',
    '€',
    '12,99',
    'INR19/66',
    'x',
    'pulse',
    '3.7V',
    '1.200 mΩ',
    '\n',
    'Ω',
    '4x',
    'g',
    '.',
  )
  const text = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 200 }),
    fc.array(piece, { maxLength: 40 }).map(parts => parts.join('')),
  )
  fc.assert(
    fc.property(text, fc.constantFrom('en-US', 'de', 'fr'), (text, locale) => {
      const facts: readonly Fact[] = readClaims(text, locale)
      for (const { span } of facts) {
        expect(span.from).toBeGreaterThanOrEqual(0)
        expect(span.to).toBeGreaterThan(span.from)
        expect(span.to).toBeLessThanOrEqual(text.length)
      }
      expect(facts.map(fact => fact.span.from)).toEqual(facts.map(fact => fact.span.from).sort((a, b) => a - b))
    }),
    { numRuns: 500 },
  )
})

test('4,000 characters of anything take no noticeable time', () => {
  for (const unit of ['1 ', '1,', '9'.repeat(40), 'a ', '€1', '1 x ', '18650', 'protected ', 'mAh1', "1'000 "]) {
    const started = performance.now()
    readClaims(unit.repeat(4000), 'en-US')
    expect(performance.now() - started).toBeLessThan(500)
  }
})
