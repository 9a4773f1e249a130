// Forms for readings: what each asks, and that nothing measured or assumed is ever taken as exact.
import { describe, expect, test } from 'vitest'
import { fieldsOf, instrumentsOf, readForm } from '../../src/readings/form.ts'

const value = (read: ReturnType<typeof readForm>) => {
  if (!read.ok) throw new Error(JSON.stringify(read.refusals))
  return read
}

test('a figure off a label is exact, a measured one is not, whatever it was measured with', () => {
  expect(value(readForm('claimed-capacity', { value: '3000 mAh' }, undefined, 'en')).u).toBe(0)
  for (const kind of instrumentsOf('mass'))
    expect(value(readForm('mass', { value: '45 g' }, { kind }, 'en')).u).toBeGreaterThan(0)
})

test('without an instrument the widest of the menu is taken', () => {
  const us = instrumentsOf('length').map(kind => value(readForm('length', { value: '65 mm' }, { kind }, 'en')).u)
  expect(us.length).toBeGreaterThan(1)
  expect(value(readForm('length', { value: '65 mm' }, undefined, 'en')).u).toBe(Math.max(...us))
})

describe('an assumed nominal voltage', () => {
  const typed = { capacity: '2000 mAh', diameter: '18.2 mm', length: '65 mm' }
  const calliper = { kind: 'calliper' } as const
  // By hand: 7.2 Wh in pi/4 * 18.2^2 * 65 mm^3 = 0.016910 L is 425.8 Wh/L at 3.6 V, and 378.5 Wh/L at 3.2 V.
  test('carries its doubt, so that an iron phosphate cell is not over a line by assumption', () => {
    const assumed = value(readForm('energy-per-volume', typed, calliper, 'en'))
    expect(assumed.value).toBeCloseTo(425.8, 1)
    expect(assumed.value - 2 * assumed.u).toBeLessThan(378.5)
  })
  test('has the uncertainty of an even spread over 3.2 to 4.0 V, and the mass adds its own', () => {
    const assumed = value(
      readForm('energy-per-mass', { capacity: '2000 mAh', mass: '45 g' }, { kind: 'tenth-gram-scale' }, 'en'),
    )
    // By hand: 7.2 Wh in 45 g is 160 Wh/kg; half-widths of 0.4 V in 3.6 V and of 0.29 g in 45 g, each over the square root of three.
    expect(assumed.value).toBeCloseTo(160, 9)
    expect(assumed.u / 160).toBeCloseTo(Math.hypot(0.4 / 3.6, 0.29 / 45) / Math.sqrt(3), 9)
  })
  test('gives way to a typed one', () => {
    const told = value(readForm('energy-per-volume', { ...typed, 'nominal-voltage': '3.2 V' }, calliper, 'en'))
    expect(told.value).toBeCloseTo(378.5, 1)
    expect(told.u).toBeLessThan(10)
  })
})

test('every field that was filled in wrongly is named, not only the first', () => {
  const read = readForm('energy-per-mass', { capacity: 'much', mass: '44 V' }, undefined, 'en')
  expect(read.ok ? [] : read.refusals.map(one => [one.field, one.refusal.code])).toEqual([
    ['capacity', 'not-a-number'],
    ['mass', 'unit-does-not-fit'],
  ])
})

test("a form and its menu of instruments fit into one of Discord's forms (five components)", () => {
  for (const quantity of ['mass', 'energy-per-volume', 'energy-per-mass', 'claimed-current', 'temperature'] as const)
    expect(fieldsOf(quantity).length + (instrumentsOf(quantity).length > 0 ? 1 : 0)).toBeLessThanOrEqual(5)
})

test('a reading that is held against a limit is as uncertain as the wider of the two', () => {
  const hobby = { kind: 'hobby-load' } as const
  const u = (...limits: number[]) => value(readForm('capacity', { value: '2900 mAh' }, hobby, 'en', limits)).u
  // 2 % and 5 mAh, at 2,900 and at 3,000 mAh; limits below, and those far above, do not matter.
  expect(u()).toBeCloseTo(63 / Math.sqrt(3), 9)
  expect(u(3000)).toBeCloseTo(65 / Math.sqrt(3), 9)
  expect(u(2800, 9000)).toBe(u())
  expect(u(2800, 3000, 9000)).toBe(u(3000))
})
