// The curve to draw: under load only, over rising charge, ending at the capacity, short, with its gaps.
import { describe, expect, test } from 'vitest'
import type { Sample } from '../generate-log.ts'
import { discharge, styles, usualCell, writeLog } from '../generate-log.ts'
import { readLog } from '../read-log.ts'

const curveOf = (samples: readonly Sample[]) => {
  const reading = readLog(writeLog(styles[0]!, samples), { cutoff_V: 2.8 })
  if (!reading.ok) throw new Error(JSON.stringify(reading))
  return { run: reading.runs[0], curve: reading.runs[0].curve }
}

describe.each([60, 1])('sampled every %d s', every_s => {
  const samples = discharge({ ...usualCell, every_s })
  const { run, curve } = curveOf(samples)

  test('runs from the first to the last sample under load, in at most 400 points', () => {
    const loaded = samples.filter(sample => sample.I > 0)
    expect(curve.length).toBeLessThanOrEqual(400)
    expect(curve.length).toBeGreaterThan(100)
    expect(curve[0]).toMatchObject({ capacity_mAh: 0, voltage_V: loaded[0]!.V, temperature_C: loaded[0]!.T })
    expect(curve.at(-1)).toMatchObject({ voltage_V: loaded.at(-1)!.V })
    // The capacity also holds what flowed before the first and up to the cut-off after the last sample.
    expect(Math.abs(curve.at(-1)!.capacity_mAh - run.figures.capacity.value!)).toBeLessThan(every_s / 3.6)
  })

  test('never goes back', () => {
    for (const [at, point] of curve.entries()) {
      if (at > 0) expect(point.capacity_mAh).toBeGreaterThanOrEqual(curve[at - 1]!.capacity_mAh)
      expect(point.afterGap).toBe(false)
    }
  })
})

test('rests between pulses are left out', () => {
  const pulsed = discharge().map(sample =>
    Math.floor(sample.t / 600) % 3 === 2 ? { ...sample, I: 0, V: sample.V + 0.3 } : sample,
  )
  const { curve } = curveOf(pulsed)
  for (const [at, point] of curve.entries())
    if (at > 0) expect(point.voltage_V).toBeLessThanOrEqual(curve[at - 1]!.voltage_V)
})

test('a gap is marked at the point behind it', () => {
  const { curve } = curveOf(discharge().filter(sample => sample.t < 3000 || sample.t > 6000))
  expect(curve.filter(point => point.afterGap)).toHaveLength(1)
  const at = curve.findIndex(point => point.afterGap)
  expect(curve[at]!.capacity_mAh - curve[at - 1]!.capacity_mAh).toBeGreaterThan(800)
})
