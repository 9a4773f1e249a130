// One discharge written in many styles reads as the same figures, and the kept files are what the generator makes.
import { readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { LogReading } from '../../../src/readings/open-log.ts'
import { charge, discharge, styles, writeLog } from '../generate-log.ts'
import { outcome, readLog } from '../read-log.ts'

const samples = discharge()
const kept = (name: string) => new URL(`../logs/${name}.csv`, import.meta.url)

// REMAKE_LOGS=1 writes the files anew after the generator was changed on purpose.
if (process.env['REMAKE_LOGS']) for (const style of styles) writeFileSync(kept(style.name), writeLog(style, samples))

const figures = (reading: LogReading) => {
  if (!reading.ok) throw new Error(outcome(reading))
  const { capacity, energy, meanVoltage, duration, startRestVoltage, settledVoltage, endVoltage } =
    reading.runs[reading.largest]!.figures
  return {
    capacity: capacity.value!,
    u: capacity.u,
    energy: energy.value!,
    meanVoltage: meanVoltage.value!,
    duration: duration.value!,
    start: startRestVoltage!.value!,
    settled: settledVoltage!.value!,
    end: endVoltage.value!,
  }
}

const first = figures(readLog(writeLog(styles[0]!, samples), { cutoff_V: 2.8 }))

test('the figures themselves, against sums made by hand', () => {
  // 1.001 A in the mean of 1.000, 1.001, 1.002; see generate-log.ts.
  const loaded = samples.filter(sample => sample.I > 0)
  const seconds = loaded.at(-1)!.t - loaded[0]!.t
  expect(first.capacity).toBeGreaterThan((1.001 * seconds) / 3.6 - 20)
  expect(first.capacity).toBeLessThan((1.001 * (seconds + 60)) / 3.6)
  expect(first.start).toBe(4.172)
  expect(first.settled).toBeCloseTo(3.25, 3)
})

describe.each(styles.map(style => [style.name, style] as const))('%s', (name, style) => {
  const bytes = writeLog(style, samples)

  test('is kept as the generator makes it', () => {
    expect(Buffer.from(bytes).equals(readFileSync(kept(name)))).toBe(true)
  })

  test.each([65_536, 1000, 7])('gives the same figures, handed in by %d bytes', piece => {
    const these = figures(readLog(bytes, { cutoff_V: 2.8 }, piece))
    // Minutes and hours are written with nine decimals at most.
    for (const key of Object.keys(first) as (keyof typeof first)[])
      expect(these[key] / first[key], key).toBeCloseTo(1, 7)
  })
})

describe('several runs in one file', () => {
  const style = styles[0]!

  test('the clock starts again under a repeated header', () => {
    const reading = readLog(writeLog(style, samples, samples), { cutoff_V: 2.8 })
    expect(reading.ok && reading.runs.length).toBe(2)
    if (!reading.ok) return
    for (const run of reading.runs) expect(run.figures.capacity.value).toBeCloseTo(first.capacity, 6)
  })

  test('a header in the middle begins a run though the clock goes on, whatever slips came before', () => {
    const later = samples.map(sample => ({ ...sample, t: sample.t + 20_000 }))
    const text = new TextDecoder()
      .decode(writeLog(style, samples, later))
      .replace('\n60,4.172', '\n60,1e9')
      .replace('\n120,4.172', '\n120,1e9')
    const reading = readLog(new TextEncoder().encode(text), { cutoff_V: 2.8 })
    expect(reading.ok && [reading.found.brokenRows, reading.runs.length]).toEqual([2, 2])
    if (!reading.ok) return
    expect(reading.runs[1]!.starts_s).toBe(20_000)
    for (const run of reading.runs) expect(run.figures.capacity.value).toBeCloseTo(first.capacity, 6)
  })

  test('the clock starts again without any sign', () => {
    const reading = readLog(writeLog({ ...style, header: [] }, samples, samples), { cutoff_V: 2.8 })
    expect(reading.ok && reading.runs.length).toBe(2)
  })

  test.each(['plain-seconds', 'spanish-negative-current', 'unsigned-with-mode'])('a charge between them, %s', name => {
    const style = styles.find(each => each.name === name)!
    const charging = charge(samples.at(-1)!.t + 60)
    const again = samples.map(sample => ({ ...sample, t: sample.t + charging.at(-1)!.t + 60 }))
    const cells =
      name === 'unsigned-with-mode'
        ? style.cells.map((cell, at): typeof cell =>
            at === 2 ? s => (s.I < 0 ? 'CC_Chg' : cell(s, 0)) : at === 3 ? s => Math.abs(s.I).toFixed(3) : cell,
          )
        : style.cells
    const reading = readLog(writeLog({ ...style, cells }, [...samples, ...charging, ...again]), { cutoff_V: 2.8 })
    expect(outcome(reading)).toBe('read')
    if (!reading.ok) return
    expect(reading.runs.length).toBe(2)
    for (const run of reading.runs) expect(run.figures.capacity.value! / first.capacity).toBeCloseTo(1, 6)
  })
})

test('a second header row holds the units, and the names stay those of the first', () => {
  const reading = readLog(writeLog(styles.find(each => each.name === 'french-tab-units-row')!, samples))
  expect(reading.ok && reading.found).toMatchObject({
    preambleRows: 0,
    columns: { time: { label: 'Temps' }, voltage: { label: 'Tension' }, current: { label: 'Courant' } },
    units: { time: 'min', voltage: 'V', current: 'A' },
  })
})

test('what was found out is told', () => {
  const style = styles.find(each => each.name === 'german-semicolon')!
  const reading = readLog(writeLog(style, samples))
  expect(reading.ok && reading.found).toMatchObject({
    encoding: 'windows-1252',
    delimiter: ';',
    decimalMark: ',',
    preambleRows: 2,
    hasHeader: true,
    timeKind: 'clock',
    units: { time: 'clock', voltage: 'mV', current: 'mA' },
    sign: 'positive',
    brokenRows: 0,
    columns: { voltage: { column: 2, label: 'Spannung [mV]' }, temperature: { column: 4 } },
  })
})
