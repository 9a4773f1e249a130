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

  test.each<[string, readonly string[]]>([
    ['18650 9.900 mAh', ['9900']],
    ['18650 12.000 mAh', ['12000']],
    ['18650 3.500 Ah', ['3500']],
    ['18650-Akku 3.400-mAh', ['3400']],
    ["18650 9'900 mAh", ['9900']],
    ['18650 3000mhA', ['3000']],
    ['18650 3000 Amh', ['3000']],
    ['18650 3hA', ['3000']],
    ['a field of 3ha', []],
    ['186503400mAh', ['3400']],
    ['INR18650-3000mAh', ['3000']],
    ['US18650 3000mAh20A', ['3000']],
    ['battery18650,2600mAh', ['2600']],
    ['3.7V,2600mAh', ['2600']],
    ['18650 .5Ah', ['500']],
    ['18650 9900', ['9900 assumed']],
    ['9900 18650', ['9900 assumed']],
    ['18650/9.900', ['9900 assumed']],
    ['18650 9900, 3.7V', ['9900 assumed']],
    // What is written with its unit goes before what is not; what counts something else is no capacity.
    ['18650 2600mAh 9900', ['2600']],
    ['18650 1000 cycles', []],
    ['18650 9900 reviews', []],
    ['18650 2025', []],
    ['18650 3001', []],
    ['18650 12', []],
  ])('capacities as they are mistyped in "%s"', (text, expected) => {
    const capacities = factsOf(readClaims(text, 'en-US'), 'capacity')
    expect(capacities.map(({ mAh, assumed }) => (assumed ? `${mAh} assumed` : `${mAh}`))).toEqual(expected)
  })

  test.each<[string, readonly string[]]>([
    ['2x21700', ['21700 trade-code']],
    ['4×18650', ['18650 trade-code']],
    ['18650x2', ['18650 trade-code']],
    ['US18650', ['18650 trade-code']],
    ['188650 3000mAh', ['18650 doubled-digit']],
    ['217000', ['21700 doubled-digit']],
    ['186650', ['18650 doubled-digit']],
    ['188650 mAh', []],
    ['118850', []],
    ['18650mAh', []],
  ])('sizes of "%s"', (text, expected) => {
    const formats = factsOf(readClaims(text, 'en-US'), 'format')
    expect(formats.map(({ format, from }) => `${format} ${from}`)).toEqual(expected)
  })

  test.each<[string, readonly number[]]>([
    ['2x21700', [2]],
    ['18650x4', [4]],
    ['10x 3.7V', [10]],
    ['4er Pack 18650', [4]],
    ['18x65 mm', []],
    ['18 x 65 mm 5 pcs', [5]],
    ['2x 3400', [2]],
  ])('cells in "%s"', (text, expected) => {
    expect(factsOf(readClaims(text, 'en-US'), 'count').map(({ cells }) => cells)).toEqual(expected)
  })

  test.each<[string, readonly string[]]>([
    ['48V 12Ah 13S4P', ['13S4P notation']],
    ['4P13S', ['13S4P notation']],
    ['3S1P (3x 18650 2600mAh)', ['3S1P notation']],
    ['4INR19/66-2', ['4S2P notation']],
    ['6800mAh (2x 3400)', ['?S2P parts']],
    ['6800mAh (2x 3400mAh)', ['?S2P parts']],
    ['6800mAh (2x 2600mAh)', []],
    ['power bank', ['?S?P word']],
    ['Akkupack 18650', ['?S?P word']],
    ['battery pack of 4', []],
    ['36V battery', ['?S?P voltage']],
    ['18650 with 12V car charger', []],
    ['18650 5V USB', []],
    ['INR18650-20S 2000mAh', []],
  ])('batteries in "%s"', (text, expected) => {
    const batteries = factsOf(readClaims(text, 'en-US'), 'battery')
    expect(
      batteries.map(({ inSeries, inParallel, from }) => `${inSeries ?? '?'}S${inParallel ?? '?'}P ${from}`),
    ).toEqual(expected)
  })

  test.each<[string, readonly string[]]>([
    ['30A (80 °C)', ['30 continuous 80']],
    ['30A (80°C cut-off)', ['30 continuous 80']],
    ['56 A continuous (temperature limit 75 °C)', ['56 continuous 75']],
    ['45A pulse (80 °C)', ['45 pulse 80']],
    ['30 A bis 80 °C', ['30 continuous 80']],
    ['10A, operating -20 to 60 °C', ['10 unsaid']],
  ])('limits of the currents in "%s"', (text, expected) => {
    const currents = factsOf(readClaims(text, 'en-US'), 'current')
    expect(
      currents.map(({ A, sort, limit_C }) => [A, sort, limit_C].filter(each => each !== undefined).join(' ')),
    ).toEqual(expected)
  })

  test('an energy in mWh is told from one in Wh', () => {
    expect(bare('3400mWh')).toEqual([{ kind: 'energy', Wh: 3.4, milli: true }])
    expect(bare('3.4Wh')).toEqual([{ kind: 'energy', Wh: 3.4 }])
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
