// What a log does not say is asked, with its first rows to answer from, and the answer is enough.
import { describe, expect, test } from 'vitest'
import type { LogOptions } from '../../../src/readings/open-log.ts'
import { discharge, type Sample, usualCell } from '../generate-log.ts'
import { outcome, readText } from '../read-log.ts'

const samples = discharge()
const table = (header: string | null, row: (s: Sample, at: number) => string, of: readonly Sample[] = samples) =>
  [...(header === null ? [] : [header]), ...of.map(row)].join('\n')
const capacity = (text: string, options: Partial<LogOptions> = {}) => {
  const read = readText(text, { cutoff_V: 2.8, ...options })
  if (!read.ok) throw new Error(JSON.stringify(read))
  return read.runs[0].figures.capacity.value!
}
const expected = capacity(table('Time (s),Voltage (V),Current (A)', s => `${s.t},${s.V},${s.I}`))

describe('units behind the numbers', () => {
  test('a meter that changes its range from row to row', () => {
    const ranged = (amperes: number) =>
      amperes < 1.001 ? `${(amperes * 1000).toFixed(0)} mA` : `${amperes.toFixed(3)} A`
    const text = table('Time (s),Voltage,Current', s => `${s.t},${s.V} V,${ranged(s.I)}`)
    expect(text).toContain('1000 mA')
    expect(text).toContain('1.002 A')
    expect(capacity(text)).toBeCloseTo(expected, 9)
  })

  test('count more than the unit in the header', () => {
    const text = table('Time (s),Voltage (V),Current (A)', s => `${s.t},${(s.V * 1000).toFixed(0)} mV,${s.I}`)
    expect(capacity(text)).toBeCloseTo(expected, 9)
  })

  test('that cannot be converted make the row a broken one', () => {
    const text = table('Time (s),Voltage,Current', (s, at) => `${s.t},${s.V} V,${s.I} ${at > 20 && at % 2 ? 'W' : 'A'}`)
    expect(readText(text)).toMatchObject({ refusal: { code: 'broken-rows', first: { row: 23, text: '1.001 W' } } })
  })
})

describe('which column', () => {
  test('two voltages of equal standing', () => {
    const text = table('Time (s),Voltage 1 (V),Voltage 2 (V),Current (A)', s => `${s.t},${s.V + 0.2},${s.V},${s.I}`)
    const read = readText(text)
    expect(read).toMatchObject({
      question: {
        code: 'which-column',
        role: 'voltage',
        choices: [
          { column: 1, label: 'Voltage 1 (V)' },
          { column: 2, label: 'Voltage 2 (V)', examples: ['4.172', '4.172', '4.172'] },
        ],
        rows: [
          ['Time (s)', 'Voltage 1 (V)', 'Voltage 2 (V)', 'Current (A)'],
          ['0', '4.372', '4.172', '0'],
          [],
          [],
          [],
        ].map((row, at) => (at < 2 ? row : expect.any(Array))),
      },
    })
    expect(capacity(text, { answers: { columns: { voltage: 2 } } })).toBe(expected)
  })

  test('a qualified column gives way to the plain one', () => {
    const text = table('Time (s),Set Current (A),Current (A),Load Voltage (V),Voltage (V),Ambient (°C)', s =>
      [s.t, 1, s.I, s.V - 0.1, s.V, 20].join(','),
    )
    expect(capacity(text)).toBe(expected)
  })

  test('a language nobody taught it: every needed column is asked, one after the other', () => {
    const text = table('aika;jännite;virta;lämpö', s => `${s.t};${s.V};${s.I};${s.T}`)
    expect(readText(text)).toMatchObject({ question: { code: 'which-column', role: 'time' } })
    expect(readText(text, { answers: { columns: { time: 0 } } })).toMatchObject({ question: { role: 'voltage' } })
    const columns = { time: 0, voltage: 1, current: 2 }
    expect(capacity(text, { answers: { columns } })).toBe(expected)
  })

  test('no header, and two columns that could be the current', () => {
    const text = table(null, s => `${s.t},${s.V},${s.I},${(s.I * 0.9).toFixed(3)}`)
    expect(readText(text)).toMatchObject({ question: { code: 'which-column', role: 'current', rows: { length: 4 } } })
    expect(capacity(text, { answers: { columns: { current: 2 } } })).toBe(expected)
  })
})

describe('which unit', () => {
  // 24 minutes at 1 A could be 0.4 Ah, or 24 hours and 24 Ah.
  const short = discharge({ ...usualCell, capacity_mAh: 420 })

  test('time, when seconds and minutes both make a cell', () => {
    const text = table('time,voltage,current (A)', s => `${s.t},${s.V},${s.I}`, short)
    expect(readText(text)).toMatchObject({ question: { code: 'which-unit', role: 'time', options: ['s', 'min'] } })
    const minutes = capacity(text, { answers: { units: { time: 'min' } } })
    expect(minutes / capacity(text, { answers: { units: { time: 's' } } })).toBeCloseTo(60, 6)
  })

  test('time, when no unit makes a usual test', () => {
    const burst = discharge({ ...usualCell, current_A: 20, resistance_mΩ: 5, every_s: 5 })
    expect(burst.at(-1)!.t).toBeLessThan(900)
    const text = table('time,voltage,current (A)', s => `${s.t / 4},${s.V},${s.I}`, burst)
    expect(readText(text)).toMatchObject({
      question: { code: 'which-unit', role: 'time', options: ['ms', 's', 'min', 'h', 'd'] },
    })
  })

  test('current, when amperes and milliamperes both make a cell', () => {
    const text = table('Time (h),U (V),I', s => `${s.t / 60},${s.V},${s.I * 20}`)
    expect(readText(text)).toMatchObject({ question: { code: 'which-unit', role: 'current', options: ['A', 'mA'] } })
    expect(outcome(readText(text, { answers: { units: { current: 'mA' } } }))).toBe('read')
  })

  test('a clock of two parts', () => {
    const clock = (s: Sample) => `${Math.floor(s.t / 60)}:${String(s.t % 60).padStart(2, '0')}`
    const text = table('Time,Voltage (V),Current (A)', s => `${clock(s)},${s.V},${s.I}`, short)
    expect(readText(text)).toMatchObject({ question: { code: 'which-clock', options: ['h:mm', 'm:ss'] } })
    const [hours, minutes] = (['h:mm', 'm:ss'] as const).map(each => capacity(text, { answers: { clock: each } }))
    expect(hours! / minutes!).toBeCloseTo(60, 6)
    // The whole discharge can only be minutes and seconds: 2.8 Ah or 168 Ah.
    expect(capacity(table('Time,Voltage (V),Current (A)', s => `${clock(s)},${s.V},${s.I}`))).toBeCloseTo(expected, 6)
  })
})

test('rows in a question are cut to what a menu can show', () => {
  const wide = Array.from({ length: 60 }, (_, n) => `column with a very long name ${n}`)
  const read = readText([wide.join(','), ...samples.map(s => wide.map((_, n) => s.V + n).join(','))].join('\n'))
  expect(read.ok).toBe(false)
  if (read.ok || !('question' in read) || read.question.code !== 'which-column') throw new Error(outcome(read))
  expect(read.question.choices.length).toBeLessThanOrEqual(25)
  for (const row of read.question.rows) {
    expect(row.length).toBeLessThanOrEqual(8)
    for (const cell of row) expect(cell.length).toBeLessThanOrEqual(16)
  }
})
