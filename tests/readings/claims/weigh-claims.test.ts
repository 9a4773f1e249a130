// What a claim weighs: impossible, high, contradictory, not to be compared; and that genuine claims weigh nothing.
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { type CeilingFormat, ceilings, validUntil } from '../../../src/readings/claims/ceilings.ts'
import { readClaims } from '../../../src/readings/read-claims.ts'
import { type MeasuredCell, weighClaims } from '../../../src/readings/weigh-claims.ts'

const today = '2026-03-01'
const weigh = (text: string, measured?: MeasuredCell, on = today) =>
  weighClaims(readClaims(text, 'en-US'), on, measured)
const codes = (text: string, measured?: MeasuredCell, on = today) =>
  weigh(text, measured, on).map(finding => `${finding.code}: ${finding.weight}`)

test('the 9.9 Ah claim: about 2,150 Wh/L where the best reach 740', () => {
  const [capacity] = weigh('9900mAh 18650')
  expect(capacity).toMatchObject({
    code: 'capacity',
    weight: 'impossible',
    value: 9900,
    best: 3600,
    line: 5000,
    validUntil: '2029-12-31',
  })
  expect(capacity?.code === 'capacity' && capacity.atNominalSize?.value).toBeCloseTo(2154.7, 1)
})

test('9900mAh 18650 30A 38g, the whole of it', () => {
  expect(codes('9900mAh 18650 30A 38g')).toEqual([
    'capacity: impossible',
    'energy-per-mass: impossible',
    'mass: low',
    'current-not-comparable: not-comparable',
  ])
})

test.each([
  ['18650 4000mAh', ['capacity: high']],
  ['18650 3500mAh 10A continuous', []],
  ['18650 3600mAh', []],
  ['18650 3500mAh 30A continuous', ['capacity-and-current: high']],
  ['18650 3000mAh 35A continuous', ['capacity-and-current: high']],
  ['18650 2500mAh 30A continuous', []],
  ['18650 45A continuous', ['continuous-current: high']],
  ['18650 60A continuous', ['continuous-current: impossible']],
  ['18650 100A pulse', ['current-not-comparable: not-comparable']],
  ['18650 100A max', ['current-not-comparable: not-comparable']],
  ['18650 3000mAh 20C continuous', ['continuous-current: impossible']],
  ['21700 5000mAh 45A continuous 70g', []],
  ['21700 6000mAh', []],
  ['21700 7000mAh', ['capacity: high']],
  ['21700 9000mAh', ['capacity: impossible']],
  ['26650 5000mAh', []],
  ['26650 12000mAh', ['capacity: impossible']],
  ['14500 900mAh', []],
  ['14500 2800mAh', ['capacity: impossible']],
  ['9900mAh', ['capacity-not-comparable: not-comparable']],
  ['32700 9900mAh', ['capacity-not-comparable: not-comparable']],
  ['18650 3000mAh 10.8Wh', []],
  ['18650 3000mAh 25Wh', ['energy-and-capacity: contradiction']],
  ['4x 18650 3000mAh 43.2Wh', []],
  ['18650 INR22/71', ['two-formats: contradiction']],
  ['IFR18650 1600mAh 38g', []],
  ['4INR19/66-2 6800mAh', []],
  ['4INR19/66-2 680mAh 2Ah', []],
  ['4INR19/66-2 20000mAh', ['capacity: impossible']],
])('%s', (text, expected) => {
  expect(codes(text)).toEqual(expected)
})

test('measured size and mass count with their uncertainty', () => {
  const cell: MeasuredCell = {
    diameter_mm: { value: 18.4, u: 0.06 },
    length_mm: { value: 65.2, u: 0.12 },
    mass_g: { value: 33, u: 0.2 },
  }
  expect(codes('18650 3500mAh', cell)).toEqual(['energy-per-mass: impossible'])
  expect(codes('18650 3500mAh', { mass_g: { value: 33, u: 5 } })).toEqual([])
  expect(codes('INR19/66-2 6800mAh', { ...cell, mass_g: { value: 46, u: 0.2 } })).toEqual([])
  expect(codes('18650 9900mAh', cell)).toEqual([
    'capacity: impossible',
    'energy-per-volume: impossible',
    'energy-per-mass: impossible',
  ])
})

test('past their date, impossible becomes high and high becomes unknown', () => {
  expect(codes('18650 9900mAh', undefined, '2030-01-01')).toEqual(['capacity: high'])
  expect(codes('18650 4000mAh', undefined, '2028-01-01')).toEqual(['capacity: not-comparable'])
  expect(weigh('18650 9900mAh', undefined, '2030-01-01')[0]).toMatchObject({ outOfDate: true })
})

// Best genuine figures (data sheets of 2024 to 2026 as gathered in the trade facts; common practice where no source is
// known): a quarter at least lies between them and "impossible", and none of them is even high.
describe.each(Object.entries(ceilings))(
  '%s leaves a quarter between the best known and impossible',
  (_format, lines) => {
    test.each(['capacity_mAh', 'perVolume_WhpL', 'perMass_Whpkg'] as const)('%s', key => {
      expect(lines[key].high).toBeGreaterThanOrEqual(lines[key].best)
      expect(lines[key].impossible!).toBeGreaterThanOrEqual(1.25 * lines[key].best)
    })
  },
)

// One figure, one place for people to look: the rule pack any-cell draws the same lines, with its sources beside them.
describe('the lines are those of the rule pack', () => {
  interface Rule {
    id: string
    when: Record<string, unknown>
    validUntil?: string
  }
  const parts = new URL('../../../rules/any-cell/parts/', import.meta.url)
  const rules = readdirSync(parts).flatMap(
    name => (parse(readFileSync(new URL(name, parts), 'utf8')) as { rules?: Rule[] }).rules ?? [],
  )
  const rule = (id: string) => rules.find(each => each.id === id)
  const above = (id: string, answer: string): number | undefined => {
    const when = rule(id)?.when as { any?: Record<string, { above: number }>[] } & Record<
      string,
      { above: number } | undefined
    >
    return when?.any?.find(each => each[answer])?.[answer]?.above ?? when?.[answer]?.above
  }

  test.each(Object.keys(ceilings) as CeilingFormat[])('%s', format => {
    const high = format === '21700' ? 'claim-beyond-21700' : `claim-high-${format}`
    const impossible = `capacity-impossible-${format}`
    const other = format === '21700' ? '-21700' : ''
    const lines = ceilings[format]
    expect(above(high, 'claimed-capacity')).toBe(lines.capacity_mAh.high)
    expect(above(impossible, 'claimed-capacity')).toBe(lines.capacity_mAh.impossible)
    expect(above(high, 'energy-by-size')).toBe(lines.perVolume_WhpL.high)
    expect(above(`volume-impossible${other}`, 'energy-by-size')).toBe(lines.perVolume_WhpL.impossible)
    expect(above(high, 'energy-by-weight')).toBe(lines.perMass_Whpkg.high)
    expect(above(`weight-impossible${other}`, 'energy-by-weight')).toBe(lines.perMass_Whpkg.impossible)
    expect(rule(high)?.validUntil).toBe(validUntil.high)
    expect(rule(impossible)?.validUntil).toBe(validUntil.impossible)
  })

  test('currents', () => {
    expect(above('current-high-18650', 'claimed-current')).toBe(ceilings['18650'].continuous_A?.high)
    expect(above('current-far-18650', 'claimed-current')).toBe(ceilings['18650'].continuous_A?.impossible)
    expect(above('current-high-21700', 'claimed-current')).toBe(ceilings['21700'].continuous_A?.high)
    expect(above('current-far-21700', 'claimed-current')).toBe(ceilings['21700'].continuous_A?.impossible)
    expect(above('iron-phosphate-claim-high', 'energy-by-size')).toBe(420)
    expect(above('iron-phosphate-claim-high', 'energy-by-weight')).toBe(165)
  })
})
