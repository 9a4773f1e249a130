// The buttons under a release: another view of it, or the release as a file.
import type { Release } from '../../trends/release/release.ts'
import { toCsv } from '../../trends/release/to-csv.ts'
import { type Clicked, redraw, refuse, replyWithFile } from '../answer.ts'
import type { Desk } from '../desk.ts'
import { findRelease } from '../find-release.ts'
import type { ShownMessage } from '../show/parts.ts'
import { drawShares, showRelease } from '../show/release.ts'
import { decodeTrends, isView, type ReleaseView, type TrendsAct } from '../trends-id.ts'
import { type Say, sayIn } from '../words/say.ts'
import { openTrendNames } from '../words/trend-names.ts'
import type { ClickHandler } from './manifest.ts'

export const trendsClick: ClickHandler = (desk, interaction) => {
  const act = decodeTrends(interaction.customId)
  return act?.is === 'release' ? press(desk, interaction, act) : undefined
}

async function press(desk: Desk, interaction: Clicked, act: Extract<TrendsAct, { is: 'release' }>): Promise<void> {
  const say = sayIn(interaction.locale)
  const found = await findRelease(desk, interaction, act.week)
  if (!found.ok) return refuse(interaction, say, found.refusal)
  if (isView(act.what)) return redraw(interaction, await viewRelease(desk, say, found.release, act.what))
  const [ending, content] = act.what === 'csv' ? ['csv', toCsv(found.release)] : ['json', found.bytes]
  await replyWithFile(interaction, say('trends.exported'), { name: `checks-${act.week}.${ending}`, content })
}

export async function viewRelease(desk: Desk, say: Say, release: Release, view: ReleaseView): Promise<ShownMessage> {
  const names = openTrendNames(say, desk.programs, new Date(desk.now()).toISOString().slice(0, 10))
  // The chart is the same in every view; only the overview repeats it.
  const picture =
    view === 'overview' && release.verdicts.length > 0
      ? await desk.pictures.ofDrawing('verdicts.png', drawShares(say, release), say)
      : undefined
  return showRelease(say, names, release, view, picture)
}
