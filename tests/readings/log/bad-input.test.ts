// Whatever is handed in, there is one refusal that says what is wrong, soon, with bounded memory.
import { describe, expect, test } from 'vitest'
import { openLog } from '../../../src/readings/open-log.ts'
import { charge, discharge, styles, writeLog } from '../generate-log.ts'
import { outcome, readLog, readText } from '../read-log.ts'

const samples = discharge()
const plain = styles[0]!
const text = new TextDecoder().decode(writeLog(plain, samples))
const lines = text.split('\n')
/** The good log with line `at` (from 1, below the header) replaced. */
const withLine = (at: number, line: string) => [...lines.slice(0, at), line, ...lines.slice(at + 1)].join('\n')
const ends = (input: string | Uint8Array) => outcome(typeof input === 'string' ? readText(input) : readLog(input))

describe('no log at all', () => {
  test.each<[string, string | Uint8Array, string]>([
    ['empty', '', 'empty'],
    ['only blanks', ' \n\n \r\n', 'empty'],
    ['only a byte order mark', '\ufeff', 'empty'],
    ['a zip', new Uint8Array([0x50, 0x4b, 3, 4, ...Buffer.from('a.txt and so on')]), 'not-text'],
    ['a spreadsheet', new Uint8Array([0x50, 0x4b, 3, 4, ...Buffer.from('....[Content_Types].xml')]), 'not-text'],
    ['an image named .csv', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13]), 'not-text'],
    ['a JPEG', new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 0, 16]), 'not-text'],
    ['a PDF', '%PDF-1.7\n1 0 obj', 'not-text'],
    ['gzip', new Uint8Array([0x1f, 0x8b, 8, 0, 1, 2, 3]), 'not-text'],
    ['binary', Uint8Array.from({ length: 4000 }, (_, n) => (n * 97) % 256), 'not-text'],
    ['prose', 'Dear helper,\nthis cell gave 2.8 Ah, I think.\nBye, bye', 'no-table'],
    ['one number a line', '1\n2\n3\n4\n5\n6\n7\n8\n', 'no-table'],
    ['only a header', 'Time (s),Voltage (V),Current (A)\n', 'no-table'],
    ['JSON', '{"time":[0,1,2],"voltage":[4.1,4.0,3.9]}', 'no-table'],
    ['three rows', lines.slice(0, 4).join('\n'), 'too-few-rows'],
  ])('%s', (_name, input, code) => {
    expect(ends(input)).toBe(code)
  })

  test('what a file looks like is told apart', () => {
    const looksLike = (bytes: readonly number[]) => {
      const read = readLog(new Uint8Array(bytes))
      return !read.ok && 'refusal' in read && read.refusal.code === 'not-text' && read.refusal.looksLike
    }
    expect(looksLike([0x50, 0x4b, 3, 4, ...Buffer.from('xl/worksheets')])).toBe('spreadsheet')
    expect(looksLike([0x50, 0x4b, 3, 4, 1, 2])).toBe('zip')
    expect(looksLike([0x47, 0x49, 0x46, 0x38, 0x39])).toBe('image')
    expect(looksLike([0x1f, 0x8b, 8])).toBe('compressed')
  })
})

describe('a damaged or strange table', () => {
  test('200,000 columns', () => {
    expect(ends(Array.from({ length: 200_000 }, () => '1').join(','))).toBe('too-many-columns')
    expect(ends(`${Array.from({ length: 3000 }, (_, n) => n).join(',')}\n`.repeat(20))).toBe('too-many-columns')
  })

  test('an unterminated quote of 20 MB is given up early', () => {
    const log = openLog({ instrument: { kind: 'lab-load' } })
    const chunk = new TextEncoder().encode('1,2,3\n'.repeat(10_000))
    let pushed = 0
    log.push(new TextEncoder().encode(`${lines.slice(0, 100).join('\n')}\n"`))
    while (pushed < 20_000_000 && log.push(chunk) === 'more') pushed += chunk.length
    expect(pushed).toBeLessThan(400_000)
    expect(outcome(log.end())).toBe('unterminated-quote')
  })

  test('an unterminated quote in the first row, and in the last', () => {
    expect(ends(`a,b,c\n"1,2,3\n${'4,5,6\n'.repeat(20)}`)).toBe('unterminated-quote')
    expect(ends(`${text}"12,3,1`)).toBe('unterminated-quote')
  })

  test('one endless line', () => {
    expect(ends('x'.repeat(200_000))).toBe('row-too-long')
    expect(ends(`${text}${'7'.repeat(200_000)}`)).toBe('row-too-long')
  })

  test('NUL bytes', () => {
    expect(ends(text.replace('4.172', '4.1\u00002'))).toBe('nul-bytes')
  })

  test('UTF-16 is read, with and without its mark', () => {
    expect(ends(new Uint8Array(Buffer.from(`\ufeff${text}`, 'utf16le')))).toBe('read')
    expect(ends(new Uint8Array(Buffer.from(text, 'utf16le')))).toBe('read')
    expect(ends(new Uint8Array(Buffer.from(text, 'utf16le').swap16()))).toBe('read')
  })

  test('mixed line ends are read', () => {
    const mixed = lines.map((line, at) => line + ['\n', '\r\n', '\r', '\n\n'][at % 4]).join('')
    const [read, good] = [readText(mixed), readText(text)]
    expect(read.ok && good.ok && read.runs[0].figures.capacity).toEqual(good.ok && good.runs[0].figures.capacity)
  })

  test('a formula in a cell', () => {
    expect(ends(withLine(3, '120,=B2*1000,0.000,22.4'))).toBe('formula')
    expect(ends(withLine(100, '5940,=SUM(B2:B9),1.000,22.4'))).toBe('formula')
    expect(ends(`=cmd|' /c calc'!A0,x\n${text}`)).toBe('formula')
  })

  test('a comma that separates columns and decimals', () => {
    const rows = samples.slice(0, 30).map(s => [s.t, s.V, s.I].map(each => each.toFixed(3).replace('.', ',')).join(','))
    expect(ends(['Zeit (s),Spannung (V),Strom (A)', ...rows].join('\n'))).toBe('comma-means-two-things')
  })

  test('decimal commas in one column and points in another', () => {
    const rows = samples.map(s => `${s.t};${s.V.toFixed(3)};${s.I.toFixed(2).replace('.', ',')}`)
    expect(ends(['t;U (V);I (A)', ...rows].join('\n'))).toBe('mixed-decimal-marks')
  })

  test('25 MiB of noise: of bytes, of characters, and after a good beginning', () => {
    const noise = (of: string) => {
      const log = openLog({ instrument: { kind: 'lab-load' } })
      const bytes = Uint8Array.from({ length: 65_536 }, (_, n) => of.charCodeAt((n * 7919 + (n >> 7)) % of.length))
      let pushed = 0
      if (of.startsWith('good')) log.push(new TextEncoder().encode(text))
      while (pushed < 25 * 1024 * 1024 && log.push(bytes) === 'more') pushed += bytes.length
      return { pushed, ended: outcome(log.end()) }
    }
    const everything = String.fromCharCode(...Array.from({ length: 256 }, (_, n) => n))
    expect(noise(everything)).toEqual({ pushed: 0, ended: 'not-text' })
    expect(noise('abc 12,.;\nxyz"\t')).toMatchObject({ pushed: 0 })
    const after = noise('good 7,8,9,x\ny,z,1,2,\n,4')
    expect(['broken-rows', 'no-table']).toContain(after.ended)
    expect(after.pushed).toBeLessThan(1024 * 1024)
  })
})

describe('numbers that cannot be', () => {
  const swap = (make: (s: (typeof samples)[number], at: number) => string) =>
    [lines[0], ...samples.map(make)].join('\n')

  test('NaN and infinite', () => {
    expect(ends(swap((s, at) => (at % 3 ? `${s.t},NaN,${s.I},20` : `${s.t},${s.V},inf,20`)))).toBe('broken-rows')
    expect(ends(swap((s, at) => `${s.t},${at > 50 ? 'NaN' : s.V},${at > 60 ? '-Infinity' : s.I},20`))).toBe(
      'broken-rows',
    )
    // A few are left out, and counted.
    const read = readText(withLine(50, '2940,NaN,1e999,22.4'))
    expect(read.ok && read.found.brokenRows).toBe(1)
  })

  test('numbers no cell has are left out, or refused when they are many', () => {
    const clean = readText(text)
    const slipped = readText(withLine(60, '3540,1e300,1.000,22.4').replace('3600,', '3600,9e99,1.0\n3600,'))
    expect(slipped.ok && slipped.found.brokenRows).toBe(2)
    const capacity = (read: typeof clean) => (read.ok ? read.runs[0].figures.capacity.value! : Number.NaN)
    expect(capacity(slipped) / capacity(clean)).toBeCloseTo(1, 3)
    expect(readText(swap((s, at) => `${s.t},${at % 5 ? s.V : 1e6},${s.I},20`))).toMatchObject({
      refusal: { code: 'broken-rows', first: null },
    })
  })

  test('the first broken cell is named', () => {
    const read = readText(swap((s, at) => `${s.t},${at % 2 || at < 20 ? s.V : 'overload'},${s.I},20`))
    expect(read).toMatchObject({
      refusal: { code: 'broken-rows', first: { row: 22, label: 'Voltage (V)', text: 'overload' } },
    })
  })

  test('time running backwards', () => {
    const read = readText(withLine(100, '900,3.700,1.000,22.4'))
    expect(read).toMatchObject({ refusal: { code: 'time-backwards', row: 100, to_s: 900 } })
  })

  test('time that stands still; duplicate stamps are fine', () => {
    expect(ends(swap(s => `7,${s.V},${s.I},20`))).toBe('time-stands-still')
    const [twice, once] = [
      readText(lines.flatMap((line, at) => (at === 0 ? [line] : [line, line])).join('\n')),
      readText(text),
    ]
    const capacity = (read: typeof once) => (read.ok ? read.runs[0].figures.capacity.value : null)
    expect(capacity(twice)).toBeCloseTo(capacity(once)!, 9)
  })

  test('volts in the current column', () => {
    expect(ends(swap(s => `${s.t},${s.I + 1},${s.V},20`))).toBe('columns-look-wrong')
    expect(ends(swap(s => `${s.t},${s.V},${s.V},20`))).toBe('columns-look-wrong')
    const read = readText(
      swap(s => `${s.t},${s.V},${s.V},20`),
      { answers: { columnsAreRight: true } },
    )
    expect(outcome(read)).toBe('read')
  })

  test('a pack, kiloamperes, no load, only a charge', () => {
    expect(ends(swap(s => `${s.t},${s.V * 4},${s.I},20`))).toBe('voltage-not-one-cell')
    expect(ends(swap(s => `${s.t},${s.V},${s.I * 1000},20`))).toBe('current-implausible')
    expect(ends(swap(s => `${s.t},${s.V},0.001,20`))).toBe('no-load')
    expect(ends(writeLog(plain, charge(0)))).toBe('charge-only')
  })

  test('more rows than allowed', () => {
    expect(outcome(readText(text, { mostRows: 50 }))).toBe('too-many-rows')
  })
})

test('text from the file is cut and plain in every refusal', () => {
  const nasty = `@everyone\u202e${'x'.repeat(300)}`
  const read = readText([lines[0], ...samples.map((s, at) => `${s.t},${at % 3 === 1 ? nasty : s.V},1,20`)].join('\n'))
  expect(read).toMatchObject({ refusal: { code: 'broken-rows' } })
  if (read.ok || !('refusal' in read) || read.refusal.code !== 'broken-rows') return
  expect(read.refusal.first?.text).toHaveLength(24)
  expect(read.refusal.first?.text).not.toContain('\u202e')
})
