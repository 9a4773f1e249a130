// What is said of figures that stop counting soon: half a year before their last day, by pack and day.
import { expect, test } from 'vitest'
import { ageingSoon } from '../../src/packs/ageing.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'

const packs = (await loadPacks(shippedRules, { cases: false })).packs.map(loaded => loaded.pack)

test('nothing is said while every figure holds for more than half a year', () => {
  expect(ageingSoon(packs, '2026-11-29')).toEqual([])
})

test('half a year before their last day the signs that will fall silent are named, and no must among them', () => {
  const [soon, ...others] = ageingSoon(packs, '2028-07-02')
  expect(others).toEqual([])
  expect(soon).toMatchObject({ pack: 'any-cell', day: '2028-12-31' })
  expect(soon?.rules).toContain('claim-beyond-18650')
  const musts = packs.flatMap(pack => pack.rules.filter(rule => rule.kind === 'must').map(rule => rule.id))
  expect(soon?.rules.filter(id => musts.includes(id))).toEqual([])
  expect(ageingSoon(packs, '2028-06-30')).toEqual([])
})

test('what has stopped counting is still named', () => {
  expect(ageingSoon(packs, '2031-01-01').length).toBe(1)
})
