// Rows that are not measurements: a row of units below the header, and the numbers that refusals give to rows.
import { describe, expect, test } from 'vitest'
import { discharge } from '../generate-log.ts'
import { readText } from '../read-log.ts'

const samples = discharge()
const rows = samples.map(s => [s.t, s.V, s.I])
const table = (...lines: readonly string[]) => lines.join('\n')
const cells = rows.map(row => row.join(';'))

describe('a row of units', () => {
  const inMilli = samples.map(s => [s.t / 60, s.V * 1000, s.I * 1000].join(';'))
  test.each([
    ['bare', 'min;mV;mA'],
    ['in brackets', '[min];[mV];[mA]'],
    ['in round ones', '(min);(mV);(mA)'],
  ])('%s settles what the numbers are', (_name, units) => {
    const read = readText(table('Time;Voltage;Current', units, ...inMilli))
    expect(read).toMatchObject({
      ok: true,
      found: { units: { time: 'min', voltage: 'mV', current: 'mA' }, preambleRows: 0 },
    })
  })

  test('below a preamble counts neither as header nor as preamble', () => {
    const read = readText(table('Cell 7', 'taken in May', 'Time;Voltage;Current', 'min;mV;mA', ...inMilli))
    expect(read).toMatchObject({
      ok: true,
      found: { preambleRows: 2, hasHeader: true, rows: samples.length, brokenRows: 0 },
    })
  })

  test('is one only where every cell is a unit or empty', () => {
    const read = readText(table('Time;Voltage;Current', 's;V;', ...cells))
    expect(read).toMatchObject({ ok: true, found: { units: { time: 's', voltage: 'V' }, hasHeader: true } })
    const notes = readText(table('Time;Voltage;Current', 's;V;see below', ...cells))
    expect(notes).toMatchObject({ ok: false, question: { code: 'which-column' } })
  })
})

describe('rows are numbered as they stand in the file, blank ones left out', () => {
  const broken = (...above: readonly string[]) => {
    const lines = cells.map((line, at) => (at >= 40 && at % 2 === 0 ? line.replace(/;[^;]+;/, ';overload;') : line))
    const read = readText(table(...above, ...lines))
    return read.ok || !('refusal' in read) || read.refusal.code !== 'broken-rows' ? read : read.refusal.first
  }
  // The first broken line is the 41st of the measurements.
  test.each([
    ['a header', ['Time (s);Voltage (V);Current (A)'], 42],
    ['a preamble and a header', ['Cell 7', 'May', 'Time (s);Voltage (V);Current (A)'], 44],
    ['blank lines between', ['Cell 7', '', '', 'Time (s);Voltage (V);Current (A)', ''], 43],
    ['a row of units', ['Time;Voltage;Current', 's;V;A'], 43],
  ])('below %s', (_name, above, row) => {
    expect(broken(...above)).toMatchObject({ row, text: 'overload' })
  })

  test('a formula far down, a quote that never closes, and a row that is too long', () => {
    const header = 'Time (s);Voltage (V);Current (A)'
    const with_ = (line: string) => readText(table(header, ...cells.slice(0, 60), line, ...cells.slice(61)))
    expect(with_('9999;=A2*2;1')).toMatchObject({ refusal: { code: 'formula', row: 62, column: 2 } })
    expect(with_('"9999;4;1')).toMatchObject({ refusal: { code: 'unterminated-quote', row: 62 } })
    const endless = readText(table(header, ...cells, '7'.repeat(200_000)))
    expect(endless).toMatchObject({ refusal: { code: 'row-too-long', row: cells.length + 2 } })
  })

  test('also where the header is printed again', () => {
    const header = 'Time (s);Voltage (V);Current (A)'
    const lines = cells
      .slice(0, 30)
      .map((line, at) => (at >= 10 && at % 2 === 0 ? line.replace(/;[^;]+;/, ';n/a;') : line))
    const read = readText(table(header, ...cells, header, ...lines, ...lines, ...lines))
    expect(read).toMatchObject({ refusal: { code: 'broken-rows', first: { row: cells.length + 2 + 10 + 1 } } })
  })
})
