// Wilson's interval against R and against Newcombe's published table.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { wilson } from '../../../src/trends/stats/wilson.ts'

// R 4.2.2, prop.test(k, n, conf.level, correct = FALSE); statsmodels 0.13.5 proportion_confint(method = "wilson") agrees to 2e-15.
const byR = [
  [81, 263, 0.95, 0.255288519878274, 0.3662095769828],
  [81, 263, 0.9, 0.263313617188481, 0.356566349608488],
  [15, 148, 0.95, 0.0623863995307363, 0.160487241723308],
  [15, 148, 0.9, 0.0674432622468715, 0.1495729317464],
  [0, 20, 0.95, 0, 0.161125158052819],
  [0, 20, 0.9, 0, 0.119157837360964],
  [1, 29, 0.95, 0.00611321429276266, 0.171755218793203],
  [1, 29, 0.9, 0.00773080797273802, 0.140683095132512],
  [0, 5, 0.95, 0, 0.434482464783175],
  [0, 5, 0.9, 0, 0.351116500765101],
  [5, 5, 0.95, 0.565517535216825, 1],
  [5, 5, 0.9, 0.648883499234899, 1],
  [1, 1, 0.95, 0.206549314377238, 1],
  [1, 1, 0.9, 0.269865948784054, 1],
  [3, 7, 0.95, 0.15821985525147, 0.749541635472343],
  [3, 7, 0.9, 0.186443190363956, 0.710522908986407],
  [8, 12, 0.95, 0.3906220888728, 0.861879908908787],
  [8, 12, 0.9, 0.431491613343348, 0.840514655074159],
  [2, 100, 0.95, 0.00550196755016236, 0.0700117907285439],
  [2, 100, 0.9, 0.00664064359501214, 0.0586483683568352],
] as const

test.each(byR)('%i of %i at %f as prop.test has it', (k, n, confidence, low, high) => {
  const interval = wilson(k, n, confidence)
  expect(Math.abs(interval.low - low)).toBeLessThan(1e-12)
  expect(Math.abs(interval.high - high)).toBeLessThan(1e-12)
})

// Newcombe 1998, Stat. Med. 17:857-872, method 3; table figures from memory.
test.each([
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
  [1, 29, 0.0061, 0.1718],
])('%i of %i as Newcombe tabulates it', (k, n, low, high) => {
  expect(wilson(k, n).low).toBeCloseTo(low, 4)
  expect(wilson(k, n).high).toBeCloseTo(high, 4)
})

test('mirrored counts give the mirrored interval, and the share lies inside', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 5000 }), fc.nat(5000), (n, some) => {
      const k = some % (n + 1)
      const { low, high } = wilson(k, n)
      const mirror = wilson(n - k, n)
      expect(low).toBeLessThanOrEqual(k / n)
      expect(high).toBeGreaterThanOrEqual(k / n)
      expect(mirror.high).toBeCloseTo(1 - low, 12)
    }),
  )
})
