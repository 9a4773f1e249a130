// Numbers, times, headers and rows of a log are read as csv-parse and Number would, and as people mean them.
import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { factorBetween } from '../../../src/readings/log/cell-units.ts'
import { growing } from '../../../src/readings/log/growing.ts'
import { readHeader, readMode } from '../../../src/readings/log/header-words.ts'
import { cellNumber, plainNumber } from '../../../src/readings/log/number-cell.ts'
import { rowReader } from '../../../src/readings/log/row-reader.ts'
import { clockSeconds, stampSeconds, timeReader } from '../../../src/readings/log/time-cell.ts'

const bytes = (text: string) => new TextEncoder().encode(text)

describe('numbers', () => {
  test('plain ones are the very double that Number reads', () => {
    const digits = fc.stringMatching(/^[+-]?\d{0,12}\.?\d{0,9}$/)
    fc.assert(
      fc.property(fc.oneof(digits, fc.double({ noNaN: true, noDefaultInfinity: true }).map(String)), text => {
        const read = plainNumber(bytes(text), 0, bytes(text).length, 46)
        if (Number.isNaN(read)) return
        expect(Object.is(read, Number(text)) || (read === 0 && Number(text) === 0)).toBe(true)
      }),
      { numRuns: 5000 },
    )
  })

  test.each([
    ['3,742', ',', 3.742, ''],
    ['1.234,5', ',', 1234.5, ''],
    ['1,234.5', '.', 1234.5, ''],
    ["12'345.6", '.', 12345.6, ''],
    ['1 234,5', ',', 1234.5, ''],
    ['4.105 V', '.', 4.105, 'V'],
    ['1.0A', '.', 1, 'A'],
    ['-2,5E-3', ',', -0.0025, ''],
    ['25.0 °C', '.', 25, '°C'],
    ['\u22121.5', '.', -1.5, ''],
  ] as const)('"%s" with decimal mark %s', (text, mark, value, unit) => {
    expect(cellNumber(text, mark)).toEqual({ value, unit })
  })

  test.each(['12,34.5', '1,2345', '1234,567', '1,,234', ',123', '1 23', '9'.repeat(65)])(
    '"%s" is no number in groups of three',
    text => {
      expect(cellNumber(text, '.')).toBeNull()
    },
  )

  test.each(['NaN', 'inf', '-', '', '1.2.3', '1,23,4', '12:30', '=1', 'V 4.1', '1e999', '4.1.', '0x10', '1_000'])(
    '"%s" is none',
    text => {
      expect(cellNumber(text, '.')).toBeNull()
    },
  )
})

test.each([
  ['mA', 'A', 0.001],
  ['A', 'mA', 1000],
  ['', 'A', 1],
  ['blips', 'blips', 1],
  ['blips', 'A', Number.NaN],
  ['V', 'A', Number.NaN],
  ['V', '', Number.NaN],
  ['°F', '°C', Number.NaN],
])('a number in %s among %s counts %d times', (unit, base, factor) => {
  expect(factorBetween(unit, base)).toBe(factor)
})

describe('times', () => {
  test.each([
    ['1:02:03', 3723],
    ['1:02:03.5', 3723.5],
    ['1:02:03,25', 3723.25],
    ['100:00:00', 360_000],
    ['2d 03:04:05', 183_845],
    ['2.03:04:05', 183_845],
    ['0 days 01:00:00', 3600],
    ['1:30:00 PM', 48_600],
    ['12:00:00 AM', 0],
  ])('clock %s', (text, seconds) => {
    expect(clockSeconds(text, 'h:mm')).toBe(seconds)
  })

  test('two parts are hours and minutes, or minutes and seconds', () => {
    expect(clockSeconds('90:30', 'h:mm')).toBe(325_800)
    expect(clockSeconds('90:30', 'm:ss')).toBe(5430)
  })

  // Outside check: Date.parse of the same instants in ISO 8601.
  test.each([
    ['2025-03-08T21:30:00Z', '2025-03-08T21:30:00Z'],
    ['2025-03-08 21:30:00.5', '2025-03-08T21:30:00.5Z'],
    ['2025/03/08 21:30', '2025-03-08T21:30:00Z'],
    ['08.03.2025 21:30:00', '2025-03-08T21:30:00Z'],
    ['8.3.25, 21:30:00', '2025-03-08T21:30:00Z'],
    ['2025-03-08T21:30:00+01:00', '2025-03-08T21:30:00Z'],
    ['2025-03-08', '2025-03-08T00:00:00Z'],
  ])('stamp %s', (text, iso) => {
    expect(stampSeconds(text)?.dayFirst).toBe(Date.parse(iso) / 1000)
  })

  test('day and month first', () => {
    const read = stampSeconds('3/8/2025 9:30:00 PM')
    expect(read?.monthFirst).toBe(Date.UTC(2025, 2, 8, 21, 30) / 1000)
    expect(read?.dayFirst).toBe(Date.UTC(2025, 7, 3, 21, 30) / 1000)
    expect(stampSeconds('3/28/2025')?.dayFirst).toBeNaN()
  })

  test.each(['', '25', '4.105', '1:2:3:4', '2025-13-40', '99.99.2025', '12:61', 'noon'])('"%s" is no time', text => {
    expect(stampSeconds(text)).toBeNull()
    expect(clockSeconds(text, 'h:mm')).toBeNull()
  })

  test('midnight passes, in clocks and in stamps of unknown order', () => {
    const clock = timeReader('clock', 'h:mm', 'unknown')
    expect(['23:59:50', '0:00:10'].map(clock)).toEqual([86_390, 86_410])
    for (const days of [
      ['3/4/2025', '3/5/2025'],
      ['4/3/2025', '5/3/2025'],
    ]) {
      const stamps = timeReader('stamp', 'h:mm', 'unknown')
      const [first, second] = [`${days[0]} 23:59:50`, `${days[1]} 0:00:10`].map(stamps)
      expect(second! - first!).toBe(20)
    }
  })
})

describe('headers', () => {
  test.each([
    ['Time (s)', 'time', 's'],
    ['Zeit [h:mm:ss]', 'time', 'h:mm:ss'],
    ['Seconds', 'time', 'Seconds'],
    ['elapsed_time_ms', 'time', 'ms'],
    ['t/s', 'time', 's'],
    ['Spannung / mV', 'voltage', 'mV'],
    ['U[V]', 'voltage', 'V'],
    ['Vbat', 'voltage', ''],
    ['Volts', 'voltage', 'Volts'],
    ['V', 'voltage', 'V'],
    ['mV', 'voltage', 'mV'],
    ['Tensión (V)', 'voltage', 'V'],
    ['Courant (mA)', 'current', 'mA'],
    ['Corriente A', 'current', 'A'],
    ['Entladestrom', 'current', ''],
    ['dischargeCurrent', 'current', ''],
    ['A', 'current', 'A'],
    ['I', 'current', ''],
    ['电压(V)', 'voltage', 'V'],
    ['電流 [A]', 'current', 'A'],
    ['T', 'temperature', ''],
    ['t', 'time', ''],
    ['Temps', 'time', ''],
    ['Temp', 'temperature', ''],
    ['Température (°C)', 'temperature', '°C'],
    ['Discharge Capacity (mAh)', 'capacity', 'mAh'],
    ['Energie / Wh', 'energy', 'Wh'],
    ['State', 'mode', ''],
    ['dV/dt (V/s)', null, 'V/s'],
    ['Temp (V)', null, 'V'],
    ['Bemerkung', null, ''],
  ])('%s', (cell, role, unit) => {
    const read = readHeader(cell)
    expect([read.role, read.unit]).toEqual([role, unit])
  })

  test.each([
    ['CC_DChg', 'discharge'],
    ['Entladen', 'discharge'],
    ['Décharge', 'discharge'],
    ['CC-CV charge', 'charge'],
    ['Laden', 'charge'],
    ['Ruhe', 'rest'],
    ['OCV', 'rest'],
    ['7', null],
  ])('mode %s', (cell, mode) => {
    expect(readMode(cell)).toBe(mode)
  })
})

// csv-parse is the outside reader here: every cell it finds is the cell the fast reader finds.
describe('rows, as csv-parse reads them', () => {
  const cell = fc.oneof(
    fc.integer({ min: -9999, max: 9999 }).map(String),
    fc.double({ min: -100, max: 100, noNaN: true }).map(x => x.toFixed(4)),
    fc.integer({ min: 0, max: 99 }).map(n => `"${n}"`),
    fc.constantFrom('', ' 7 ', '"a ""b"" c"', '"x,y"', '"two\nlines"', 'text'),
  )
  const ending = fc.constantFrom('\n', '\r\n', '\r', '\n\n')
  const row = fc.tuple(fc.array(cell, { minLength: 4, maxLength: 6 }), ending)

  test('any table in any pieces', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 30 }), fc.integer({ min: 1, max: 60 }), (rows, piece) => {
        const text = rows.map(([cells, end]) => cells.join(',') + end).join('')
        const theirs = (
          parse(text, {
            relax_column_count: true,
            relax_quotes: true,
            skip_empty_lines: true,
            trim: true,
            record_delimiter: ['\r\n', '\n', '\r'],
          }) as string[][]
        )
          .map(cells => [cells[2], cells[0], cells[1]].map(each => cellNumber(each ?? '', '.')?.value ?? Number.NaN))
          .filter(values => values.every(Number.isFinite))
        const into = growing(2)
        const plan = {
          delimiter: ',',
          mark: '.',
          time: 2,
          voltage: 0,
          current: 1,
          temperature: -1,
          mode: -1,
          units: new Map(),
          readTime: null,
          counter: -1,
          onCount: () => {},
          headerCells: [],
          firstRowNumber: 1,
          mostRows: 100,
        } as const
        const reader = rowReader(plan, into)
        const all = bytes(text)
        for (let at = 0; at < all.length; at += piece) expect(reader.push(all.subarray(at, at + piece))).toBeNull()
        reader.end()
        const { time, voltage, current } = into.columns()
        expect(Array.from(time, (_, n) => [time[n], voltage[n], current[n]])).toEqual(theirs)
      }),
      { numRuns: 1000 },
    )
  })
})
