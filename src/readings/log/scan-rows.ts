// Finds rows and cells in bytes, chunk by chunk, without making a string of any cell.

/*
 * Why not csv-parse for the body too: it makes a string of every cell, and measured on 1,000,000 rows of 28 MB that
 * alone takes twice as long as the whole analysis with this scanner. csv-parse reads the head and settles the dialect;
 * a property test holds this scanner to csv-parse's cells.
 */

/** Where the cells of one row lie; only the first `starts.length` cells are noted, `width` counts all. */
export type RowCells = {
  readonly starts: Int32Array
  readonly ends: Int32Array
}

export type ScanStop = 'unterminated-quote' | 'row-too-long'

export type Scanner<Refusal> = {
  /** Scans on; a refusal of `onRow`, or what makes going on useless, ends it. */
  push(bytes: Uint8Array): Refusal | ScanStop | null
  /** Scans the last row, which may lack a line end. */
  end(): Refusal | ScanStop | null
}

/** Longest row accepted, in bytes: a log's row is some dozen cells. */
export const longestRow = 65_536
const [quoteByte, newline, carriageReturn, space, tab] = [34, 10, 13, 32, 9] as const

/**
 * Calls `onRow` for every row that is not blank, with the cells' places in `cells` (blanks around them and the quotes
 * left out). Quotes as in RFC 4180; line ends \n, \r\n and \r, mixed as they come.
 */
export function scanRows<Refusal extends object>(
  delimiterText: string,
  cells: RowCells,
  onRow: (bytes: Uint8Array, width: number) => Refusal | null,
): Scanner<Refusal> {
  const delimiter = delimiterText.charCodeAt(0)
  const { starts, ends } = cells
  const noted = starts.length
  let carry = new Uint8Array(0)

  const note = (bytes: Uint8Array, column: number, from: number, to: number) => {
    if (column >= noted) return
    while (from < to && (bytes[from] === space || bytes[from] === tab)) from++
    while (to > from && (bytes[to - 1] === space || bytes[to - 1] === tab)) to--
    starts[column] = from
    ends[column] = to
  }

  const scan = (bytes: Uint8Array, last: boolean): Refusal | ScanStop | null => {
    const length = bytes.length
    let rowStart = 0
    let fieldStart = 0
    let column = 0
    let at = 0
    /** Ends the row after its last cell and goes on behind the byte at `at`. */
    const endRow = (): Refusal | null => {
      const refusal = onRow(bytes, column + 1)
      rowStart = fieldStart = ++at
      column = 0
      return refusal
    }
    while (at < length) {
      const byte = bytes[at]!
      if (byte > quoteByte && byte !== delimiter) at++
      else if (byte === delimiter) {
        note(bytes, column++, fieldStart, at)
        fieldStart = ++at
      } else if (byte === newline || byte === carriageReturn) {
        if (column === 0 && isBlank(bytes, fieldStart, at)) rowStart = fieldStart = ++at
        else {
          note(bytes, column, fieldStart, at)
          const refusal = endRow()
          if (refusal) return refusal
        }
      } else if (byte === quoteByte && isBlank(bytes, fieldStart, at)) {
        const closing = closingQuote(bytes, at + 1)
        if (closing < 0) break
        if (column < noted) {
          starts[column] = at + 1
          ends[column] = closing
        }
        at = closing + 1
        // At the very end of a chunk nothing is settled: the row is scanned again with what follows.
        while (at < length && bytes[at] !== delimiter && bytes[at] !== newline && bytes[at] !== carriageReturn) at++
        if (at < length && bytes[at] === delimiter) {
          column++
          fieldStart = ++at
        } else if (at < length || last) {
          const refusal = endRow()
          if (refusal) return refusal
        }
      } else at++
    }
    // Only a quote that never closes stops the loop early.
    const open = at < length
    if (last) {
      if (open) return 'unterminated-quote'
      if (rowStart >= length || (column === 0 && isBlank(bytes, fieldStart, length))) return null
      note(bytes, column, fieldStart, length)
      return onRow(bytes, column + 1)
    }
    if (length - rowStart > longestRow) return open ? 'unterminated-quote' : 'row-too-long'
    carry = bytes.slice(rowStart)
    return null
  }

  return {
    push: bytes => scan(carry.length === 0 ? bytes : joined(carry, bytes), false),
    end() {
      const rest = carry
      carry = new Uint8Array(0)
      return scan(rest, true)
    },
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
