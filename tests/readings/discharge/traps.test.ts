// Every trap is noticed when it is there and kept quiet when it is not, and unfinished discharges are only bounds.
import { describe, expect, test } from 'vitest'
import type { MeasureOptions } from '../../../src/readings/discharge/measure-options.ts'
import { measureRun } from '../../../src/readings/discharge/measure-run.ts'
import { phasesOf, runsOf } from '../../../src/readings/discharge/phases.ts'
import { discharge, type Sample, usualCell } from '../generate-log.ts'
import { traceOf } from './reference.ts'

const column = (samples: readonly Sample[], key: keyof Sample) => samples.map(sample => sample[key])
const measure = (samples: readonly Sample[], options: Partial<MeasureOptions> = {}, withTemperature = true) => {
  const T = withTemperature ? column(samples, 'T') : undefined
  const trace = traceOf(column(samples, 't'), column(samples, 'V'), column(samples, 'I'), T)
  const [run] = runsOf(phasesOf(trace, []), [])
  return measureRun(trace, run!, { instrument: { kind: 'lab-load' }, cutoff_V: 2.8, ...options })
}
const codes = (...given: Parameters<typeof measure>) => measure(...given).traps.map(trap => trap.code)

const good = discharge()
/** A good log rested for hours before the load. */
const rested = [{ t: -7200, V: 4.172, I: 0, T: 22.4 }, ...good].map(sample => ({ ...sample, t: sample.t + 7200 }))
const loaded = good.filter(sample => sample.I > 0)

test('a clean discharge has no traps', () => {
  expect(codes(rested)).toEqual([])
})

test('stopped above the cut-off: only a lower bound', () => {
  const stopped = [...rested.filter(sample => sample.I === 0 || sample.V > 3.4), { t: 40_000, V: 3.5, I: 0, T: 25 }]
  const early = stopped.filter((sample, at) => sample.I > 0 || at < 10 || sample.t === 40_000)
  const reading = measure(early)
  expect(reading.cutoff.state).toBe('not-reached')
  expect(reading.traps[0]).toMatchObject({ code: 'stopped-above-cutoff', cutoff_V: 2.8 })
  expect(reading.figures.capacity.interval).toMatchObject({ to: null })
  expect(reading.figures.capacity.notes).toContainEqual({ code: 'lower-bound', because: 'stopped-above-cutoff' })
})

test('without a cut-off, a load that ends above every usual one was stopped early as well', () => {
  const reading = measure(
    loaded.filter(sample => sample.V > 3.4).map((s, at) => ({ ...s, t: at * 60 })),
    {},
  )
  expect(reading.cutoff.state).toBe('not-reached')
  const { cutoff_V: _, ...without } = { instrument: { kind: 'lab-load' } as const, cutoff_V: 0 }
  const trace = traceOf(
    column(loaded, 't').slice(0, 100),
    column(loaded, 'V').slice(0, 100),
    column(loaded, 'I').slice(0, 100),
  )
  const open = measureRun(trace, runsOf(phasesOf(trace, []), [])[0]!, without)
  expect(open.cutoff.state).toBe('none-given')
  expect(open.traps.map(trap => trap.code)).toContain('stopped-above-cutoff')
  expect(open.figures.capacity.interval).toMatchObject({ to: null })
})

test('a load that ran on below the cut-off counts only to it', () => {
  const reading = measure(rested, { cutoff_V: 3.2 })
  expect(reading.traps).toContainEqual({
    code: 'wrong-cutoff',
    endVoltage_V: reading.figures.endVoltage.value,
    cutoff_V: 3.2,
    countedTo_V: 3.2,
  })
  expect(reading.figures.capacity.value!).toBeLessThan(measure(rested).figures.capacity.value!)
})

test('without a cut-off, a load that ends below every usual one counted too much', () => {
  const deep = rested.map(sample => ({ ...sample, V: sample.V < 2.9 ? sample.V - 0.6 : sample.V }))
  const of = (key: keyof Sample) => column(deep, key)
  const trace = traceOf(of('t'), of('V'), of('I'), of('T'))
  const open = measureRun(trace, runsOf(phasesOf(trace, []), [])[0]!, { instrument: { kind: 'lab-load' } })
  expect(open.traps).toContainEqual(expect.objectContaining({ code: 'wrong-cutoff', cutoff_V: 2.5 }))
})

test('a load that stops by itself between two samples has reached its cut-off', () => {
  // The last sample under load reads 2.83 V and falls by more than 30 mV a minute.
  const samples = rested.filter(sample => sample.I === 0 || sample.V > 2.81)
  const reading = measure(samples)
  expect(reading.cutoff.state).toBe('reached-at-end')
  expect(reading.traps.map(trap => trap.code)).not.toContain('stopped-above-cutoff')
})

test('not full at the start', () => {
  const half = rested.filter(sample => sample.I === 0 || sample.V < 3.8).map(s => (s.V > 4.1 ? { ...s, V: 3.86 } : s))
  const reading = measure(half)
  expect(reading.traps.map(trap => trap.code)).toContain('not-full-at-start')
  expect(reading.figures.capacity.interval?.to).toBeNull()
  expect(codes(half, { full_V: 3.9 })).not.toContain('not-full-at-start')
})

test('a log that begins under load, full or not', () => {
  expect(codes(loaded)).not.toContain('starts-under-load')
  expect(codes(loaded.filter(sample => sample.V < 3.9))).toContain('starts-under-load')
})

test('one bad contact is not the cut-off', () => {
  const glitch = rested.map((sample, at) => (at === 60 ? { ...sample, V: 0.4 } : sample))
  expect(measure(glitch).figures.capacity.value! / measure(rested).figures.capacity.value!).toBeCloseTo(1, 6)
})

test('deep discharge, heat, cold and warm rooms, missing temperature', () => {
  expect(codes([...rested.slice(0, -20), { t: 30_000, V: 1.8, I: 1, T: 30 }])).toContain('over-discharged')
  expect(codes(rested.map(sample => ({ ...sample, T: sample.T + 35 })))).toContain('too-hot')
  expect(codes(rested.map(sample => ({ ...sample, T: sample.T - 10 })))).toContain('cold-room')
  expect(codes(rested.map(sample => ({ ...sample, T: sample.T + 8 })))).toContain('warm-room')
  expect(codes(rested, {}, false)).toEqual(['temperature-missing'])
  expect(codes(rested, { room_C: 12 }, false)).toEqual(['cold-room'])
})

test('the rise is a difference of one sensor, so a third of its accuracy is left', () => {
  const { startTemperature, temperatureRise } = measure(rested).figures
  expect(startTemperature).toMatchObject({ value: 22.4, unit: '°C', u: 2 / Math.sqrt(3) })
  expect(temperatureRise?.value).toBeCloseTo(8.9, 1)
  expect(temperatureRise?.u).toBeCloseTo(2 / Math.sqrt(3) / 3, 12)
})

test('a load too light to tell anything, and one that is not constant', () => {
  expect(codes(rested, { claimed_mAh: 9900 })).toContain('current-too-low')
  expect(codes(rested, { claimed_mAh: 3000 })).not.toContain('current-too-low')
  expect(codes(rested.map(sample => ({ ...sample, I: (sample.I * sample.V) / 3.6 })))).toContain('current-not-constant')
})

test('few samples', () => {
  const sparse = discharge({ ...usualCell, every_s: 900 })
  expect(codes(sparse)).toContain('coarse-sampling')
})

describe('two wires', () => {
  const every = discharge({ ...usualCell, every_s: 1 }).slice(0, 600)
  test('the resistance holds the leads, unless four wires are declared', () => {
    const reading = measure(every)
    expect(reading.traps.map(trap => trap.code)).toContain('two-wire-resistance')
    expect(reading.figures.resistance?.value).toBeCloseTo(60, 0)
    expect(reading.figures.resistance?.notes).toContainEqual({ code: 'includes-leads' })
    expect(codes(every, { wiring: 'four-wire' })).not.toContain('two-wire-resistance')
  })

  test('a sensor that lies beside the cell', () => {
    const strong = discharge({ ...usualCell, current_A: 5, resistance_mΩ: 60, every_s: 1 })
    expect(codes(strong.map(sample => ({ ...sample, T: 22 })))).toContain('temperature-hardly-moved')
    expect(codes(strong)).not.toContain('temperature-hardly-moved')
  })
})
