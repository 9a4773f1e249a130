// A finding as a message, with its chart: for the moderators' channel, or for one of them who looks at it.
import { dayOf } from '../../engine/day-of.ts'
import type { Finding } from '../../trends/findings/finding.ts'
import { weekOf, weekPlus } from '../../trends/week.ts'
import type { Say } from '../../words/say.ts'
import { openTrendNames } from '../../words/trend-names.ts'
import type { ShownMessage } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { recentReleases, weeksBehind, weeksShown } from './recent-releases.ts'
import { type FindingView, showFinding } from './show/finding.ts'
import { drawFinding } from './show/finding-chart.ts'

export async function viewFinding(
  services: Pick<Services, 'trends' | 'now'> & {
    readonly families: Pick<Services['families'], 'programsFor'>

    readonly pictures: Pick<Services['pictures'], 'ofDrawing'>
  },
  say: Say,
  finding: Finding,
  how: Pick<FindingView, 'note' | 'fromList'> = {},
): Promise<ShownMessage> {
  const programs = await services.families.programsFor(finding.server)
  const names = openTrendNames(say, programs, dayOf(services.now()))
  const week = weekOf(services.now())
  // As many weeks before those that are drawn as what is foreseen of them rests on.
  const most = weeksShown + weeksBehind
  const weeks = await recentReleases(services, finding.server, weekPlus(week, -1), most)
  const drawing = drawFinding(say, names, finding, weeks)
  const picture = drawing && (await services.pictures.ofDrawing('finding.png', drawing, say))
  return showFinding(say, names, finding, { week, picture, ...how })
}
