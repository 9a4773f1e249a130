// Undoes what a spreadsheet does to a log it did not take apart: every line saved again as one quoted cell.

const [quote, newline, carriageReturn, space, tab, comma, semicolon] = [34, 10, 13, 32, 9, 44, 59] as const
/** A line longer than this is handed on as it is, so that nothing is gathered without end. */
const longest = 65_536

const wholeLine = /^"(?:[^"]|"")*"[,; \t]*$/

/** Whether most lines of the head are one quoted cell that holds a separator: `"0;4,105;1,000"`. */
export function hasWrappedLines(head: string): boolean {
  const lines = head
    .split(/[\r\n]+/)
    .filter(line => line.trim() !== '')
    .slice(0, 60)
  const wrapped = lines.filter(line => wholeLine.test(line) && /[,;\t|]/.test(line.slice(1, line.lastIndexOf('"'))))
  return wrapped.length >= 3 && wrapped.length >= 0.6 * lines.length
}

export type LineUnwrapper = {
  /** The lines that are whole by now, without the quotes around them. */
  push(bytes: Uint8Array): Uint8Array
  /** What is left of the last line. */
  end(): Uint8Array
}

/** Takes the quotes off wholly quoted lines and single the doubled ones inside; other lines stay as they are. */
export function lineUnwrapper(): LineUnwrapper {
  let carry: Uint8Array = new Uint8Array(0)
  const unwrap = (bytes: Uint8Array, last: boolean): Uint8Array => {
    const out = new Uint8Array(bytes.length)
    let [written, start] = [0, 0]
    const copy = (from: number, to: number) => {
      out.set(bytes.subarray(from, to), written)
      written += to - from
    }
    const endLine = (end: number) => {
      const closing = closingOf(bytes, start, end)
      if (closing < 0) return copy(start, end)
      for (let at = start + 1; at < closing; at++) {
        out[written++] = bytes[at]!
        if (bytes[at] === quote) at++
      }
    }
    for (let at = 0; at < bytes.length; at++) {
      if (bytes[at] !== newline && bytes[at] !== carriageReturn) continue
      endLine(at)
      out[written++] = bytes[at]!
      start = at + 1
    }
    if (last) endLine(bytes.length)
    else if (bytes.length - start > longest) copy(start, bytes.length)
    else {
      carry = bytes.slice(start)
      return out.subarray(0, written)
    }
    carry = new Uint8Array(0)
    return out.subarray(0, written)
  }
  return {
    push(bytes) {
      if (carry.length === 0) return unwrap(bytes, false)
      const both = new Uint8Array(carry.length + bytes.length)
      both.set(carry)
      both.set(bytes, carry.length)
      return unwrap(both, false)
    },
    end: () => unwrap(carry, true),
  }
}

/** Where the quote closes that opens a line, if nothing but separators and blanks follows it; else -1. */
function closingOf(bytes: Uint8Array, start: number, end: number): number {
  if (bytes[start] !== quote) return -1
  let at = start + 1
  while (at < end && (bytes[at] !== quote || bytes[at + 1] === quote)) at += bytes[at] === quote ? 2 : 1
  if (at >= end) return -1
  for (let after = at + 1; after < end; after++)
    if (![space, tab, comma, semicolon].includes(bytes[after] as typeof space)) return -1
  return at
}
