// The buttons under a release: another view of it, or the release as a file.
import { dayOf } from '../../engine/day-of.ts'
import { toCsv } from '../../trends/release/to-csv.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { openTrendNames } from '../../words/trend-names.ts'
import { type Clicked, redraw, refuse, replyWithFile } from '../interaction/reply.ts'
import type { ShownMessage } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { type FoundRelease, findRelease } from './find-release.ts'
import { recentReleases } from './recent-releases.ts'
import { showRelease } from './show/release.ts'
import { drawShares } from './show/shares-chart.ts'
import { drawWeeks } from './show/weeks-chart.ts'
import { isView, type ReleaseAct, type ReleaseView } from './trends-id.ts'

export async function releaseClick(services: Services, interaction: Clicked, act: ReleaseAct): Promise<void> {
  const say = sayIn(interaction.locale)
  const found = await findRelease(services, interaction, act.week, act.is === 'pool' ? 'pool' : 'server')
  if (!found.ok) return refuse(interaction, say, found.refusal)
  if (isView(act.what)) return redraw(interaction, await viewRelease(services, say, found, act.what))
  const [ending, content] = act.what === 'csv' ? ['csv', toCsv(found.release)] : ['json', found.bytes]
  await replyWithFile(interaction, say('trends.exported'), {
    name: `${act.is === 'pool' ? 'pooled-checks' : 'checks'}-${act.week}.${ending}`,
    content,
  })
}

type Found = Extract<FoundRelease, { ok: true }>

export async function viewRelease(
  services: Services,
  say: Say,
  found: Found,
  view: ReleaseView,
): Promise<ShownMessage> {
  const names = openTrendNames(say, services.programs, dayOf(services.now()))
  const chart = await chartOf(services, say, found, view)
  const picture = chart && (await services.pictures.ofDrawing(chart.name, chart.drawing, say))
  return showRelease(say, names, found.release, view, picture, found.settings.pooling)
}

async function chartOf(services: Services, say: Say, { release, settings }: Found, view: ReleaseView) {
  if (view === 'overview' && release.verdicts.length > 0)
    return { name: 'verdicts.png', drawing: drawShares(say, release) }
  // Of the pool no past is drawn: it may have been of too few servers then.
  const ownRises = view === 'rises' && release.scope === 'server'
  const noticed = new Set(release.rises.map(rise => rise.week))
  const weeks = ownRises && drawWeeks(say, await recentReleases(services, settings.server, release.week), noticed)
  return weeks ? { name: 'weeks.png', drawing: weeks } : undefined
}
