// The past of a finding as a chart: its own thing, week by week as releases showed it, with what would be too much and when it was noticed.
import { drawTrend } from '../../../pictures/charts/draw-trend.ts'
import { numbersIn } from '../../../pictures/charts/plot.ts'
import type { Drawing } from '../../../pictures/drawing.ts'
import type { Finding } from '../../../trends/findings/finding.ts'
import { pastOf, type ReleasedWeek, thingOf } from '../../../trends/findings/past.ts'
import { sayWeekNumber } from '../../../words/dates.ts'
import { bare, unmarked } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import type { TrendNames } from '../../../words/trend-names.ts'
import { cut } from '../../message/parts.ts'
import { weeksShown } from '../recent-releases.ts'

/** A title of two lines says which fault it is. */
const longestFault = 48

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
  const family = names.family(thing.family)
  const fault = thing.rule === null ? undefined : cutQuoted(unmarked(names.rule(thing.family, thing.rule)))
  const what = fault === undefined ? unmarked(family) : `${unmarked(family)}: ${fault}`
  return drawTrend({
    title: say('finding.chart', { what: bare(what) }),
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

/** Cut where it is too long, and still closed as it was opened. */
function cutQuoted(quoted: string): string {
  const short = cut(quoted, longestFault)
  const [closing = ''] = /[^\p{L}\p{N}.…]$/u.exec(quoted) ?? []
  return short.endsWith(closing) ? short : `${short}${closing}`
}
