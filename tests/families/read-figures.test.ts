// Typed figures: told apart by their units, in the writing of each language, and named where they cannot be read.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Figures } from '../../src/families/facts/facts-schema.ts'
import { readFigures, readMass, writeFigures } from '../../src/families/read-figures.ts'

const whole: Figures = {
  capacity: { typical: 2500, least: 2450 },
  currents: [
    { amps: 20, cutOff: 'not-said' },
    { amps: 30, cutOff: 75 },
  ],
  mass: { middle: 44.6, cells: 1, from: 'sheet' },
}

test.each([
  '2500 mAh, at least 2450 mAh, 20 A, 30 A up to 75 °C, 44.6 g',
  '2.500 mAh, mindestens 2,45 Ah; 20 A, 30 A bis 75 °C; 44,6 g',
  '20A 30A (75°C) 44,6g mínimo 2450mAh 2,500mAh',
  '44.6 g · 2450 mAh · 2500 mAh · 20 A / 30 A 75 C · 3.6 V · 9 Wh',
])('%s', typed => expect(readFigures(typed)).toEqual({ ok: true, figures: whole }))

test('one capacity is the typical one, and nothing typed is no figure', () => {
  expect(readFigures('2500 mAh 20 A')).toMatchObject({ figures: { capacity: { typical: 2500 } } })
  expect(readFigures(' ')).toEqual({ ok: true, figures: {} })
})

describe('what cannot be read is named, and changes nothing:', () => {
  test.each([
    ['2500 mAh, at least 2450, 20 A', 'at least 2450'],
    ['2500', '2500'],
    ['2500 Wh', '2500 Wh'],
    ['2500 Wh 20 A', '2500 Wh'],
    ['2500 mAh 20 mA', '20 mA'],
    ['44 oz', '44 oz'],
    ['45 kg', '45 kg'],
    ['2500 g', '2500 g'],
    ['2500 A', '2500 A'],
    ['20 A 30 A 40 A 50 A', '50 A'],
    ['75 °C 20 A', '75 °C'],
    ['20 A 300 °C', '300 °C'],
    ['2500 mAh 2450 mAh 2400 mAh', '2400 mAh'],
    ['min 2450 mAh', '2450 mAh'],
    ['best ever', 'best ever'],
  ])('%s', (typed, what) => expect(readFigures(typed)).toEqual({ ok: false, what }))
})

test('what the line does not hold stays: size, resistance, what references weigh, a limit, and that nothing cuts off', () => {
  const before: Figures = {
    capacity: { typical: 2500, limit: 2510 },
    currents: [{ amps: 20, cutOff: 'none' }],
    mass: { middle: 44.2, cells: 3, from: 'references' },
    size: { diameter: 18.3, length: 65 },
    resistance: { usual: 12 },
  }
  expect(readFigures(writeFigures(before), before)).toEqual({ ok: true, figures: before })
  expect(readFigures('2600 mAh 25 A 45 g', before)).toMatchObject({
    figures: {
      ...{ capacity: { typical: 2600 }, currents: [{ amps: 25, cutOff: 'not-said' }] },
      mass: { middle: 45, from: 'sheet' },
    },
  })
})

test('what is written is read as it was', () => {
  const figures = fc.record(
    {
      capacity: fc
        .record({ typical: fc.integer({ min: 60, max: 50_000 }), less: fc.option(fc.integer({ min: 0, max: 9 })) })
        .map(({ typical, less }) => ({ typical, ...(less !== null && { least: typical - less }) })),
      currents: fc.array(
        fc.record({ amps: fc.integer({ min: 1, max: 500 }), cutOff: fc.constantFrom('not-said' as const, 75, 80) }),
        { minLength: 1, maxLength: 3 },
      ),
      mass: fc
        .integer({ min: 50, max: 2000 })
        .map(tenths => ({ middle: tenths / 10, cells: 1, from: 'sheet' as const })),
    },
    { requiredKeys: [] },
  )
  fc.assert(
    fc.property(figures, one => {
      expect(readFigures(writeFigures(one))).toEqual({ ok: true, figures: one })
    }),
  )
})

test('a weight stands alone, with its unit or without', () => {
  for (const typed of ['44,6 g', '44.6'])
    expect(readMass(typed)).toMatchObject({ figures: { mass: { middle: 44.6, from: 'sheet' } } })
  for (const typed of ['44 oz', '45 mAh', 'heavy']) expect(readMass(typed)).toMatchObject({ ok: false })
})

describe('each figure reaches from its least to its most', () => {
  const read = (typed: string) => readFigures(typed)
  test.each([
    ['50 mAh', '49 mAh', { capacity: { typical: 50 } }],
    ['50.000 mAh', '50001 mAh', { capacity: { typical: 50_000 } }],
    ['0.1 A', '0.09 A', { currents: [{ amps: 0.1, cutOff: 'not-said' }] }],
    ['500 A', '500.1 A', { currents: [{ amps: 500, cutOff: 'not-said' }] }],
    ['5 g', '4.9 g', { mass: { middle: 5, cells: 1, from: 'sheet' } }],
    ['200 g', '200.1 g', { mass: { middle: 200, cells: 1, from: 'sheet' } }],
  ])('%s is read, %s is not', (typed, beyond, figures) => {
    expect(read(typed)).toEqual({ ok: true, figures })
    expect(read(beyond)).toEqual({ ok: false, what: beyond })
  })
  test.each([
    [40, 39],
    [120, 121],
  ])('a current is cut off at %i °C, not at %i', (at, beyond) => {
    expect(read(`20 A ${at} °C`)).toEqual({ ok: true, figures: { currents: [{ amps: 20, cutOff: at }] } })
    expect(read(`20 A ${beyond} °C`)).toEqual({ ok: false, what: `${beyond} °C` })
  })
  test('a voltage and an energy are read over where they can be ones of a cell', () => {
    expect(read('5 V 100 Wh 20 A')).toMatchObject({ ok: true })
    expect(read('5.1 V 20 A')).toEqual({ ok: false, what: '5.1 V' })
    expect(read('100.5 Wh 20 A')).toEqual({ ok: false, what: '100.5 Wh' })
    expect(read('3.6 V 9 Wh')).toEqual({ ok: false, what: '3.6 V 9 Wh' })
  })
})

test('a comma or point parts thousands before three figures after at most two, and else a fraction', () => {
  const typical = (typed: string) => {
    const read = readFigures(typed)
    return read.ok ? read.figures.capacity?.typical : undefined
  }
  expect(['2,500 mAh', '2.500 mAh', '12.500 mAh', '2,5 Ah', '2.55 Ah', '250,4 mAh'].map(typical)).toEqual([
    ...[2500, 2500, 12_500, 2500, 2550, 250],
  ])
  expect(readFigures('44,6 g')).toMatchObject({ figures: { mass: { middle: 44.6 } } })
})

describe('of two capacities', () => {
  const capacity = (typed: string, before: Figures = {}) => {
    const read = readFigures(typed, before)
    return read.ok ? read.figures.capacity : read.what
  }
  test('the smaller is the least, or the one that is said to be', () => {
    expect(capacity('2500 mAh 2450 mAh')).toEqual({ typical: 2500, least: 2450 })
    expect(capacity('2450 mAh 2500 mAh')).toEqual({ typical: 2500, least: 2450 })
    expect(capacity('2500 mAh 2500 mAh')).toEqual({ typical: 2500, least: 2500 })
    for (const word of ['min', 'min.', 'Minimum', 'mínimo', 'at least', 'al menos', 'mindestens', '≥'])
      expect(capacity(`${word} 2500 mAh, 2450 mAh`), word).toEqual({ typical: 2450, least: 2500 })
    expect(capacity('2450 mAh, min 2500 mAh')).toEqual({ typical: 2450, least: 2500 })
  })
  test('a limit stays with the typical one that it was for', () => {
    const before = { capacity: { typical: 2500, limit: 2510 } }
    expect(capacity('2500 mAh', before)).toEqual({ typical: 2500, limit: 2510 })
    expect(capacity('2500 mAh min 2450 mAh', before)).toEqual({ typical: 2500, least: 2450, limit: 2510 })
    expect(capacity('2600 mAh min 2500 mAh', before)).toEqual({ typical: 2600, least: 2500 })
    expect(capacity('2600 mAh', before)).toEqual({ typical: 2600 })
  })
  test('one that is wrong is named though another is right', () => {
    expect(capacity('2500 mAh 20 mAh')).toBe('20 mAh')
    expect(capacity('2500 mAh 2450 mAh 2400 mAh 20 mAh')).toBe('20 mAh')
  })
})

test('a temperature belongs to one current, and a current has one; that nothing cuts it off stays known of that current', () => {
  const before: Figures = {
    currents: [
      { amps: 20, cutOff: 'none' },
      { amps: 30, cutOff: 75 },
    ],
  }
  const currents = (typed: string) => {
    const read = readFigures(typed, before)
    return read.ok ? read.figures.currents : read.what
  }
  expect(currents('20 A 30 A')).toEqual([
    { amps: 20, cutOff: 'none' },
    { amps: 30, cutOff: 'not-said' },
  ])
  expect(currents('20 A 80 °C')).toEqual([{ amps: 20, cutOff: 80 }])
  expect(currents('20 A 80 °C 75 °C')).toBe('75 °C')
  expect(currents('10 A 20 A 30 A')).toHaveLength(3)
  expect(currents('2500 mAh')).toBeUndefined()
})

test('what a line does not hold stays, but what it could have held', () => {
  const before: Figures = {
    ...{ capacity: { typical: 2500 }, currents: [{ amps: 20, cutOff: 75 }] },
    ...{ mass: { middle: 45, cells: 1, from: 'sheet' }, size: { diameter: 18, length: 65 }, resistance: { usual: 9 } },
  }
  expect(readFigures('', before)).toEqual({ ok: true, figures: { size: before.size, resistance: before.resistance } })
  const weighed: Figures = { mass: { middle: 45, cells: 3, from: 'references' } }
  expect(readFigures('', weighed)).toEqual({ ok: true, figures: weighed })
  expect(readFigures('44 g', weighed)).toMatchObject({ figures: { mass: { middle: 44, cells: 1, from: 'sheet' } } })
  expect(readFigures('44 g 45 g')).toEqual({ ok: false, what: '45 g' })
})

test('what is left between figures is words, without the marks around it; more than 120 letters are not read', () => {
  expect(readFigures('20 A; about 7, · 45 g')).toEqual({ ok: false, what: 'about 7' })
  expect(readFigures(`${'x'.repeat(114)} 20 A and 7`)).toMatchObject({ ok: true })
  expect(readFigures(`  20 A${' '.repeat(200)}7`)).toMatchObject({ ok: true })
})

test('a line is written with its figures in order, what references weighed left out', () => {
  const figures: Figures = { ...whole, mass: { middle: 45, cells: 3, from: 'references' } }
  expect(writeFigures(whole)).toBe('2500 mAh, min 2450 mAh, 20 A, 30 A 75 °C, 44.6 g')
  expect(writeFigures(figures)).toBe('2500 mAh, min 2450 mAh, 20 A, 30 A 75 °C')
  expect(writeFigures({})).toBe('')
})

test('a weight with other figures beside it is none; with nothing it is none that is known', () => {
  expect(readMass('45 g 20 A')).toEqual({ ok: false, what: '45 g 20 A' })
  expect(readMass(' 45 ')).toEqual({ ok: true, figures: { mass: { middle: 45, cells: 1, from: 'sheet' } } })
  expect(readMass('')).toEqual({ ok: true, figures: {} })
  expect(readMass('heavy')).toEqual({ ok: false, what: 'heavy' })
})
