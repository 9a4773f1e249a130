// What devices and spreadsheets do to logs, and that it neither changes a figure nor accuses a cell.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evidenceOf } from '../../../src/readings/discharge/evidence.ts'
import { chargeCount, powerBetween } from '../../../src/readings/log/own-counter.ts'
import { lineUnwrapper } from '../../../src/readings/log/unwrap-lines.ts'
import type { LogOptions, LogReading } from '../../../src/readings/open-log.ts'
import { weighDischarge } from '../../../src/readings/weigh-discharge.ts'
import { discharge, type Sample, styles, usualCell, writeLog } from '../generate-log.ts'
import { outcome, readLog, readText } from '../read-log.ts'

const samples = discharge()
const header = 'Time (s),Voltage (V),Current (A)'
const table = (first: string, rows: readonly string[]) => [first, ...rows].join('\n')
const row = (s: Pick<Sample, 't' | 'V' | 'I'>) => `${s.t},${s.V},${s.I}`
const capacityOf = (read: LogReading) => {
  if (!read.ok) throw new Error(JSON.stringify(read))
  return read.runs[read.largest]!.figures.capacity.value!
}
const read = (text: string, options: Partial<LogOptions> = {}) => readText(text, { cutoff_V: 2.8, ...options })
const expected = capacityOf(read(table(header, samples.map(row))))

describe('rows of a device with no cell in it', () => {
  test.each([
    ['one before the rest', ['10,0,0'], 60],
    ['an hour of them', Array.from({ length: 60 }, (_, n) => `${n * 60},0,0`), 3600],
    ['of noise', ['1,0.004,0.001', '2,-0.003,-0.002'], 60],
  ])('%s is left out', (_name, before, from) => {
    const shifted = samples.map(s => row({ ...s, t: s.t + from }))
    const found = read(table(header, [...before, ...shifted]))
    expect(capacityOf(found)).toBeCloseTo(expected, 6)
    expect(found.ok && found.found).toMatchObject({ sign: 'positive', brokenRows: before.length })
  })

  test('after the load, when the cell was taken out', () => {
    const out = Array.from({ length: 400 }, (_, n) => `${samples.at(-1)!.t + 60 + n},0,0`)
    expect(capacityOf(read(table(header, [...samples.map(row), ...out])))).toBeCloseTo(expected, 6)
  })

  test('nothing but such rows is no log of a cell', () => {
    expect(
      outcome(
        read(
          table(
            header,
            Array.from({ length: 60 }, (_, n) => `${n},0,0`),
          ),
        ),
      ),
    ).toBe('voltage-not-one-cell')
  })
})

describe('a charge alone', () => {
  // A cycler's charge: current held to 4.2 V, then the voltage held while the current tapers off, each a step of its own.
  const held = Array.from({ length: 100 }, (_, n) => ({ t: n * 60, V: 3.3 + 0.009 * n, I: 1.5 }))
  const taper = Array.from({ length: 60 }, (_, n) => ({
    t: n * 60,
    V: 4.2 - (n % 2) / 2000,
    I: 1.5 * Math.exp(-n / 20),
  }))
  const rest = Array.from({ length: 10 }, (_, n) => ({ t: n * 60, V: 4.2 - n / 1000, I: 0 }))

  test('whose clock starts again at each step is no discharge', () => {
    expect(outcome(read(table(header, [...held, ...taper, ...rest].map(row))))).toBe('charge-only')
    const again = [...held.map(row), header, ...taper.map(row), header, ...rest.map(row)]
    expect(outcome(read(table(header, again)))).toBe('charge-only')
  })

  test('by its mode column', () => {
    const modes = (rows: typeof held, mode: string) => rows.map((s, n) => `${row({ ...s, t: n })},${mode}`)
    const all = [...modes(rest, 'Rest'), ...modes(held, 'CC_Chg'), ...modes(taper, 'CV_Chg')]
    const timed = all.map((line, n) => line.replace(/^\d+/, String(n * 60)))
    expect(outcome(read(table(`${header},State`, timed)))).toBe('charge-only')
  })

  test('before a discharge stays out of it', () => {
    const after = samples.map(s => ({ ...s, t: s.t + 200 * 60 }))
    const both = [...held, ...taper.map(s => ({ ...s, t: s.t + 6000 })), ...after]
    expect(capacityOf(read(table(header, both.map(row))))).toBeCloseTo(expected, 3)
  })
})

describe('NUL bytes', () => {
  test('in a first line are blanks', () => {
    const found = read(table('Time (s)\u0000,Voltage (V),Current (A)\u0000\u0000', samples.map(row)))
    expect(capacityOf(found)).toBe(expected)
  })

  test('anywhere else are damage', () => {
    expect(outcome(read(table(header, samples.map(row)).replace('4.172', '4.1\u00002')))).toBe('nul-bytes')
    expect(
      outcome(read(table('Time (s)\u0000,Voltage (V),Current (A)', samples.map(row)).replace('4.172', '\u0000'))),
    ).toBe('nul-bytes')
  })
})

describe('lines that a spreadsheet quoted whole', () => {
  const wrap = (line: string) => `"${line.replaceAll('"', '""')}"`
  const rewrap = (bytes: Uint8Array) =>
    new TextEncoder().encode(
      new TextDecoder()
        .decode(bytes)
        .split(/\r?\n/)
        .map(line => (line === '' ? line : wrap(line)))
        .join('\r\n'),
    )

  test.each([
    'plain-seconds',
    'french-tab-units-row',
    'spanish-negative-current',
    'minutes-and-seconds',
    'units-in-cells',
  ])('%s reads as before', name => {
    const style = styles.find(one => one.name === name)!
    const bytes = writeLog(style, samples)
    const options = { cutoff_V: 2.8 }
    expect(capacityOf(readLog(rewrap(bytes), options))).toBe(capacityOf(readLog(bytes, options)))
  })

  test('in pieces of any size', () => {
    // Longer than what is looked at to find out how a log is written, so that it is read on line by line.
    const long = writeLog(styles[0]!, discharge({ ...usualCell, every_s: 5 }))
    const bytes = rewrap(long)
    expect(bytes.length).toBeGreaterThan(40_000)
    const whole = capacityOf(readLog(long, { cutoff_V: 2.8 }))
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), piece => {
        expect(capacityOf(readLog(bytes, { cutoff_V: 2.8 }, piece))).toBe(whole)
      }),
      { numRuns: 20 },
    )
  })

  test('with the header left bare and empty cells behind', () => {
    const rows = samples.map(s => `"${row(s)}";;`)
    expect(capacityOf(read(table(header, rows)))).toBe(expected)
  })

  test('cells quoted one by one stay cells', () => {
    const rows = samples.map(s => `"${s.t}","${s.V}","${s.I}"`)
    expect(capacityOf(read(table(header, rows)))).toBe(expected)
  })
})

describe('currents logged in units of 10 mA, beside the file’s own counter', () => {
  const counted = (unit: string, current: (s: Sample) => string, perRow: (drawn: number) => string) => {
    let drawn = 0
    const rows = samples.map((s, n) => {
      if (n > 0) drawn += (s.I * (s.t - samples[n - 1]!.t)) / 3.6
      return `${s.t},${s.V},${current(s)},${perRow(drawn)}`
    })
    return table(`Time (s),Voltage (V),${unit},Capacity (mAh)`, rows)
  }
  const inTens = (unit: string) =>
    counted(
      unit,
      s => `${Math.round(s.I * 100)}`,
      drawn => drawn.toFixed(1),
    )

  test.each([
    ['Current', 10, ['10mA', 'mA']],
    ['Current (mA)', 10, ['10mA', 'mA']],
    ['Current (A)', 0.01, ['10mA', 'A']],
  ])('%s: the unit is offered', (unit, factor, options) => {
    const asked = read(inTens(unit))
    expect(asked).toMatchObject({ question: { code: 'which-unit', role: 'current', options, counter: { factor } } })
    const told = read(inTens(unit), { answers: { units: { current: '10mA' } } })
    expect(capacityOf(told) / expected).toBeCloseTo(1, 2)
    expect(told.ok && told.runs[0].traps.map(({ code }) => code)).not.toContain('counter-disagrees')
  })

  test('a unit insisted on is taken, and nothing is held against the cell by it', () => {
    const told = read(inTens('Current (mA)'), { answers: { units: { current: 'mA' } } })
    expect(capacityOf(told) / expected).toBeCloseTo(0.1, 2)
    if (!told.ok) throw new Error('unread')
    expect(told.runs[0].traps).toContainEqual({ code: 'counter-disagrees', factor: 10 })
    const bearings = weighDischarge(evidenceOf(told.runs[0]), { label_mAh: 3000 }).map(({ bearing }) => bearing)
    expect(bearings).toEqual(['none'])
  })

  test('a counter that agrees asks nothing, and settles what else would be asked', () => {
    expect(
      capacityOf(
        read(
          counted(
            'Current (A)',
            s => `${s.I}`,
            drawn => drawn.toFixed(1),
          ),
        ),
      ),
    ).toBeCloseTo(expected, 6)
    const hours = (withCounter: boolean) => {
      let drawn = 0
      const rows = samples.map((s, n) => {
        if (n > 0) drawn += (s.I * (s.t - samples[n - 1]!.t) * 20) / 1000 / 3.6
        return `${s.t / 60},${s.V},${s.I * 20}${withCounter ? `,${(drawn * 60).toFixed(2)}` : ''}`
      })
      return table(`Time (h),U (V),I${withCounter ? ',Capacity (mAh)' : ''}`, rows)
    }
    expect(outcome(read(hours(false)))).toBe('which-unit')
    const settled = read(hours(true))
    expect(settled).toMatchObject({ found: { units: { current: 'mA' } } })
  })

  test('a counter of something else is left alone', () => {
    const odd = counted(
      'Current (A)',
      s => `${s.I}`,
      drawn => (drawn * 2.7).toFixed(1),
    )
    expect(capacityOf(read(odd))).toBeCloseTo(expected, 6)
  })

  test('a counter that starts again counts all its runs', () => {
    const restarting = counted(
      'Current (A)',
      s => `${s.I}`,
      drawn => (drawn % 700).toFixed(1),
    )
    const found = read(restarting)
    expect(found.ok && found.runs[0].traps.map(({ code }) => code)).not.toContain('counter-disagrees')
  })
})

test.each([
  [2800, 2800, 0],
  [3000, 2800, 0],
  [2800, 280, 1],
  [2800, 28_000, -1],
  [2800, 2.8, 3],
  // Further apart than rounding, more than a thousand times, or nothing to compare.
  [2800, 1000, null],
  [3200, 2800, null],
  [2800, 0.28, null],
  [null, 2800, null],
  [0.5, 2800, null],
  [2800, 0, null],
])('a counter of %s beside %s mAh is off by the power %s', (counted, ours, power) => {
  expect(powerBetween(counted, ours)).toBe(power)
})

test('a counter that runs down, restarts or has gaps adds up', () => {
  const total = (...counts: number[]) => {
    const count = chargeCount()
    for (const one of counts) count.push(one)
    return count.total()
  }
  expect(total(0, 10, 25)).toBe(25)
  expect(total(25, 10, 0)).toBe(25)
  expect(total(0, 10, 0, 15)).toBe(25)
  expect(total(0, Number.NaN, 10)).toBe(10)
  expect(total(5, 5)).toBeNull()
  expect(total()).toBeNull()
})

test('a text that only begins like a byte order mark is no UTF-16', () => {
  const latin = (text: string) => new Uint8Array(Buffer.from(text, 'latin1'))
  for (const begin of ['\u00ff', '\u00fe', '\u00ef\u00bb'])
    expect(readLog(latin(table(`${begin} Zelle`, [header, ...samples.map(row)])))).toMatchObject({
      found: { encoding: 'windows-1252', rows: samples.length },
    })
})

test('a quoted line that is cut short, and one with a quote left open, stay as they are', () => {
  const unwrap = (text: string) => {
    const unwrapper = lineUnwrapper()
    const parts = [unwrapper.push(new TextEncoder().encode(text)), unwrapper.end()]
    return parts.map(part => new TextDecoder().decode(part)).join('')
  }
  expect(unwrap('"a;b"\n"c;""d"""\r\ne;f\n"g;h')).toBe('a;b\nc;"d"\r\ne;f\n"g;h')
  expect(unwrap('"a";"b"\n"c";;\n"d" e\n""\n')).toBe('"a";"b"\nc\n"d" e\n\n')
  expect(unwrap('"a;b""')).toBe('"a;b""')
})
