// The back-test: three words and no number, held so that padding it with one's own checks tells of nobody else's.
import { createHmac } from 'node:crypto'
import { expect, test } from 'vitest'
import { derive } from '../../src/families/derive/derive.ts'
import type { Facts } from '../../src/families/facts/facts-schema.ts'
import type { Tested } from '../../src/families/family-store.ts'
import { backTest, inHalf, inWords } from '../../src/families/weigh/back-test.ts'
import { anyCell, compileFamily } from './base.ts'
import { unnamedFamilies } from './known-families.ts'

const reporter = (who: string) => createHmac('sha256', 'a key that nobody has, of 32 bytes').update(who).digest('hex')
const programOf = (facts: Facts) => {
  const derived = derive(facts, anyCell)
  if (!derived.ok) throw new Error('it does not derive')
  const compiled = compileFamily(derived.pack)
  if (!compiled.ok) throw new Error('it does not compile')
  return compiled.program
}
const facts = unnamedFamilies['unnamed-18650-c'] as Facts
const before = programOf({ ...facts, traits: { ...facts.traits, legs: { made: [], against: [], remarks: [] } } })
const after = programOf(facts)
const outcome = (i: number, legs: string): Tested => ({
  reporter: reporter(`p${i}`),
  options: { legs },
  verdict: 'open',
  fired: [],
})
const ask = (outcomes: readonly Tested[], hidden = 'a1b2c3d4') => backTest(outcomes, before, after, hidden)

test('says nothing of fewer than twenty in its half', () => {
  const many = Array.from({ length: 200 }, (_, i) => outcome(i, 'three'))
  const half = many.filter(inHalf)
  expect(half.length).toBeGreaterThan(70)
  expect(half.length).toBeLessThan(130)
  expect(ask(half.slice(0, 19))).toEqual({ ok: false, why: 'too-few-checks' })
  expect(ask(half.slice(0, 20))).toEqual({ ok: true, change: 'few' })
})

test('counts what would come out otherwise, in few, some and many', () => {
  const half = Array.from({ length: 400 }, (_, i) => outcome(i, 'three')).filter(inHalf)
  const withFour = (count: number) => half.map((one, i) => (i < count ? { ...one, options: { legs: 'four' } } : one))
  expect(ask(withFour(0))).toEqual({ ok: true, change: 'few' })
  expect(ask(withFour(12))).toEqual({ ok: true, change: 'some' })
  expect(ask(withFour(60))).toEqual({ ok: true, change: 'many' })
})

test('what was dangerous, or impossible by a figure that is not kept, comes out as it did whatever its looks', () => {
  const half = Array.from({ length: 400 }, (_, i) => outcome(i, 'four')).filter(inHalf)
  const judged = (verdict: Tested['verdict'], fired: string) => half.map(one => ({ ...one, verdict, fired: [fired] }))
  expect(ask(half)).toEqual({ ok: true, change: 'many' })
  expect(ask(judged('danger', 'torn-wrap'))).toEqual({ ok: true, change: 'few' })
  expect(ask(judged('ruled-out', 'capacity-impossible-18650'))).toEqual({ ok: true, change: 'few' })
})

test('the same question has the same answer, and the border lies elsewhere for another', () => {
  const borders = new Set<number>()
  for (let i = 0; i < 200; i++) {
    const hidden = reporter(`question ${i}`)
    let first = 0
    while (inWords(first, hidden) === 'few') first++
    borders.add(first)
    expect(inWords(first, hidden)).toBe(inWords(first, hidden))
  }
  // Whoever has padded a count to where they think the border lies learns from one answer no more than a coin's worth.
  expect(borders.size).toBeGreaterThanOrEqual(4)
  expect(Math.min(...borders)).toBeGreaterThanOrEqual(3)
})

test('padding to one below a border does not tell whether one more check is there', () => {
  // An attacker of four checks in the half asks six times a week, each time another question; the target's check is there or not.
  let right = 0
  const trials = 400
  for (let t = 0; t < trials; t++) {
    const there = t % 2 === 0
    // Six questions, each with a border of its own; the guess is by how often it says more than few.
    const some = Array.from({ length: 6 }, (_, q) => inWords(4 + (there ? 1 : 0), reporter(`${t} ${q}`))).filter(
      one => one !== 'few',
    ).length
    if (some >= 4 === there) right++
  }
  // Better than a coin, and far from sure: the fixed half hides two checks of four besides.
  expect(right / trials).toBeLessThan(0.8)
})
