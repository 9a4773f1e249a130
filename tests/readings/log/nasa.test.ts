// Measured discharges of the NASA Ames Prognostics Center of Excellence battery data set, cell B0005 (2007).
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { readLog } from '../read-log.ts'

const folder = new URL('../../../../shared/datasets/nasa-b0005/', import.meta.url)
const files = existsSync(folder) ? readdirSync(folder).filter(name => name.endsWith('.csv')) : []
const absent = files.length === 0
if (absent) console.warn('SKIPPED: the NASA discharges are not beside the project (../shared/datasets/nasa-b0005)')

describe.skipIf(absent)('discharged at 2 A to 2.7 V at 24 °C; the recorded capacity stands in the name', () => {
  test.each(files)('%s within 1 %%', name => {
    const recorded = Number(/recorded-([\d.]+)Ah/.exec(name)?.[1]) * 1000
    const reading = readLog(readFileSync(new URL(name, folder)), { cutoff_V: 2.7 })
    if (!reading.ok) throw new Error(JSON.stringify(reading))
    expect(reading.found).toMatchObject({
      sign: 'negative',
      columns: { time: { label: 'discharge_time' }, voltage: { label: 'voltage' }, current: { label: 'current' } },
      units: { time: 's', voltage: 'V', current: 'A' },
    })
    const { capacity, meanCurrent } = reading.runs[0].figures
    expect(capacity.value! / recorded).toBeGreaterThan(0.99)
    expect(capacity.value! / recorded).toBeLessThan(1.01)
    // The recorded figure lies within the expanded uncertainty, too.
    expect(Math.abs(capacity.value! - recorded)).toBeLessThan(2 * capacity.u)
    expect(meanCurrent.value).toBeCloseTo(2.01, 1)
  })
})

// Always: the first three samples of cycle 1 with their seventeen digits are read exactly.
test('numbers with all digits of a computer are read exactly', () => {
  const text = [
    'voltage,current,temperature,current_load,voltage_load,discharge_time,ic',
    '4.191491807505295,-0.004901589207462691,24.330033885570543,-0.0006,0.0,0.0,45186.75746150609',
    '4.190749067776103,-0.0014780055516425076,24.325993424022467,-0.0006,4.206,16.781,175.3025909650971',
    ...Array.from(
      { length: 160 },
      (_, n) => `${3.97 - n / 160},-2.0125285240860368,24.4,-1.9982,3.062,${35 + n * 18},1`,
    ),
  ].join('\n')
  const reading = readLog(new TextEncoder().encode(text))
  expect(reading.ok && reading.runs[0].figures.startRestVoltage?.value).toBe(4.190749067776103)
})
