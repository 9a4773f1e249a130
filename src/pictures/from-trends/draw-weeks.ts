// A server's releases week by week as a chart: how many failed checks each told of for the first time, and when what rises was noticed.

import { isFailing } from '../../ground/verdicts.ts'
import type { ReleasedWeek } from '../../trends/findings/past.ts'
import type { Release } from '../../trends/release/release.ts'
import type { Week } from '../../trends/week.ts'
import { sayWeekNumber } from '../../words/dates.ts'
import type { Say } from '../../words/say.ts'
import { drawTrend } from '../charts/draw-trend.ts'
import { numbersIn } from '../charts/plot.ts'
import type { Drawing } from '../drawing.ts'

/**
 * Only what the releases say themselves, in fives: nothing is told that was not shown before. A count is shown once five people
 * stand for it, so part of it may be of earlier weeks.
 */
const newlyFailed = ({ verdicts }: Release): number =>
  verdicts.filter(one => isFailing(one.verdict)).reduce((sum, one) => sum + one.more, 0)

/** `noticed`: the weeks that the text beside it names. Undefined where no week has anything to show. */
export function drawWeeks(say: Say, weeks: readonly ReleasedWeek[], noticed: ReadonlySet<Week>): Drawing | undefined {
  const columns = weeks.map(({ week, release }) => ({
    name: sayWeekNumber(week),
    ...(release && {
      failed: newlyFailed(release),
      alarm: noticed.has(week),
    }),
  }))
  if (!columns.some(one => one.failed !== undefined && one.failed > 0)) return undefined
  return drawTrend({
    title: say('trends.weeks'),
    weeks: columns,
    words: {
      failed: say('trends.weeks.failed'),
      alarm: say('trends.weeks.alarm'),
      withheld: say('trends.weeks.withheld'),
    },
    number: numbersIn(say.locale),
  })
}
