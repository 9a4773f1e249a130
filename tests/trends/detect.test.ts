// Detection on a brought series agrees with the library it can be held against, and refuses what is no series.
import { expect, test } from 'vitest'
import { detect } from '../../src/trends/detect.ts'
import { mineTable } from '../../src/trends/patterns/mine-table.ts'
import { lrCusum, observed } from './rises/cusum-figures.ts'
import { bounds, observed as sparse, zerosThenSmall } from './rises/spike-figures.ts'

const detected = (series: Parameters<typeof detect>[0]) => {
  const result = detect(series)
  if (!result.ok) throw new Error(result.refusal.code)
  return result.detected
}

test.each(lrCusum)(
  'lr-cusum with given expectations: $name',
  ({ mu0, theta, spread, threshold, statistic, alarms }) => {
    const form =
      spread === null ? ({ scatter: 'poisson' } as const) : ({ scatter: 'negative-binomial', spread } as const)
    const found = detected({ method: 'lr-cusum', observed, expected: mu0, kappa: Math.exp(theta), threshold, ...form })
    expect(found.alarms).toEqual(alarms)
    for (const [i, value] of found.statistic.entries()) expect(value).toBeCloseTo(statistic[i]!, 9)
  },
)

test.each(bounds)('spike with the weeks just before: $series, $w weeks, alpha $alpha', b => {
  const counts = b.series === 'observed' ? sparse : zerosThenSmall
  const found = detected({ method: 'spike', observed: counts, level: b.alpha, weeks: b.w, gap: 1 })
  expect(found.expected.slice(b.from - 1, b.from - 1 + b.upperbound.length)).toEqual(b.upperbound)
  expect(found.expected.slice(0, b.from - 1)).toEqual(new Array(b.from - 1).fill(null))
  expect(found.alarms).toEqual(b.alarms)
})

test('expectations from the weeks before follow the checks; thirteen weeks are not judged', () => {
  const checks = Array.from({ length: 30 }, (_, t) => 20 + 10 * t)
  const found = detected({ method: 'lr-cusum', observed: checks.map(n => n / 10), checks })
  expect(found.statistic.slice(0, 13)).toEqual(new Array(13).fill(null))
  expect(found.alarms).toEqual([])
  // (Σ failed + ½)/Σ checks of weeks 1 to 16, times the checks of week 20.
  const sum = checks.slice(0, 16).reduce((a, b) => a + b)
  expect(found.expected[19]).toBeCloseTo(((sum / 10 + 0.5) / sum) * checks[19]!, 12)
  const flat = detected({ method: 'lr-cusum', observed: checks.map(n => n / 10) })
  expect(flat.alarms.length).toBeGreaterThan(0)
})

test.each([
  [
    { method: 'lr-cusum', observed: [1, -1] },
    { code: 'not-counts', field: 'observed', week: 2 },
  ],
  [
    { method: 'lr-cusum', observed: [1, 0.5] },
    { code: 'not-counts', field: 'observed', week: 2 },
  ],
  [
    { method: 'spike', observed: [1, 2], checks: [1] },
    { code: 'other-length', field: 'checks', weeks: 1, of: 2 },
  ],
  [
    { method: 'lr-cusum', observed: [1], expected: [Number.NaN] },
    { code: 'not-counts', field: 'expected', week: 1 },
  ],
  [
    { method: 'lr-cusum', observed: [1], kappa: 1 },
    { code: 'out-of-range', field: 'kappa', least: 1.01, most: 100 },
  ],
  [
    { method: 'spike', observed: [1], level: 0 },
    { code: 'out-of-range', field: 'level', least: 1e-12, most: 0.5 },
  ],
  [
    { method: 'spike', observed: new Array(10_001).fill(0) },
    { code: 'too-long', weeks: 10_001, most: 10_000 },
  ],
] as const)('what is no series is refused', (series, refusal) => {
  expect(detect(series)).toEqual({ ok: false, refusal })
})

test('a thousand million a week is the most there can be', () => {
  expect(detect({ method: 'spike', observed: [1e9] })).toMatchObject({ ok: true })
  expect(detect({ method: 'spike', observed: [0, 1e9 + 1] })).toEqual({
    ok: false,
    refusal: { code: 'not-counts', field: 'observed', week: 2 },
  })
})

test.each([
  ['spike', 'level', 1e-12, 0.5],
  ['spike', 'weeks', 1, 520],
  ['spike', 'gap', 1, 52],
  ['lr-cusum', 'kappa', 1.01, 100],
  ['lr-cusum', 'threshold', 0.01, 1000],
  ['lr-cusum', 'spread', 1e-9, 100],
] as const)('%s: %s from %d to %d', (method, field, least, most) => {
  const tried = (value: number) => detect({ method, observed: [1, 2], [field]: value } as Parameters<typeof detect>[0])
  for (const value of [least, most]) expect(tried(value)).toMatchObject({ ok: true })
  for (const value of [least * 0.99, most * 1.01, Number.NaN])
    expect(tried(value)).toEqual({ ok: false, refusal: { code: 'out-of-range', field, least, most } })
})

test('a table that is none is refused, and a good one mined', () => {
  const row = { items: ['a'], recent: true }
  const old = { items: ['b'], recent: false }
  expect(mineTable([row, old]).ok).toBe(true)
  expect(mineTable([])).toMatchObject({ refusal: { code: 'one-sided' } })
  expect(mineTable([row, row])).toMatchObject({ refusal: { code: 'one-sided', recent: 2, earlier: 0 } })
  expect(mineTable([row, { items: [''], recent: false }])).toMatchObject({ refusal: { code: 'not-an-item', row: 2 } })
  for (const bad of ['x'.repeat(201), 7 as unknown as string])
    expect(mineTable([{ items: ['a', bad], recent: true }, old])).toMatchObject({
      refusal: { code: 'not-an-item', row: 1 },
    })
  expect(mineTable([{ items: ['x'.repeat(200)], recent: true }, old]).ok).toBe(true)
  expect(mineTable([row, old], { largest: 4 })).toMatchObject({ refusal: { code: 'out-of-range', field: 'largest' } })
  const wide = { items: Array.from({ length: 151 }, (_, i) => `i${i}`), recent: true }
  expect(mineTable([wide, old])).toMatchObject({ refusal: { code: 'too-many', what: 'items', count: 152 } })
})
