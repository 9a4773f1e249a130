// The number in a cell: fast from bytes for plain ones, carefully from text for the others.

export type DecimalMark = '.' | ','

/** No number, time or date of a log is longer; a longer cell is text, and is not searched for one. */
export const longestCell = 64

const powers = Array.from({ length: 23 }, (_, power) => 10 ** power)

/**
 * The plain decimal number in bytes[from, to), or NaN when it is anything else (`cellNumber` then has a closer look).
 *
 * Exact: up to 15 digits are an integer below 2^53, and division by a power of ten up to 10^22 rounds once, so the
 * result is the double nearest to the text (Clinger 1990, "How to read floating point numbers accurately").
 */
export function plainNumber(bytes: Uint8Array, from: number, to: number, markByte: number): number {
  if (to - from > 40 || to <= from) return Number.NaN
  let at = from
  const sign = bytes[at]!
  if (sign === 45 || sign === 43) at++
  let value = 0
  let digits = 0
  let decimals = -1
  for (; at < to; at++) {
    const byte = bytes[at]!
    const digit = byte - 48
    if (digit >= 0 && digit <= 9) {
      value = value * 10 + digit
      digits++
      if (decimals >= 0) decimals++
    } else if (byte === markByte && decimals < 0) decimals = 0
    else return Number.NaN
  }
  if (digits === 0) return Number.NaN
  if (digits > 15) return longNumber(bytes, from, to, markByte)
  if (decimals > 0) value /= powers[decimals]!
  return sign === 45 ? -value : value
}

/** All digits of a computer's printout: too many for the fast way. */
function longNumber(bytes: Uint8Array, from: number, to: number, markByte: number): number {
  let text = ''
  for (let at = from; at < to; at++) text += bytes[at] === markByte ? '.' : String.fromCharCode(bytes[at]!)
  return Number(text)
}

const shaped = /^([+-]?)(\d[\d.,' ]*|[.,]\d+)(?:e([+-]?\d{1,3}))?\s*([^\d\s.,;:=][^\d,;=]{0,11})?$/i

export type CellNumber = {
  readonly value: number
  /** The unit written behind it: the "V" of "4.105 V". */
  readonly unit: string
}

/**
 * The number in a cell with grouping, exponent or a unit behind it; null when there is none.
 *
 * With decimal mark "." a comma can only group digits, and the other way round; a group is three digits.
 */
export function cellNumber(text: string, mark: DecimalMark): CellNumber | null {
  if (text.length > longestCell) return null
  const plain = text
    .replace(/[\u00a0\u202f\u2009]/g, ' ')
    .replace(/\u2212/g, '-')
    .trim()
  const match = shaped.exec(plain)
  if (!match) return null
  const [whole = '', fraction, ...more] = match[2]!.trim().split(mark)
  if (more.length > 0 || (fraction !== undefined && !/^\d*$/.test(fraction))) return null
  const groups = whole.split(/[.,' ]/)
  if (groups.length > 1 && !(/^\d{1,3}$/.test(groups[0]!) && groups.slice(1).every(group => /^\d{3}$/.test(group))))
    return null
  const value = Number(`${match[1]}${groups.join('') || '0'}.${fraction || '0'}e${match[3] ?? '0'}`)
  return Number.isFinite(value) ? { value, unit: (match[4] ?? '').trim() } : null
}
