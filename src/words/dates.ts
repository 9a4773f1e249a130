// Days and weeks as the reader writes them: one form each, wherever moderators meet them. A moment with its hour is Discord's to show.
import { type Week, weekStart } from '../trends/week.ts'
import { dayIn } from './formatters.ts'
import type { Say } from './say.ts'

const day = 24 * 3600_000

/** `at`: ms since 1970. */
export const sayDay = (say: Say, at: number): string => dayIn(say.locale).format(at)

/** Its first and last day, and its number as charts write it. */
export const sayWeek = (say: Say, week: Week): string =>
  `${dayIn(say.locale).formatRange(weekStart(week), weekStart(week) + 6 * day)} (${sayWeekNumber(week)})`

/** ISO 8601 writes a week of a year so in every language. */
export const sayWeekNumber = (week: Week): string => week.slice(week.indexOf('W'))
