// The buttons under a release: another view of it, or the release as a file.

import { isView, type ReleaseAct, type ReleaseView } from '../../custom-ids/trends-id.ts'
import { dayOf } from '../../engine/day-of.ts'
import { drawShares } from '../../pictures/from-trends/draw-shares.ts'
import { drawWeeks } from '../../pictures/from-trends/draw-weeks.ts'
import type { ReleasedWeek } from '../../trends/findings/past.ts'
import { kindOfWeek } from '../../trends/kind-of-week.ts'
import { noticeable, volumeOf } from '../../trends/noticeable.ts'
import type { Release } from '../../trends/release/release.ts'
import { releaseSchema } from '../../trends/release/release-schema.ts'
import { toCsv } from '../../trends/release/to-csv.ts'
import type { Week } from '../../trends/week.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { openTrendNames } from '../../words/trend-names.ts'
import { type Clicked, redraw, refuse, replyWithFile } from '../interaction/reply.ts'
import type { ShownMessage } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { type FoundRelease, findRelease } from './find-release.ts'
import { recentReleases, weeksBehind, weeksShown } from './recent-releases.ts'
import { type AroundRelease, showRelease, type WeeksBeside } from './show/release.ts'

export async function releaseClick(services: Services, interaction: Clicked, act: ReleaseAct): Promise<void> {
  const say = sayIn(interaction.locale)
  const found = await findRelease(services, interaction, act.week, act.is === 'pool' ? 'pool' : 'server')
  if (!found.ok) return refuse(interaction, say, found.refusal)
  if (isView(act.what)) return redraw(interaction, await viewRelease(services, say, found, act.what))
  const of = act.is === 'pool' ? 'pooled-checks' : 'checks'
  const { what } = act
  if (what === 'json' || what === 'schema') {
    const [name, content] =
      what === 'json' ? [`${of}-${act.week}.json`, found.bytes] : ['release.schema.json', releaseSchema()]
    return replyWithFile(interaction, say(`trends.exported.${what}`), { name, content })
  }
  // Of the pool no past is given: it may have been of too few servers then.
  const many = what === 'weeks' && act.is === 'release'
  const releases = many ? await releasesUpTo(services, found, act.week) : [found.release]
  await replyWithFile(interaction, `${say('trends.exported')}\n${say('trends.exported.columns')}`, {
    name: `${of}-${many ? 'up-to-' : ''}${act.week}.csv`,
    content: toCsv(releases),
  })
}

/** Two years of weeks are what most servers keep, and no large file. */
const mostWeeks = 104

async function releasesUpTo(services: Services, { settings }: Found, week: Week): Promise<Release[]> {
  const weeks = await recentReleases(services, settings.server, week, mostWeeks)
  return weeks.flatMap(({ release }) => release ?? [])
}

type Found = Extract<FoundRelease, { ok: true }>

export async function viewRelease(
  services: Services,
  say: Say,
  found: Found,
  view: ReleaseView,
  above: AroundRelease['above'] = [],
): Promise<ShownMessage> {
  const names = openTrendNames(say, await services.families.programsFor(found.settings.server), dayOf(services.now()))
  const { release, settings } = found
  // Of the pool no past is shown: it may have been of too few servers then.
  const own = release.scope === 'server'
  // As many weeks as what is usual rests on.
  const most = view === 'overview' ? weeksBehind : weeksShown
  const needed = own && (view === 'overview' || view === 'rises')
  const past = needed ? await recentReleases(services, settings.server, release.week, most) : []
  const chart = chartOf(say, release, view, past)
  const picture = chart && (await services.pictures.ofDrawing(chart.name, chart.drawing, say))
  const volume = view === 'rises' ? volumeOf(past.flatMap(one => one.release ?? [])) : undefined
  return showRelease(say, names, release, view, picture, {
    above,
    pooling: settings.pooling,
    beside: own ? await weeksBeside(services, found) : {},
    noticeable: volume && noticeable(volume),
    kind: view === 'overview' ? kindOfWeek(past) : undefined,
  })
}

/** The weeks with a release before and after this one. */
async function weeksBeside(services: Services, { release, settings }: Found): Promise<WeeksBeside> {
  const weeks = await services.trends.releases.weeks({ kind: 'server', server: settings.server })
  const at = weeks.indexOf(release.week)
  return { before: weeks[at - 1], after: at < 0 ? undefined : weeks[at + 1] }
}

function chartOf(say: Say, release: Release, view: ReleaseView, past: readonly ReleasedWeek[]) {
  if (view === 'overview' && release.verdicts.length > 0)
    return { name: 'verdicts.png', drawing: drawShares(say, release) }
  // A later notice takes the place of an earlier one in a release, so each week is asked for its own.
  const noticed = new Set([...release.rises, ...past.flatMap(one => one.release?.rises ?? [])].map(rise => rise.week))
  const weeks = view === 'rises' && past.length > 0 && drawWeeks(say, past, noticed)
  return weeks ? { name: 'weeks.png', drawing: weeks } : undefined
}
