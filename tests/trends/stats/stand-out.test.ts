// Benjamini and Hochberg's procedure against their own example.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { adjustBh, standOut } from '../../../src/trends/stats/stand-out.ts'

// Benjamini & Hochberg 1995, JRSS B 57:289-300, section 3.2 (fifteen p-values of Neuhaus et al. 1992).
const p = [
  0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528, 0.759, 1,
]
// R 4.2.2 p.adjust(p, "BH"); statsmodels 0.13.5 multipletests(method = "fdr_bh") agrees.
const adjusted = [
  0.0015, 0.003, 0.0095, 0.035625, 0.0603, 0.0638571428571429, 0.0638571428571429, 0.0645, 0.0765, 0.486,
  0.581181818181818, 0.714875, 0.753230769230769, 0.813214285714286, 1,
]

test('the four hypotheses they reject at 0.05, and no other', () => {
  expect(standOut(p, 0.05)).toEqual(p.map((_, i) => i < 4))
})

test('adjusted as p.adjust does', () => {
  for (const [i, value] of adjustBh(p).entries()) expect(value).toBeCloseTo(adjusted[i] ?? Number.NaN, 12)
})

test('nothing to adjust, nothing adjusted', () => {
  expect(standOut([])).toEqual([])
})

test('the order of the tests changes nothing, and no adjusted p is smaller', () => {
  const chances = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 30 })
  fc.assert(
    fc.property(chances, list => {
      const there = adjustBh(list)
      const back = adjustBh([...list].reverse()).reverse()
      for (const [i, value] of there.entries()) {
        expect(value).toBeCloseTo(back[i] ?? Number.NaN, 12)
        expect(value).toBeGreaterThanOrEqual(list[i]! - 1e-15)
      }
    }),
  )
})
