// Where in the head the table of measurements begins, and what stands above its columns.
import { type ColumnChoice, excerpt, type FirstRows } from './answers.ts'
import { type Header, isUnitCell, readHeader } from './header-words.ts'
import { type HeadResult, type HeadRow, isMeasured, type SplitHead } from './split-head.ts'

export type Column = {
  readonly label: string
  readonly header: Header
  /** Its cells in the first rows of the table. */
  readonly cells: readonly string[]
}

export type TableShape = {
  readonly columns: readonly Column[]
  readonly hasHeader: boolean
  /** Rows of text above the header. */
  readonly preamble: number
  /** The header's cells, to recognise it when it is printed again further down. */
  readonly headerCells: readonly string[]
  /** Where the first row of measurements begins, in bytes of the head's UTF-8. */
  readonly firstRowAt: number
  /** Its number among the rows that are not blank, counted from 1. */
  readonly firstRowNumber: number
}

const formula = /^=\s*[\p{L}(@+\-\d"]/u

/** Finds header and table; refuses formulas and a comma that means two things. */
export function shapeOf({ rows, delimiter, mark }: SplitHead): HeadResult<TableShape> {
  for (const [index, { cells }] of rows.entries()) {
    const column = cells.findIndex(cell => formula.test(cell))
    if (column >= 0) {
      return {
        ok: false,
        refusal: { code: 'formula', row: index + 1, column: column + 1, text: excerpt(cells[column]!) },
      }
    }
  }
  const first = firstOfTable(rows)
  if (first === null)
    return { ok: false, refusal: { code: 'no-table', firstLine: excerpt(rows[0]?.cells.join(' ') ?? '', 40) } }
  const table = rows.slice(first)
  const width = table[0]!.cells.length
  const unitRow =
    first >= 2 && isUnitRow(rows[first - 1]!.cells) && isHeaderRow(rows[first - 2]!.cells) ? first - 1 : null
  const headerRow = unitRow === null ? first - 1 : unitRow - 1
  const header = headerRow >= 0 && isHeaderRow(rows[headerRow]!.cells) ? rows[headerRow]!.cells : null
  if (header && delimiter === ',' && mark === '.' && width >= 2 * header.length - 1 && header.length >= 3) {
    return { ok: false, refusal: { code: 'comma-means-two-things', line: excerpt(table[0]!.cells.join(','), 40) } }
  }
  const units = unitRow === null ? [] : rows[unitRow]!.cells
  const columns = Array.from({ length: Math.max(width, header?.length ?? 0) }, (_, at): Column => {
    const label = header?.[at] ?? ''
    const unit = units[at]?.replace(/^[[(]|[\])]$/g, '') ?? ''
    const read = readHeader(unit === '' ? label : `${label} [${unit}]`)
    return { label, header: read, cells: table.slice(0, 60).map(row => row.cells[at] ?? '') }
  })
  return {
    ok: true,
    value: {
      columns,
      hasHeader: header !== null,
      preamble: Math.max(0, headerRow),
      headerCells: header ?? [],
      firstRowAt: table[0]!.at,
      firstRowNumber: first + 1,
    },
  }
}

/** The first row of measurements that is followed by another of the same width, or ends the head. */
function firstOfTable(rows: readonly HeadRow[]): number | null {
  for (const [index, { cells, measured }] of rows.entries()) {
    if (measured < 2) continue
    const next = rows[index + 1]
    if (!next || (next.cells.length === cells.length && next.measured >= 2)) return index
  }
  return null
}

function isHeaderRow(cells: readonly string[]): boolean {
  const texts = cells.filter(cell => cell !== '' && !isMeasured(cell)).length
  return texts >= 2 && texts > cells.filter(isMeasured).length
}

function isUnitRow(cells: readonly string[]): boolean {
  return cells.some(cell => cell !== '') && cells.every(isUnitCell)
}

/** The first rows for a question: header, then up to four rows of the table. */
export function firstRows(shape: TableShape): FirstRows {
  const cut = (cells: readonly string[]) => cells.slice(0, 8).map(cell => excerpt(cell, 16))
  const body = [0, 1, 2, 3]
    .filter(row => shape.columns.some(column => (column.cells[row] ?? '') !== ''))
    .map(row => cut(shape.columns.map(column => column.cells[row] ?? '')))
  return shape.hasHeader ? [cut(shape.columns.map(column => column.label)), ...body] : body
}

/** A column as something to choose. */
export function choiceOf(shape: TableShape, column: number): ColumnChoice {
  const { label, cells } = shape.columns[column]!
  return {
    column,
    label: excerpt(label, 40),
    examples: cells
      .filter(cell => cell !== '')
      .slice(0, 3)
      .map(cell => excerpt(cell, 16)),
  }
}
