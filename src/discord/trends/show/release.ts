// Shows a frozen release: a chart, one text that reads well on a phone, and buttons for its parts and for exports.
import { type APIMessageTopLevelComponent, ButtonStyle } from 'discord.js'
import { encodeTrends, type ReleaseView, releaseExports, releaseViews } from '../../../custom-ids/trends-id.ts'
import type { ShownPicture } from '../../../services/pictures/shown-picture.ts'
import type { KindOfWeek } from '../../../trends/kind-of-week.ts'
import type { Noticeable } from '../../../trends/noticeable.ts'
import type { Release } from '../../../trends/release/release.ts'
import type { Week } from '../../../trends/week.ts'
import { sayWeek } from '../../../words/dates.ts'
import { sayKindOfWeek } from '../../../words/kind-of-week-words.ts'
import type { Say } from '../../../words/say.ts'
import type { TrendNames } from '../../../words/trend-names.ts'
import {
  sayChecks,
  sayCount,
  sayPatterns,
  sayPlaces,
  sayRises,
  sayRules,
  saySpikes,
  sayTitle,
  sayVerdicts,
} from '../../../words/trend-words.ts'
import { type FittingList, fitLists } from '../../message/fit-text.ts'
import { gallery, message, pressButton, rows, type ShownMessage, small, text, textBudget } from '../../message/parts.ts'

/** The weeks with a release before and after one. */
export type WeeksBeside = { readonly before?: Week | undefined; readonly after?: Week | undefined }

export type AroundRelease = {
  /** What stands above it all. */
  readonly above: readonly APIMessageTopLevelComponent[]
  readonly pooling: boolean
  readonly beside: WeeksBeside
  /** What could be noticed on a server like this one. */
  readonly noticeable: Noticeable | undefined
  /** Undefined where it is not said: in the pool, in other views, and while it is too early. */
  readonly kind: KindOfWeek | undefined
}

export function showRelease(
  say: Say,
  names: TrendNames,
  release: Release,
  view: ReleaseView,
  picture: ShownPicture | undefined,
  { above, pooling, beside, noticeable, kind }: AroundRelease,
): ShownMessage {
  const { week, scope } = release
  const is = scope === 'pool' ? 'pool' : 'release'
  const other = scope === 'pool' ? 'release' : 'pool'
  const said = kind ? sayKindOfWeek(say, names, kind).map(one => `**${one.label}** ${one.text}`) : []
  const head = [`### ${sayTitle(say, release)}`, sayChecks(say, release), ...said].join('\n')
  const foot = `${say(scope === 'pool' ? 'trends.fives.pool' : 'trends.fives')}\n${say('caution.line')}`
  const lists = listsOf(say, names, release, view)
  const volume = noticeable ? [say('trends.noticeable', { ...noticeable })] : []
  const shown = picture ? [picture] : []
  const taken = above.map(one => ('content' in one ? one.content : '')).join('')
  return message(
    [
      ...above,
      text(head),
      ...gallery(shown),
      ...fitLists(lists, taken.length + head.length + foot.length + volume.join('').length + 20, textBudget).map(one =>
        text(one),
      ),
      ...volume.map(one => text(one)),
      ...rows([
        ...releaseViews.map(one =>
          pressButton(
            encodeTrends({ is, week, what: one }),
            say(`trends.view.${one}`),
            one === view ? ButtonStyle.Primary : ButtonStyle.Secondary,
          ),
        ),
        pressButton(encodeTrends({ is: 'findings', filter: 'open', page: 0 }), say('trends.view.findings')),
      ]),
      ...rows([
        ...releaseExports
          .filter(one => scope === 'server' || one !== 'weeks')
          .map(one => pressButton(encodeTrends({ is, week, what: one }), say(`trends.export.${one}`))),
        ...(pooling ? [pressButton(encodeTrends({ is: other, week, what: view }), say(`trends.to.${other}`))] : []),
      ]),
      ...rows([
        ...(beside.before ? [toWeek(say, view, 'before', beside.before)] : []),
        ...(beside.after ? [toWeek(say, view, 'after', beside.after)] : []),
      ]),
      small(foot),
    ],
    shown,
  )
}

const toWeek = (say: Say, view: ReleaseView, where: 'before' | 'after', week: Week) =>
  pressButton(
    encodeTrends({ is: 'release', week, what: view }),
    say(`trends.week.${where}`, { week: sayWeek(say, week) }),
  )

function listsOf(say: Say, names: TrendNames, release: Release, view: ReleaseView): FittingList[] {
  const rest = (count: number) => say('list.rest', { count })
  const list = (title: string, items: readonly string[], most?: number): FittingList => ({
    title,
    items,
    rest,
    ...(most !== undefined && { most }),
  })
  const rises = list(say('trends.rises'), sayRises(say, names, release))
  const patterns = list(say('trends.patterns'), sayPatterns(say, names, release))
  switch (view) {
    case 'overview':
      return [{ ...rises, most: 3 }, { ...patterns, most: 2 }, list(say('trends.verdicts'), sayVerdicts(say, release))]
    case 'rises':
      return [rises, list(say('trends.spikes'), saySpikes(say, names, release))]
    case 'patterns':
      return [patterns]
    case 'families':
      return release.families.length === 0
        ? [list(say('trends.families'), [say('trends.families.none')])]
        : release.families.map(family =>
            list(sayCount(say, names.family(family.family), family), [
              ...sayVerdicts(say, family),
              ...sayRules(say, names, family),
              ...sayPlaces(say, names, family),
            ]),
          )
  }
}
