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
