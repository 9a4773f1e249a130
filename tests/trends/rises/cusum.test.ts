// The likelihood-ratio CUSUM against R's surveillance, and its run lengths against arlCusum by way of a Markov chain.
import { expect, test } from 'vitest'
import { baselineOf, expectedOf } from '../../../src/trends/rises/baseline.ts'
import { cusumStep, runCusum, usualWatch } from '../../../src/trends/rises/cusum.ts'
import { dispersionOf } from '../../../src/trends/rises/scatter.ts'
import { lrCusum, observed, runLengths } from './cusum-figures.ts'

test.each(lrCusum)('$name', ({ mu0, theta, spread, threshold, statistic, alarms }) => {
  const scatter = spread === null ? ({ form: 'poisson' } as const) : ({ form: 'negative-binomial', spread } as const)
  const run = runCusum(observed, mu0, { kappa: Math.exp(theta), threshold }, scatter)
  for (const [i, value] of run.statistic.entries()) expect(Math.abs(value - statistic[i]!)).toBeLessThan(1e-9)
  expect(run.alarm.flatMap((alarm, i) => (alarm ? [i + 1] : []))).toEqual(alarms)
})

// A Poisson LR-CUSUM is the classic one with k = μ(κ−1)/ln κ and h in units of ln κ (Lucas 1985, Technometrics 27:129–144; from
// memory), so arlCusum's run lengths hold for it. Brook & Evans 1972, Biometrika 59:539–549: the statistic as a Markov chain.
test.each(runLengths)('mean run length at rate $theta with k = $k and h = $h', ({ theta, k, h, arl }) => {
  const kappa = 2
  const unit = Math.log(kappa)
  const mu = (k * unit) / (kappa - 1)
  const size = h
  const stay = Array.from({ length: size }, () => new Array<number>(size).fill(0))
  for (let from = 0; from < size; from++) {
    for (let x = 0, chance = Math.exp(-theta); x <= h + k; x++, chance *= theta / x) {
      const to = Math.round(cusumStep(from * unit, x, mu, kappa, { form: 'poisson' }) / unit)
      if (to < size) stay[from]![to]! += chance
    }
  }
  expect(Math.abs(meanRunLength(stay) / arl - 1)).toBeLessThan(1e-8)
})

test('a negative binomial with hardly any spread is a Poisson', () => {
  const narrow = { form: 'negative-binomial', spread: 1e-7 } as const
  const mu = observed.map(() => 1.2)
  const poisson = runCusum(observed, mu).statistic
  for (const [i, s] of runCusum(observed, mu, usualWatch, narrow).statistic.entries())
    expect(s).toBeCloseTo(poisson[i]!, 5)
})

/** Solves (I − stay)·m = 1 by elimination; m of the first state. */
function meanRunLength(stay: readonly (readonly number[])[]): number {
  const a = stay.map((row, i) => [...row.map((v, j) => (i === j ? 1 : 0) - v), 1])
  for (let i = 0; i < a.length; i++) {
    const pivot = a[i]!
    for (let r = i + 1; r < a.length; r++) {
      const factor = a[r]![i]! / pivot[i]!
      for (let c = i; c <= a.length; c++) a[r]![c]! -= factor * pivot[c]!
    }
  }
  const m = new Array<number>(a.length).fill(0)
  for (let i = a.length - 1; i >= 0; i--) {
    const known = m.reduce((sum, value, j) => sum + (j > i ? a[i]![j]! * value : 0), 0)
    m[i] = (a[i]![a.length]! - known) / a[i]![i]!
  }
  return m[0]!
}

test('an alarm is from the threshold on, and the watch then starts from nothing', () => {
  const step = Math.log(2)
  const watch = { kappa: 2, threshold: 2 * step }
  // Each failure where none is expected is one step.
  expect(runCusum([1, 1, 1, 0], [0, 0, 0, 0], watch)).toEqual({
    statistic: [step, 2 * step, step, step],
    alarm: [false, true, false, false],
  })
  expect(runCusum([1], [], watch).statistic).toEqual([step])
  expect(cusumStep(1, 0, 5, 2, { form: 'poisson' })).toBe(0)
})

test('where nothing was checked before, nothing is expected; what was seen carries over as a share', () => {
  expect(expectedOf({ failed: 0, checks: 0, weeks: [] }, 10)).toBeUndefined()
  expect(expectedOf({ failed: 3, checks: 70, weeks: [] }, 10)).toBe(0.5)
  const series = Array.from({ length: 70 }, (_, i) => i)
  const { weeks, failed, checks } = baselineOf(
    series,
    series.map(() => 1),
    60,
  )
  expect([weeks.length, weeks[0]?.failed, weeks.at(-1)?.failed]).toEqual([52, 5, 56])
  expect([failed, checks]).toEqual([((5 + 56) * 52) / 2, 52])
  expect(baselineOf(series, series, 6).weeks.map(week => week.failed)).toEqual([0, 1, 2])
  expect(baselineOf(series, series, 10, 1, 3).weeks.map(week => week.failed)).toEqual([7, 8, 9])
  expect(baselineOf(series, series, 3).weeks).toEqual([])
})

test('scatter needs two weeks with checks; by their checks, not by weeks, failures are expected', () => {
  const of = (...weeks: [number, number][]) =>
    dispersionOf({
      failed: weeks.reduce((sum, [x]) => sum + x, 0),
      checks: weeks.reduce((sum, [, n]) => sum + n, 0),
      weeks: weeks.map(([failed, checks]) => ({ failed, checks })),
    })
  expect(of([9, 10])).toMatchObject({ freedom: 0, p: 1 })
  expect(of([9, 10], [0, 0])).toMatchObject({ freedom: 0, p: 1 })
  // 2 and 8 expected of 10 and 40 checks with 10 failures: 4/2 + 4/8.
  expect(of([4, 10], [6, 40]).statistic).toBeCloseTo(2.5, 12)
  expect(of([4, 10], [6, 40]).freedom).toBe(1)
  // Chi-squared of 2.5 with one degree of freedom (SciPy 1.10.1 chi2.sf).
  expect(of([4, 10], [6, 40]).p).toBeCloseTo(0.11384629800665805, 10)
  expect(of([0, 10], [0, 10])).toMatchObject({ statistic: 0, freedom: 1, p: 1 })
})
