// Reads the rows of a log from bytes, chunk by chunk: only the wanted cells are turned into numbers.
import { excerpt, type LogRefusal } from './answers.ts'
import type { Growing } from './growing.ts'
import { readMode } from './header-words.ts'
import { cellNumber, type DecimalMark, plainNumber } from './number-cell.ts'
import { isMeasured } from './split-head.ts'

/*
 * Why not csv-parse for the body too: it makes a string of every cell, and measured on 1,000,000 rows of 28 MB that
 * alone takes 0.7 s where this reader takes 0.2 s. csv-parse reads the head and settles the dialect; a property test
 * holds this reader to csv-parse's cells.
 */

export interface ReaderPlan {
  readonly delimiter: string
  readonly mark: DecimalMark
  /** Column of each wanted value; -1 if the log has none. */
  readonly time: number
  readonly voltage: number
  readonly current: number
  readonly temperature: number
  readonly mode: number
  /** Reads a time that is no plain number; null when the time column holds numbers. */
  readonly readTime: ((text: string) => number) | null
  /** Header cells, to notice them when they are printed again for a new run. */
  readonly headerCells: readonly string[]
  /** Number of the first row handed in, counted from 1. */
  readonly firstRowNumber: number
  readonly mostRows: number
}

export interface BrokenRows {
  broken: number
  first: { readonly row: number; readonly column: number; readonly text: string } | null
}

export interface RowReader {
  /** Reads on; the refusal ends it. */
  push(bytes: Uint8Array): LogRefusal | null
  /** Reads the last row, which may lack a line end. */
  end(): LogRefusal | null
  readonly broken: BrokenRows
  /** Rows (indices of the columns) at which the header was printed again. */
  readonly restarts: number[]
}

/** Longest row accepted, in bytes: a log's row is some dozen cells. */
export const longestRow = 65_536
const [quoteByte, newline, carriageReturn, space, tab] = [34, 10, 13, 32, 9] as const
const ascii = new TextDecoder('utf-8')

/** A reader that pushes what it reads into `into`. Quotes as in RFC 4180; line ends \n, \r\n and \r, mixed as they come. */
export function rowReader(plan: ReaderPlan, into: Growing): RowReader {
  const delimiter = plan.delimiter.charCodeAt(0)
  const markByte = plan.mark.charCodeAt(0)
  const { time, voltage, current, temperature, mode } = plan
  const broken: BrokenRows = { broken: 0, first: null }
  const restarts: number[] = []
  const modes = new Map<string, number>()
  const slots = 1 + Math.max(time, voltage, current, temperature, mode)
  const starts = new Int32Array(slots)
  const ends = new Int32Array(slots)
  let carry = new Uint8Array(0)
  let rowNumber = plan.firstRowNumber - 1

  const text = (bytes: Uint8Array, column: number) =>
    ascii.decode(bytes.subarray(starts[column]!, ends[column]!)).trim()
  const number = (bytes: Uint8Array, column: number, width: number): number => {
    if (column < 0 || column >= width) return Number.NaN
    const plain = plainNumber(bytes, starts[column]!, ends[column]!, markByte)
    return Number.isNaN(plain) ? (cellNumber(text(bytes, column), plan.mark)?.value ?? Number.NaN) : plain
  }
  const modeOf = (bytes: Uint8Array, width: number): number => {
    if (mode < 0 || mode >= width) return 0
    const cell = text(bytes, mode)
    let known = modes.get(cell)
    if (known === undefined) {
      const read = readMode(cell)
      known = read === 'rest' ? 1 : read === 'charge' ? 2 : read === 'discharge' ? 3 : 0
      if (modes.size < 256) modes.set(cell, known)
    }
    return known
  }

  const row = (bytes: Uint8Array, width: number): LogRefusal | null => {
    rowNumber++
    const t = plan.readTime && time < width ? plan.readTime(text(bytes, time)) : number(bytes, time, width)
    const v = number(bytes, voltage, width)
    const i = number(bytes, current, width)
    if (!(Number.isFinite(t) && Number.isFinite(v) && Number.isFinite(i))) return brokenRow(bytes, width)
    if (into.rows() >= plan.mostRows) return { code: 'too-many-rows', most: plan.mostRows }
    into.push(t, v, i, number(bytes, temperature, width), modeOf(bytes, width))
    return null
  }

  const brokenRow = (bytes: Uint8Array, width: number): LogRefusal | null => {
    const cells = Array.from({ length: Math.min(width, slots) }, (_, column) => text(bytes, column))
    const column = [time, voltage, current].find(each => each >= width || !isMeasured(cells[each]!)) ?? time
    const cell = cells[column] ?? ''
    if (/^=\s*[\p{L}(@+\-\d"]/u.test(cell))
      return { code: 'formula', row: rowNumber, column: column + 1, text: excerpt(cell) }
    // Text where the numbers should be: a header, a title or a comment, and what follows is another run.
    if (width <= 1 || cells.every(each => each === '' || !isMeasured(each))) {
      const again = plan.headerCells.length > 0 && cells[time] === plan.headerCells[time]
      if (again && restarts.at(-1) !== into.rows()) restarts.push(into.rows())
      if (again || width <= 1) return null
    }
    broken.broken++
    broken.first ??= { row: rowNumber, column, text: excerpt(cell) }
    // Noise after a good beginning need not be read to its end.
    return broken.broken > 1000 && broken.broken > into.rows() ? brokenRefusal(plan, broken, into.rows()) : null
  }

  const scan = (bytes: Uint8Array, last: boolean): LogRefusal | null => {
    const length = bytes.length
    let [rowStart, fieldStart, column, at] = [0, 0, 0, 0]
    while (at < length) {
      const byte = bytes[at]!
      if (byte > quoteByte && byte !== delimiter) {
        at++
        continue
      }
      if (byte === quoteByte && isBlank(bytes, fieldStart, at)) {
        const closing = closingQuote(bytes, at + 1)
        // The byte after a quote tells whether it closes, so one at the very end waits for more.
        if (closing < 0 || (closing === length - 1 && !last)) break
        if (column < slots) {
          starts[column] = at + 1
          ends[column] = closing
        }
        at = closing + 1
        while (at < length && bytes[at] !== delimiter && bytes[at] !== newline && bytes[at] !== carriageReturn) at++
        if (at < length || last) {
          column++
          if (at < length && bytes[at] === delimiter) fieldStart = ++at
          else {
            const refusal = row(bytes, column)
            if (refusal) return refusal
            rowStart = fieldStart = ++at
            column = 0
          }
        }
        continue
      }
      if (byte === delimiter) {
        if (column < slots) setField(bytes, column, fieldStart, at)
        column++
        fieldStart = ++at
        continue
      }
      if (byte === newline || byte === carriageReturn) {
        if (column > 0 || !isBlank(bytes, fieldStart, at)) {
          if (column < slots) setField(bytes, column, fieldStart, at)
          const refusal = row(bytes, column + 1)
          if (refusal) return refusal
        }
        rowStart = fieldStart = ++at
        column = 0
        continue
      }
      at++
    }
    if (last && rowStart < length) {
      // Only a quote that never closes stops the loop early.
      if (at < length) return { code: 'unterminated-quote', row: rowNumber + 1 }
      if (column > 0 || !isBlank(bytes, fieldStart, length)) {
        if (column < slots) setField(bytes, column, fieldStart, length)
        return row(bytes, column + 1)
      }
      return null
    }
    if (length - rowStart > longestRow) {
      return at < length
        ? { code: 'unterminated-quote', row: rowNumber + 1 }
        : { code: 'row-too-long', row: rowNumber + 1, longest: longestRow }
    }
    carry = bytes.slice(rowStart)
    return null
  }

  const setField = (bytes: Uint8Array, column: number, from: number, to: number) => {
    while (from < to && (bytes[from] === space || bytes[from] === tab)) from++
    while (to > from && (bytes[to - 1] === space || bytes[to - 1] === tab)) to--
    starts[column] = from
    ends[column] = to
  }

  return {
    push(bytes) {
      return scan(carry.length === 0 ? bytes : joined(carry, bytes), false)
    },
    end() {
      const refusal = scan(carry, true)
      carry = new Uint8Array(0)
      if (refusal) return refusal
      const rows = into.rows()
      return broken.broken > 5 && broken.broken > 0.05 * (rows + broken.broken)
        ? brokenRefusal(plan, broken, rows)
        : null
    },
    broken,
    restarts,
  }
}

function brokenRefusal(plan: ReaderPlan, { broken, first }: BrokenRows, rows: number): LogRefusal {
  const label = excerpt(plan.headerCells[first?.column ?? 0] ?? '', 40)
  return {
    code: 'broken-rows',
    broken,
    rows: rows + broken,
    first: { row: first?.row ?? 0, label, text: first?.text ?? '' },
  }
}

/** Where the quote that opens just before `from` closes: the first quote that is not doubled; -1 if it does not. */
function closingQuote(bytes: Uint8Array, from: number): number {
  for (let at = from; at < bytes.length; at++) {
    if (bytes[at] !== quoteByte) continue
    if (bytes[at + 1] !== quoteByte) return at
    at++
  }
  return -1
}

function isBlank(bytes: Uint8Array, from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (bytes[at] !== space && bytes[at] !== tab) return false
  return true
}

function joined(a: Uint8Array, b: Uint8Array): Uint8Array {
  const both = new Uint8Array(a.length + b.length)
  both.set(a)
  both.set(b, a.length)
  return both
}
