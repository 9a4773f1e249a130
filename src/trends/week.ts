// ISO 8601 weeks as 'YYYY-Www' in UTC: the finest time the trends room knows.

/** A week as ISO 8601 writes it, '2026-W07'. Sorts as text. */
export type Week = string

const day = 86_400_000
const shape = /^(\d{4})-W(\d{2})$/
/** A Monday: 1970-01-05, the first Monday after 1970 began. */
const someMonday = 4 * day

/**
 * The ISO week that holds an instant. A week belongs to the year its Thursday is in (ISO 8601-1:2019, 3.1.1.23; from memory).
 * @param ms milliseconds since 1970, UTC
 */
export function weekOf(ms: number): Week {
  const thursday = mondayOf(ms) + 3 * day
  const year = new Date(thursday).getUTCFullYear()
  const number = 1 + Math.floor((thursday - Date.UTC(year, 0, 1)) / (7 * day))
  return `${String(year).padStart(4, '0')}-W${String(number).padStart(2, '0')}`
}

/** The instant a week begins: Monday 00:00 UTC, in milliseconds since 1970. NaN for text that is no week. */
export function weekStart(week: Week): number {
  const known = starts.get(week)
  if (known !== undefined) return known
  const start = readStart(week)
  if (starts.size >= mostKept) starts.clear()
  starts.set(week, start)
  return start
}

/** Releases ask for the same few weeks once for every outcome; a clock cares for a century of them. */
const starts = new Map<Week, number>()
const mostKept = 5000

function readStart(week: Week): number {
  const found = shape.exec(week)
  if (!found) return Number.NaN
  const [, year, number] = found
  // 4 January is always in week 1.
  return mondayOf(Date.UTC(Number(year), 0, 4)) + (Number(number) - 1) * 7 * day
}

/** Whether text names a week that exists: '2026-W53' does, '2025-W53' does not. */
export function isWeek(text: unknown): text is Week {
  return typeof text === 'string' && shape.test(text) && weekOf(weekStart(text)) === text
}

/** The week `by` weeks later, or earlier for a negative number. */
export function weekPlus(week: Week, by: number): Week {
  return weekOf(weekStart(week) + by * 7 * day)
}

export const nextWeek = (week: Week): Week => weekPlus(week, 1)

/** How many weeks `to` lies after `from`; negative if it lies before. */
export function weeksFrom(from: Week, to: Week): number {
  return Math.round((weekStart(to) - weekStart(from)) / (7 * day))
}

/** The `count` weeks that end with `last`, oldest first. */
export function weeksUpTo(last: Week, count: number): Week[] {
  return Array.from({ length: count }, (_, i) => weekPlus(last, i - count + 1))
}

function mondayOf(ms: number): number {
  return Math.floor((ms - someMonday) / (7 * day)) * 7 * day + someMonday
}
