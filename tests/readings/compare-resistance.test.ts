// A resistance is held against a data sheet only if it was taken the same way.
import { expect, test } from 'vitest'
import { compareResistance, type MeasuredResistance } from '../../src/readings/compare-resistance.ts'

const good: MeasuredResistance = {
  value_mΩ: 45.2,
  u_mΩ: 0.7,
  method: { kind: 'two-pulse' },
  wiring: 'four-wire',
  room_C: 21,
}
const stated = { most_mΩ: 40, method: { kind: 'two-pulse' } } as const
const reasons = (changed: Partial<MeasuredResistance>, against: Parameters<typeof compareResistance>[1] = stated) => {
  const found = compareResistance({ ...good, ...changed }, against)
  return found.code === 'not-comparable' ? found.because.map(each => each.code) : found.code
}

test('like with like is judged in three zones', () => {
  expect(reasons({})).toBe('above')
  expect(reasons({ value_mΩ: 30 })).toBe('within')
  expect(reasons({ value_mΩ: 41 })).toBe('undecided')
})

test('anything else is no comparison, with every reason', () => {
  expect(reasons({ wiring: 'two-wire' })).toEqual(['not-four-wire'])
  expect(reasons({ wiring: 'unknown', room_C: null })).toEqual(['not-four-wire', 'temperature-unknown'])
  expect(reasons({ method: { kind: 'ac-1khz' } })).toEqual(['other-method'])
  expect(reasons({ room_C: 5 })).toEqual(['cold-room'])
  expect(reasons({ room_C: 35 })).toEqual(['warm-room'])
  const [short, long] = [{ kind: 'load-step', seconds: 1 } as const, { kind: 'load-step', seconds: 10 } as const]
  expect(reasons({ method: short }, { most_mΩ: 40, method: long })).toEqual(['other-step-length'])
  expect(reasons({ method: short }, { most_mΩ: 40, method: short })).toBe('above')
})
