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

test('a table is as long and as wide as it may be, and the figures of its search reach as far as they say', () => {
  const row = { items: ['a'], recent: true }
  const old = { items: ['b'], recent: false }
  const rows = (count: number) => [old, ...Array.from({ length: count - 1 }, () => row)]
  expect(mineTable(rows(200_000)).ok).toBe(true)
  expect(mineTable(rows(200_001))).toEqual({
    ok: false,
    refusal: { code: 'too-many', what: 'rows', count: 200_001, most: 200_000 },
  })
  const wide = (count: number) => Array.from({ length: count }, (_, i) => `i${i}`)
  expect(
    mineTable(
      [
        { items: wide(150), recent: true },
        { items: ['i0'], recent: false },
      ],
      { largest: 1 },
    ).ok,
  ).toBe(true)
  expect(
    mineTable([
      { items: wide(151), recent: true },
      { items: ['i0'], recent: false },
    ]),
  ).toEqual({
    ok: false,
    refusal: { code: 'too-many', what: 'items', count: 151, most: 150 },
  })
  expect(mineTable([old, old])).toEqual({ ok: false, refusal: { code: 'one-sided', recent: 0, earlier: 2 } })
})

test.each([
  ['largest', 1, 3],
  ['leastSupport', 1, 200_000],
  ['level', 1e-12, 0.5],
] as const)('a search: %s from %d to %d', (field, least, most) => {
  const rows = [
    { items: ['a'], recent: true },
    { items: ['b'], recent: false },
  ]
  for (const value of [least, most]) expect(mineTable(rows, { [field]: value }).ok).toBe(true)
  for (const value of [least * 0.5, most * 1.5, Number.NaN])
    expect(mineTable(rows, { [field]: value })).toEqual({
      ok: false,
      refusal: { code: 'out-of-range', field, least, most },
    })
  // Only a level is anything but a whole number.
  expect(mineTable(rows, { [field]: (least + most) / 2 - (field === 'largest' ? 0.5 : 0) }).ok).toBe(field === 'level')
})

test('a table is mined with the figures that were asked for', () => {
  const rows = Array.from({ length: 40 }, (_, i) => ({ items: i < 10 ? ['a', 'b'] : ['c'], recent: i < 12 }))
  const mined = (options: object) => {
    const result = mineTable(rows, options)
    return result.ok ? result.mined.patterns.map(one => one.generators) : []
  }
  expect(mined({ leastSupport: 11 })).toEqual([[['c']]])
  expect(mined({})).toEqual([[['a'], ['b']], [['c']]])
})

test('a watch takes what is usual where nothing is said: doubling, four, and Poisson', () => {
  const counts = [1, 0, 2, 1, 3, 4, 6]
  const expected = counts.map(() => 1)
  const usual = detected({ method: 'lr-cusum', observed: counts, expected })
  const said = { kappa: 2, threshold: 4, scatter: 'poisson' } as const
  expect(detected({ method: 'lr-cusum', observed: counts, expected, ...said })).toEqual(usual)
  const scattered = detected({ method: 'lr-cusum', observed: counts, expected, scatter: 'negative-binomial' })
  const wide = { scatter: 'negative-binomial', spread: 0.3 } as const
  expect(detected({ method: 'lr-cusum', observed: counts, expected, ...wide })).toEqual(scattered)
  expect(scattered).not.toEqual(usual)
  const wider = detected({ method: 'lr-cusum', observed: counts, expected, ...wide, spread: 3 })
  expect(wider).not.toEqual(scattered)
  // A spread means nothing where chance alone is counted with.
  expect(detected({ method: 'lr-cusum', observed: counts, expected, spread: 3 })).toEqual(usual)
})

test('a spike takes what is usual where nothing is said: 26 weeks that end three weeks back, and a level of 0.5 %', () => {
  const counts = Array.from({ length: 40 }, (_, t) => (t === 35 ? 9 : t % 3))
  const usual = detected({ method: 'spike', observed: counts })
  expect(detected({ method: 'spike', observed: counts, weeks: 26, gap: 3, level: 0.005 })).toEqual(usual)
  expect(usual).toMatchObject({ statistic: counts, alarms: [36] })
  expect(usual.expected.findIndex(bound => bound !== null)).toBe(28)
  expect(detected({ method: 'spike', observed: counts, checks: counts.map((_, t) => (t < 5 ? 1 : 0)) }).alarms).toEqual(
    [],
  )
})

test('a series that is too short to judge has nothing to say', () => {
  const short = Array.from({ length: 13 }, () => 1)
  expect(detected({ method: 'lr-cusum', observed: short })).toEqual({
    ...{ statistic: short.map(() => null), expected: short.map(() => null), alarms: [] },
  })
  expect(detected({ method: 'lr-cusum', observed: [...short, 1] }).statistic[13]).toBeTypeOf('number')
})

test.each([
  [
    { observed: [1, 2], checks: [1, 0.5] },
    { code: 'not-counts', field: 'checks', week: 2 },
  ],
  [
    { observed: [1, 2], expected: [1] },
    { code: 'other-length', field: 'expected', weeks: 1, of: 2 },
  ],
  [
    { observed: [1, 2], expected: [-1, 1] },
    { code: 'not-counts', field: 'expected', week: 1 },
  ],
  [{ observed: [1, 2], expected: [0.5, 1] }, undefined],
  [{ observed: [1, Number.POSITIVE_INFINITY] }, { code: 'not-counts', field: 'observed', week: 2 }],
])('%j: %j', (series, refusal) => {
  expect(detect({ method: 'lr-cusum', ...series })).toMatchObject(refusal ? { ok: false, refusal } : { ok: true })
})
