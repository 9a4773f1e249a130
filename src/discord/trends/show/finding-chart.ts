// The past of a finding as a chart: its own thing, week by week as releases showed it, with what would be too much and when it was noticed.
import { drawTrend } from '../../../pictures/charts/draw-trend.ts'
import { numbersIn } from '../../../pictures/charts/plot.ts'
import type { Drawing } from '../../../pictures/drawing.ts'
import type { Finding } from '../../../trends/findings/finding.ts'
import { foundFirst, pastOf, type ReleasedWeek, thingOf } from '../../../trends/findings/past.ts'
import { sayWeekNumber } from '../../../words/dates.ts'
import { nameThing } from '../../../words/finding-words.ts'
import { bare, unmarked } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import type { TrendNames } from '../../../words/trend-names.ts'
import { weeksShown } from '../recent-releases.ts'

/** Undefined where no release has shown anything of it yet. */
export function drawFinding(
  say: Say,
  names: TrendNames,
  finding: Finding,
  weeks: readonly ReleasedWeek[],
): Drawing | undefined {
  const thing = thingOf(finding)
  const past = pastOf(weeks, thing, finding, weeksShown)
  if (!past.some(one => (one.failed ?? 0) > 0)) return undefined
  const what = bare(unmarked(nameThing(say, names, finding)))
  const [begins] = past.map(one => one.week)
  const later = begins !== undefined && foundFirst(finding) < begins
  return drawTrend({
    title: later ? say('finding.chart.later', { what, week: sayWeekNumber(begins) }) : say('finding.chart', { what }),
    weeks: past.map(({ week, failed, bound, noticed }) => ({
      name: sayWeekNumber(week),
      ...(failed !== undefined && { failed, alarm: noticed }),
      ...(bound !== undefined && { bound }),
    })),
    words: {
      failed: say('finding.chart.failed'),
      bound: say('finding.chart.bound'),
      alarm: say('finding.chart.alarm'),
      withheld: say('trends.weeks.withheld'),
    },
    number: numbersIn(say.locale),
  })
}
