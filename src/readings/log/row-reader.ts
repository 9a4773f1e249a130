// Turns the wanted cells of each row of a log into numbers, and says what to make of rows that hold none.
import { excerpt, type LogRefusal } from './answers.ts'
import { factorBetween } from './cell-units.ts'
import type { Growing } from './growing.ts'
import { readMode } from './header-words.ts'
import { cellNumber, type DecimalMark, plainNumber } from './number-cell.ts'
import { longestRow, type ScanStop, scanRows } from './scan-rows.ts'
import { isMeasured } from './split-head.ts'

export type ReaderPlan = {
  readonly delimiter: string
  readonly mark: DecimalMark
  /** Column of each wanted value; -1 if the log has none. */
  readonly time: number
  readonly voltage: number
  readonly current: number
  readonly temperature: number
  readonly mode: number
  /** The file's own count of the charge, handed on row by row; -1 if the log has none. */
  readonly counter: number
  readonly onCount: (value: number) => void
  /** Unit of each column of numbers, for cells that carry one of their own. */
  readonly units: ReadonlyMap<number, string>
  /** Reads a time that is no plain number; null when the time column holds numbers. */
  readonly readTime: ((text: string) => number) | null
  /** Header cells, to notice them when they are printed again for a new run. */
  readonly headerCells: readonly string[]
  /** Number of the first row handed in, counted from 1. */
  readonly firstRowNumber: number
  readonly mostRows: number
}

export type BrokenRows = {
  broken: number
  first: { readonly row: number; readonly column: number; readonly text: string } | null
}

export type RowReader = {
  /** Reads on; the refusal ends it. */
  push(bytes: Uint8Array): LogRefusal | null
  /** Reads the last row, which may lack a line end. */
  end(): LogRefusal | null
  readonly broken: BrokenRows
  /** Rows (indices of the columns) at which the header was printed again. */
  readonly restarts: number[]
}

const utf8 = new TextDecoder('utf-8')
const modeCodes = { rest: 1, charge: 2, discharge: 3 } as const

/** A reader that pushes what it reads into `into`. */
export function rowReader(plan: ReaderPlan, into: Growing): RowReader {
  const markByte = plan.mark.charCodeAt(0)
  const { time, voltage, current, temperature, mode, counter } = plan
  const wanted = 1 + Math.max(time, voltage, current, temperature, mode, counter)
  const cells = { starts: new Int32Array(wanted), ends: new Int32Array(wanted) }
  const { starts, ends } = cells
  const broken: BrokenRows = { broken: 0, first: null }
  const restarts: number[] = []
  let rowNumber = plan.firstRowNumber - 1

  const text = (bytes: Uint8Array, column: number) => utf8.decode(bytes.subarray(starts[column]!, ends[column]!)).trim()

  const number = (bytes: Uint8Array, column: number, width: number): number => {
    if (column < 0 || column >= width) return Number.NaN
    const plain = plainNumber(bytes, starts[column]!, ends[column]!, markByte)
    return Number.isNaN(plain) ? numberWithUnit(bytes, column) : plain
  }

  /** The unit behind a column's last number, as bytes, so that a column of "4.105 V" is not decoded cell by cell. */
  const seen: ({ unit: Uint8Array; factor: number } | undefined)[] = []
  const numberWithUnit = (bytes: Uint8Array, column: number): number => {
    const [from, to] = [starts[column]!, ends[column]!]
    let end = to
    while (end > from && (bytes[end - 1]! < 48 || bytes[end - 1]! > 57)) end--
    const known = seen[column]
    if (known && known.unit.length === to - end && known.unit.every((byte, at) => byte === bytes[end + at])) {
      const value = plainNumber(bytes, from, end, markByte)
      if (!Number.isNaN(value)) return value * known.factor
    }
    const cell = cellNumber(text(bytes, column), plan.mark)
    if (!cell) return Number.NaN
    const factor = factorBetween(cell.unit, plan.units.get(column) ?? '')
    if (cell.unit !== '') seen[column] = { unit: bytes.slice(end, to), factor }
    return cell.value * factor
  }

  const modes = new Map<string, number>()
  const modeOf = (bytes: Uint8Array, width: number): number => {
    if (mode < 0 || mode >= width) return 0
    const cell = text(bytes, mode)
    const known = modes.get(cell)
    if (known !== undefined) return known
    const read = readMode(cell)
    const code = read ? modeCodes[read] : 0
    if (modes.size < 256) modes.set(cell, code)
    return code
  }

  const onRow = (bytes: Uint8Array, width: number): LogRefusal | null => {
    rowNumber++
    const t = plan.readTime && time < width ? plan.readTime(text(bytes, time)) : number(bytes, time, width)
    const v = number(bytes, voltage, width)
    const i = number(bytes, current, width)
    if (!Number.isFinite(t)) return brokenRow(bytes, width, time)
    if (!Number.isFinite(v)) return brokenRow(bytes, width, voltage)
    if (!Number.isFinite(i)) return brokenRow(bytes, width, current)
    if (into.rows() >= plan.mostRows) return { code: 'too-many-rows', most: plan.mostRows }
    into.push(t, v, i, number(bytes, temperature, width), modeOf(bytes, width))
    if (counter >= 0) plan.onCount(number(bytes, counter, width))
    return null
  }

  const brokenRow = (bytes: Uint8Array, width: number, column: number): LogRefusal | null => {
    const texts = Array.from({ length: Math.min(width, wanted) }, (_, at) => text(bytes, at))
    const cell = texts[column] ?? ''
    if (/^=\s*[\p{L}(@+\-\d"]/u.test(cell)) {
      return { code: 'formula', row: rowNumber, column: column + 1, text: excerpt(cell) }
    }
    // Text where the numbers should be: a header, a title or a comment, and what follows is another run.
    if (width <= 1) return null
    if (plan.headerCells.length > 0 && texts[time] === plan.headerCells[time] && !texts.some(isMeasured)) {
      if (restarts.at(-1) !== into.rows()) restarts.push(into.rows())
      return null
    }
    broken.broken++
    broken.first ??= { row: rowNumber, column, text: excerpt(cell) }
    // Noise after a good beginning need not be read to its end.
    return broken.broken > 1000 && broken.broken > into.rows() ? refuseBroken() : null
  }

  const refuseBroken = (): LogRefusal => {
    const { first } = broken
    const label = excerpt(plan.headerCells[first?.column ?? 0] ?? '', 40)
    const rows = into.rows() + broken.broken
    return {
      code: 'broken-rows',
      broken: broken.broken,
      rows,
      first: first && { row: first.row, label, text: first.text },
    }
  }

  const scanner = scanRows(plan.delimiter, cells, onRow)
  const refusalOf = (stop: LogRefusal | ScanStop | null): LogRefusal | null => {
    if (stop === 'unterminated-quote') return { code: stop, row: rowNumber + 1 }
    return stop === 'row-too-long' ? { code: stop, row: rowNumber + 1, longest: longestRow } : stop
  }
  return {
    push: bytes => refusalOf(scanner.push(bytes)),
    end() {
      const refusal = refusalOf(scanner.end())
      if (refusal) return refusal
      return broken.broken > 5 && broken.broken > 0.05 * (into.rows() + broken.broken) ? refuseBroken() : null
    },
    broken,
    restarts,
  }
}
