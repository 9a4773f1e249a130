// Forms for readings: what each asks, and that nothing measured or assumed is ever taken as exact.
import { describe, expect, test } from 'vitest'
import { fieldsLeft, fieldsOf, instrumentsOf, readForm } from '../../src/readings/form.ts'

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

describe('voltage lost at the claimed current', () => {
  const four = { kind: 'four-wire-meter' } as const
  test('by the AC resistance: Ohm, and the meter alone is uncertain', () => {
    const typed = { 'claimed-current': '32 A', 'ac-resistance': '27.5 mΩ' }
    const lost = value(readForm('voltage-lost', typed, four, 'en'))
    // By hand: 27.5 mΩ times 32 A; half-widths of 1 % and 0.3 mΩ over the square root of three.
    expect(lost.value).toBeCloseTo(0.88, 9)
    expect(lost.u).toBeCloseTo((32 * (0.275 + 0.3)) / 1000 / Math.sqrt(3), 9)
    expect(instrumentsOf('voltage-lost')).toEqual(['basic-multimeter', 'four-wire-meter'])
  })
  test('by what was given before, with nothing left to type in', () => {
    const known = { 'claimed-current': { value: 20, u: 0 }, 'ac-resistance': { value: 15, u: 0.2 } }
    expect(fieldsLeft('voltage-lost', known)).toEqual([])
    const lost = value(readForm('voltage-lost', {}, undefined, 'de', [], known))
    expect([lost.value, lost.u]).toEqual([0.3, 0.004])
  })
  test('by a test at another current, in proportion, and the further away the less certain', () => {
    const known = { 'claimed-current': { value: 30, u: 0 } }
    const by = (fall: string, at: string) =>
      value(readForm('voltage-lost-under-load', { fall, 'load-current': at }, { kind: 'hobby-load' }, 'en', [], known))
    const [near, far] = [by('0.6 V', '15 A'), by('0.04 V', '1 A')]
    // By hand: 0.6 V at half the claim is 1.2 V at it. Half-widths: 0.5 % and 10 mV, twice and independent; 1 % and 10 mA.
    expect(near.value).toBeCloseTo(1.2, 9)
    expect(near.u).toBeCloseTo((2 * Math.hypot(Math.SQRT2 * 0.013, (0.6 * 0.16) / 15)) / Math.sqrt(3), 9)
    expect(far.value).toBeCloseTo(1.2, 9)
    expect(far.u).toBeGreaterThan(10 * near.u)
  })
  test('is measured with what measures voltage and current', () => {
    expect(instrumentsOf('voltage-lost-under-load')).toEqual(['basic-multimeter', 'hobby-load', 'lab-load'])
    for (const kind of instrumentsOf('voltage-lost-under-load')) {
      const typed = { 'claimed-current': '20 A', fall: '0.4 V', 'load-current': '10 A' }
      expect(value(readForm('voltage-lost-under-load', typed, { kind }, 'en')).u).toBeLessThan(1)
    }
  })
})

describe('a claimed current as a multiple of the capacity', () => {
  const known = { capacity: { value: 2500, u: 0 } }
  test.each([
    ['45C', 'en', 112.5],
    ['10 c', 'en', 25],
    ['1,2C', 'de', 3],
    ['0.4C', 'es', 1],
  ])('%s in %s', (typed, locale, amperes) => {
    const read = value(readForm('claimed-current', { value: typed }, undefined, locale, [], known))
    expect(read).toMatchObject({ value: amperes, u: 0, taken: { current_A: amperes } })
  })
  test('amperes are taken as they are', () => {
    const read = value(readForm('claimed-current', { value: '45 A' }, undefined, 'en', [], known))
    expect(read).toEqual({ ok: true, value: 45, u: 0 })
  })
  const refused = (typed: string, more = {}) => {
    const read = readForm('claimed-current', { value: typed }, undefined, 'en', [], more)
    return read.ok ? undefined : read.refusals[0]?.refusal
  }
  test('without a capacity, out of reason, or as a temperature it is refused with what it is', () => {
    expect(refused('45C')).toMatchObject({ code: 'rate-without-capacity', typed: '45C' })
    expect(refused('900C', known)).toMatchObject({ code: 'out-of-range', side: 'too-high', value: 2250 })
    expect(refused('45 °C', known)).toMatchObject({ code: 'unit-does-not-fit' })
  })
  test('only a claimed current: what was drawn in a test is measured in amperes', () => {
    const typed = { 'claimed-current': '10C', fall: '0.4 V', 'load-current': '10C' }
    const read = readForm('voltage-lost-under-load', typed, { kind: 'lab-load' }, 'en', [], known)
    expect(read.ok ? [] : read.refusals.map(one => one.field)).toEqual(['load-current'])
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
  for (const quantity of [
    'mass',
    'energy-per-volume',
    'energy-per-mass',
    'voltage-lost',
    'voltage-lost-under-load',
    'temperature',
  ] as const)
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
