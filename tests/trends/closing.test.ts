// Which weeks are due: on time, after downtime, and never by a clock that jumped.
import { expect, test } from 'vitest'
import { weeksDue } from '../../src/trends/closing.ts'
import { weekPlus, weekStart } from '../../src/trends/week.ts'

const hour = 3_600_000
const at = (week: string, hours: number): number => weekStart(week) + hours * hour

test('a week is due an hour after it ended', () => {
  expect(weeksDue(at('2026-W11', 0.9), '2026-W09', '2026-W01')).toEqual({ ok: true, weeks: [] })
  expect(weeksDue(at('2026-W11', 1), '2026-W09', '2026-W01')).toEqual({ ok: true, weeks: ['2026-W10'] })
  expect(weeksDue(at('2026-W11', 1), '2026-W10', '2026-W01')).toEqual({ ok: true, weeks: [] })
})

test('after downtime all that were missed, oldest first, across the turn of a long year', () => {
  expect(weeksDue(at('2027-W02', 5), '2026-W51', '2026-W01')).toEqual({
    ok: true,
    weeks: ['2026-W52', '2026-W53', '2027-W01'],
  })
})

test('before the first release from the oldest outcome on; nothing without outcomes', () => {
  expect(weeksDue(at('2026-W04', 5), null, '2026-W02')).toEqual({ ok: true, weeks: ['2026-W02', '2026-W03'] })
  expect(weeksDue(at('2026-W04', 5), null, '2026-W04')).toEqual({ ok: true, weeks: [] })
  expect(weeksDue(at('2026-W04', 5), null, null)).toEqual({ ok: true, weeks: [] })
})

test('a clock behind a closed week, or more than a year ahead, closes nothing', () => {
  expect(weeksDue(at('2026-W10', 50), '2026-W10', '2026-W01')).toEqual({
    ok: false,
    refusal: { code: 'clock-behind', now: '2026-W10', closed: '2026-W10' },
  })
  const far = weekPlus('2026-W10', 55)
  expect(weeksDue(at(far, 5), '2026-W10', '2026-W01')).toEqual({
    ok: false,
    refusal: { code: 'clock-ahead', now: far, closed: '2026-W10', weeks: 54 },
  })
})

test('a year of downtime is caught up with; a server that never closed a week has as many weeks as it likes', () => {
  const year = weeksDue(at(weekPlus('2026-W10', 54), 5), '2026-W10', '2026-W01')
  expect(year.ok && year.weeks.length).toBe(53)
  const first = weeksDue(at(weekPlus('2026-W10', 101), 5), null, '2026-W10')
  expect(first.ok && first.weeks.length).toBe(101)
})

test('how many are too many at once can be said', () => {
  expect(weeksDue(at('2026-W13', 5), '2026-W10', '2026-W01', 2).ok).toBe(true)
  expect(weeksDue(at('2026-W14', 5), '2026-W10', '2026-W01', 2)).toMatchObject({ refusal: { weeks: 3 } })
})
