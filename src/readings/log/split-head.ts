// Cuts the head of a file into cells: which character separates them, and which mark the decimals.
import { type CsvError, parse } from 'csv-parse/sync'
import { excerpt, type LogRefusal } from './answers.ts'
import { cellNumber, type DecimalMark, longestCell } from './number-cell.ts'
import { clockSeconds, stampSeconds } from './time-cell.ts'

export type Delimiter = ',' | ';' | '\t' | '|'

export type HeadRow = {
  readonly cells: readonly string[]
  /** How many of its cells hold a number or a time. */
  readonly measured: number
  /** Where the row begins, in bytes of the head's UTF-8. */
  readonly at: number
}

export type SplitHead = {
  readonly delimiter: Delimiter
  readonly mark: DecimalMark
  readonly rows: readonly HeadRow[]
}

export type HeadResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusal: LogRefusal }

const delimiters: readonly Delimiter[] = ['\t', ';', '|', ',']
/** Rows looked at; enough for a long pre-amble and the first samples. */
const mostRows = 160
export const mostColumns = 200

/** Splits the head in the way that makes most rows look like measurements. */
export function splitHead(head: string): HeadResult<SplitHead> {
  let best: { split: Omit<SplitHead, 'mark'>; score: number } | undefined
  let refusal: LogRefusal | undefined
  for (const delimiter of delimiters) {
    if (!head.includes(delimiter)) continue
    const rows = rowsOf(head, delimiter)
    if (!rows.ok) {
      refusal ??= rows.refusal
      continue
    }
    const widths = new Map<number, number>()
    for (const { cells, measured } of rows.value) {
      if (measured >= 2) widths.set(cells.length, (widths.get(cells.length) ?? 0) + 1)
    }
    const score = Math.max(0, ...widths.values())
    // On a tie the earlier delimiter wins: a comma is the likeliest to stand inside numbers.
    if (score > (best?.score ?? 0)) best = { split: { delimiter, rows: rows.value }, score }
  }
  if (!best) return { ok: false, refusal: refusal ?? { code: 'no-table', firstLine: excerpt(firstLine(head), 40) } }
  const mark = decimalMark(best.split.rows)
  return mark.ok ? { ok: true, value: { ...best.split, mark: mark.value } } : mark
}

/** Whether a cell holds a number, with either decimal mark, or a time. */
export function isMeasured(cell: string): boolean {
  if (!/\d/.test(cell)) return false
  return (
    cellNumber(cell, '.') !== null ||
    cellNumber(cell, ',') !== null ||
    clockSeconds(cell, 'h:mm') !== null ||
    stampSeconds(cell) !== null
  )
}

function measuredIn(cells: readonly string[]): number {
  return cells.reduce((count, cell) => count + (isMeasured(cell) ? 1 : 0), 0)
}

function rowsOf(head: string, delimiter: Delimiter): HeadResult<HeadRow[]> {
  const starts: number[] = []
  let next = 0
  try {
    const rows: string[][] = parse(head, {
      delimiter,
      relax_column_count: true,
      relax_quotes: true,
      skip_empty_lines: true,
      trim: true,
      record_delimiter: ['\r\n', '\n', '\r'],
      to: mostRows,
      on_record: (record: string[], { bytes }: { bytes: number }) => {
        starts.push(next)
        next = bytes
        return record
      },
    })
    const wide = rows.find(cells => cells.length > mostColumns)
    if (wide) return { ok: false, refusal: { code: 'too-many-columns', columns: wide.length, most: mostColumns } }
    return { ok: true, value: rows.map((cells, index) => ({ cells, measured: measuredIn(cells), at: starts[index]! })) }
  } catch (error) {
    if (!isCsvError(error)) throw error
    if (error.code === 'CSV_QUOTE_NOT_CLOSED') {
      return { ok: false, refusal: { code: 'unterminated-quote', row: starts.length + 1 } }
    }
    // Quotes in the middle of words, as in JSON: with this delimiter it is no table.
    return { ok: true, value: [] }
  }
}

function isCsvError(error: unknown): error is CsvError {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' && error.code.startsWith('CSV_')
}

/** The decimal mark the cells of the rows show. A mark before anything but three digits, or after a zero, is decimal. */
function decimalMark(rows: readonly HeadRow[]): HeadResult<DecimalMark> {
  const sure: Partial<Record<DecimalMark, string>> = {}
  const maybe: Partial<Record<DecimalMark, string>> = {}
  let writesThousandsPlain = false
  for (const { cells, measured } of rows) {
    if (measured < 2) continue
    for (const cell of cells) {
      if (cell.length > longestCell) continue
      if (/^[+-]?\d{4,}(?:[.,]\d+)?$/.test(cell)) writesThousandsPlain = true
      const match = /^[+-]?(\d*)([.,'\d ]*?)([.,])(\d+)(?:e[+-]?\d+)?(?: ?[^\d\s.,:]{1,6})?$/i.exec(cell)
      if (!match || stampSeconds(cell) !== null) continue
      const mark = match[3] as DecimalMark
      const other = mark === '.' ? ',' : '.'
      const decimal =
        match[4]!.length !== 3 || /^0*$/.test(match[1]!) || match[1]!.length > 3 || match[2]!.includes(other)
      if (decimal) sure[mark] ??= cell
      else maybe[mark] ??= cell
    }
  }
  // Where 1200 is written without a mark, the mark in "3.742" can't be one of thousands.
  if (writesThousandsPlain) for (const mark of ['.', ','] as const) if (maybe[mark]) sure[mark] ??= maybe[mark]
  if (sure['.'] && sure[','])
    return { ok: false, refusal: { code: 'mixed-decimal-marks', examples: [excerpt(sure['.']), excerpt(sure[','])] } }
  if (sure['.'] || sure[',']) return { ok: true, value: sure['.'] ? '.' : ',' }
  // Only "3,742" and the like: three decimals are usual in logs, thousands marks are not (common practice, no source);
  // a volt column of thousands would be refused later as no cell.
  return { ok: true, value: maybe[','] && !maybe['.'] ? ',' : '.' }
}

function firstLine(text: string): string {
  return text.split(/[\r\n]/).find(line => line.trim() !== '') ?? ''
}
