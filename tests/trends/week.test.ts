// ISO weeks against published examples and against Temporal's calendar.
import fc from 'fast-check'
import { Temporal } from 'temporal-polyfill'
import { expect, test } from 'vitest'
import { epochOf } from '../../src/trends/epoch.ts'
import { isWeek, nextWeek, weekOf, weekPlus, weekStart, weeksFrom, weeksUpTo } from '../../src/trends/week.ts'

// The examples of dates around the turn of the year that go with ISO 8601 week dates (from memory).
test.each([
  ['2005-01-01', '2004-W53'],
  ['2005-01-02', '2004-W53'],
  ['2005-12-31', '2005-W52'],
  ['2006-01-01', '2005-W52'],
  ['2006-01-02', '2006-W01'],
  ['2006-12-31', '2006-W52'],
  ['2007-01-01', '2007-W01'],
  ['2007-12-30', '2007-W52'],
  ['2007-12-31', '2008-W01'],
  ['2008-12-28', '2008-W52'],
  ['2008-12-29', '2009-W01'],
  ['2009-12-31', '2009-W53'],
  ['2010-01-03', '2009-W53'],
  ['2010-01-04', '2010-W01'],
])('%s is in %s', (date, week) => {
  expect(weekOf(Date.parse(`${date}T00:00:00Z`))).toBe(week)
  expect(weekOf(Date.parse(`${date}T23:59:59.999Z`))).toBe(week)
})

const instant = fc.integer({ min: Date.UTC(1971, 0, 1), max: Date.UTC(2199, 11, 31) })

test('the week Temporal gives for the same day', () => {
  fc.assert(
    fc.property(instant, ms => {
      const { yearOfWeek, weekOfYear } = Temporal.Instant.fromEpochMilliseconds(ms).toZonedDateTimeISO('UTC')
      expect(weekOf(ms)).toBe(`${yearOfWeek}-W${String(weekOfYear).padStart(2, '0')}`)
    }),
    { numRuns: 2000 },
  )
})

test('a week starts on the Monday it holds, and arithmetic on weeks is arithmetic', () => {
  fc.assert(
    fc.property(instant, fc.integer({ min: -300, max: 300 }), (ms, by) => {
      const week = weekOf(ms)
      expect(new Date(weekStart(week)).getUTCDay()).toBe(1)
      expect(ms - weekStart(week)).toBeGreaterThanOrEqual(0)
      expect(ms - weekStart(week)).toBeLessThan(7 * 86_400_000)
      expect(weeksFrom(week, weekPlus(week, by))).toBe(by)
      expect(weekPlus(weekPlus(week, by), -by)).toBe(week)
      expect(nextWeek(week) > week).toBe(true)
      expect(isWeek(week)).toBe(true)
    }),
  )
})

test.each(['2025-W53', '2026-W00', '2026-W54', '2026-W7', '2026-07', '', 'W07', null])('%s is no week', text => {
  expect(isWeek(text)).toBe(false)
})

test('the weeks up to one, oldest first', () => {
  expect(weeksUpTo('2010-W01', 3)).toEqual(['2009-W52', '2009-W53', '2010-W01'])
})

test('an epoch is a quarter of the ISO year, the last one longer in a long year', () => {
  expect(['2026-W01', '2026-W13', '2026-W14', '2026-W39', '2026-W40', '2026-W53'].map(epochOf)).toEqual([
    '2026-E1',
    '2026-E1',
    '2026-E2',
    '2026-E3',
    '2026-E4',
    '2026-E4',
  ])
})

test('text that is no week begins never; years of less than four digits are written with four', () => {
  for (const text of ['nonsense', '2026-W7', '', '2026-W07x', 'x2026-W07']) expect(weekStart(text)).toBeNaN()
  expect(weekOf(Date.parse('0999-06-30T00:00:00Z'))).toBe('0999-W26')
  expect(isWeek('0999-W26')).toBe(true)
  expect(weeksUpTo('2026-W07', 0)).toEqual([])
})

test('a week that is asked for again, after very many others, begins when it began', () => {
  const before = weekStart('2026-W07')
  for (let i = 0; i < 6000; i++) weekStart(`n${i}`)
  expect(weekStart('2026-W07')).toBe(before)
  expect(weekStart('2026-W07')).toBe(Date.UTC(2026, 1, 9))
})
