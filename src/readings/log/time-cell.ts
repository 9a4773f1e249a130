// Time as logs write it: clocks ("1:02:03.5", "2d 03:04:05") and timestamps in the usual orders, as seconds.

import { longestCell } from './number-cell.ts'

export type StampOrder = 'year-first' | 'day-first' | 'month-first' | 'unknown'

const clock =
  /^(?:(\d+)\s*(?:d|days?|tage?|dias?|jours?)?[ .,-]\s*)?(\d{1,6}):([0-5]?\d)(?::([0-5]?\d)(?:[.,](\d{1,9}))?)?(?:[.,](\d{1,9}))?\s*([ap]\.?m\.?)?$/i

/**
 * Seconds of a clock text; null if it is none. Two parts are h:mm or m:ss as `twoParts` says.
 *
 * Hours may exceed 24 (elapsed time); a day count in front adds 86,400 s each.
 */
export function clockSeconds(text: string, twoParts: 'h:mm' | 'm:ss'): number | null {
  if (text.length > longestCell) return null
  const match = clock.exec(text.trim())
  if (!match) return null
  const [, days, a, b, c, decimals, shortDecimals, half] = match
  const fraction = Number(`0.${decimals ?? shortDecimals ?? '0'}`)
  let [hours, minutes, seconds] = [Number(a), Number(b), Number(c ?? 0)]
  if (c === undefined && twoParts === 'm:ss') [hours, minutes, seconds] = [0, Number(a), Number(b)]
  if (half) hours = (hours % 12) + (/^p/i.test(half) ? 12 : 0)
  return Number(days ?? 0) * 86_400 + hours * 3600 + minutes * 60 + seconds + fraction
}

/** Whether a clock text has only two parts, so that it may be h:mm or m:ss. */
export function isTwoPartClock(text: string): boolean {
  return /^\d{1,6}:[0-5]?\d(?:[.,]\d+)?$/.test(text.trim())
}

const stamp =
  /^(\d{1,4})([-/.])(\d{1,2})\2(\d{1,4})(?:[T ,_-]+(.+?))?(?:\s*(?:Z|UTC|GMT)|(?<=:[\d.,]+)[+-]\d\d:?\d\d)?$/i

export type Stamp = {
  /** Seconds since 1970 when the text is read with the day first, and with the month first; NaN where that is no date. */
  readonly dayFirst: number
  readonly monthFirst: number
}

/** A date with an optional time of day; the year may come first or last, two-digit years are 20xx. Zone is left out. */
export function stampSeconds(text: string): Stamp | null {
  if (text.length > longestCell) return null
  const match = stamp.exec(text.trim())
  if (!match) return null
  const [, first = '', , second = '', third = '', time] = match
  const ofDay = time === undefined ? 0 : clockSeconds(time, 'h:mm')
  if (ofDay === null || ofDay >= 86_401) return null
  if (first.length === 4) {
    const seconds = days(Number(first), Number(second), Number(third)) * 86_400 + ofDay
    return Number.isNaN(seconds) ? null : { dayFirst: seconds, monthFirst: seconds }
  }
  if (third.length !== 4 && third.length !== 2) return null
  const year = third.length === 2 ? 2000 + Number(third) : Number(third)
  const dayFirst = days(year, Number(second), Number(first)) * 86_400 + ofDay
  const monthFirst = days(year, Number(first), Number(second)) * 86_400 + ofDay
  return Number.isNaN(dayFirst) && Number.isNaN(monthFirst) ? null : { dayFirst, monthFirst }
}

function days(year: number, month: number, day: number): number {
  if (month < 1 || month > 12 || day < 1 || day > 31 || year < 1990 || year > 2099) return Number.NaN
  return Date.UTC(year, month - 1, day) / 86_400_000
}

/** The day order a column of stamps shows, from cells where only one order is a date. */
export function stampOrder(cells: readonly string[]): StampOrder {
  let order: StampOrder = 'unknown'
  for (const cell of cells) {
    const read = stampSeconds(cell)
    if (!read) continue
    if (/^\d{4}/.test(cell.trim())) return 'year-first'
    if (/^\d{1,2}\./.test(cell.trim())) return 'day-first'
    if (Number.isNaN(read.monthFirst)) order = 'day-first'
    else if (Number.isNaN(read.dayFirst)) order = 'month-first'
  }
  return order
}

export type TimeKind = 'number' | 'clock' | 'stamp'

/** Reads the time cells of one column, row after row; remembers the last one for midnight and for the day order. */
export function timeReader(
  kind: 'clock' | 'stamp',
  twoParts: 'h:mm' | 'm:ss',
  order: StampOrder,
): (text: string) => number {
  let last = Number.NaN
  let daysPassed = 0
  if (kind === 'clock') {
    return text => {
      const seconds = clockSeconds(text, twoParts)
      if (seconds === null) return Number.NaN
      // A clock of the day that starts again after midnight; elapsed time that starts again is another run.
      if (last > 85_800 && last < 86_400 && seconds < 600) daysPassed++
      last = seconds
      return seconds + daysPassed * 86_400
    }
  }
  let before: Stamp | undefined
  let elapsed = 0
  return text => {
    const read = stampSeconds(text)
    if (!read) return Number.NaN
    if (order === 'month-first') return read.monthFirst
    if (order !== 'unknown') return read.dayFirst
    // Nothing in the file tells day from month: the order in which less time passed since the last stamp is the right one.
    if (before) {
      const steps = [read.dayFirst - before.dayFirst, read.monthFirst - before.monthFirst].filter(Number.isFinite)
      const onwards = steps.filter(step => step >= 0)
      elapsed += onwards.length > 0 ? Math.min(...onwards) : Math.max(...steps)
    }
    before = read
    return elapsed
  }
}
