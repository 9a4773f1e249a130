// Shows the findings of a server by where they stand: a menu of states, a page of them, and several at once.
import { type APIStringSelectComponent, ButtonStyle, ComponentType } from 'discord.js'
import { encodeTrends, type FindingFilter } from '../../../custom-ids/trends-id.ts'
import { type Finding, findingStates } from '../../../trends/findings/finding.ts'
import type { Week } from '../../../trends/week.ts'
import { sayWeek } from '../../../words/dates.ts'
import {
  nameThing,
  sayFindingTitle,
  sayNews,
  sayNewsLabel,
  saySince,
  sayStanding,
} from '../../../words/finding-words.ts'
import { unmarked } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { shorten } from '../../../words/shorten.ts'
import type { TrendNames } from '../../../words/trend-names.ts'
import { cut, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'

export type FindingsView = {
  readonly filter: Exclude<FindingFilter, 'chosen'>
  readonly page: number
  /** The week that runs. */
  readonly week: Week
  readonly note?: string
  /** The latest release, to go back to. */
  readonly release: Week | undefined
}

const aPage = 4

export function showFindings(
  say: Say,
  names: TrendNames,
  all: readonly Finding[],
  { filter, page: wanted, week, note, release }: FindingsView,
): ShownMessage {
  const listed = filter === 'all' ? all : all.filter(one => one.state === filter)
  const pages = Math.max(1, Math.ceil(listed.length / aPage))
  const page = Math.min(wanted, pages - 1)
  const shown = listed.slice(page * aPage, (page + 1) * aPage)
  const turn = (to: number) => encodeTrends({ is: 'findings', filter, page: to })
  return message([
    ...(note ? [text(note)] : []),
    text(`### ${say('findings.title')}${pages > 1 ? ` (${page + 1}/${pages})` : ''}`),
    ...rows([filterMenu(say, all, filter)]),
    ...(shown.length === 0 ? [text(say('findings.none'))] : []),
    ...shown.map(one => ({
      type: ComponentType.Section as const,
      components: [text(entry(say, names, one, week))],
      accessory: pressButton(encodeTrends({ is: 'finding', id: one.id, does: 'see' }), say('findings.look')),
    })),
    ...rows(shown.length > 1 ? [severalMenu(say, names, shown)] : []),
    ...rows([
      ...(page > 0 ? [pressButton(turn(page - 1), say('page.back'))] : []),
      ...(page < pages - 1 ? [pressButton(turn(page + 1), say('page.on'))] : []),
      ...(release === undefined
        ? []
        : [pressButton(encodeTrends({ is: 'release', week: release, what: 'overview' }), say('trends.view.overview'))]),
    ]),
    small(`${say('trends.fives')}\n${say('caution.line')}`),
  ])
}

/** As many characters of what is new as leave room for four findings. */
const longestNews = 400

const newsOf = (say: Say, names: TrendNames, finding: Finding, week: Week): string =>
  `${sayNewsLabel(say, finding, week)} ${sayNews(say, names, finding, longestNews)}`

const entry = (say: Say, names: TrendNames, finding: Finding, week: Week): string =>
  [
    `**${sayFindingTitle(say, names, finding, week)}**`,
    `${sayStanding(say, finding, week)} ${saySince(say, finding)}`,
    `-# ${newsOf(say, names, finding, week)}`,
  ].join('\n')

function filterMenu(say: Say, all: readonly Finding[], filter: FindingsView['filter']): APIStringSelectComponent {
  return {
    type: ComponentType.StringSelect,
    custom_id: encodeTrends({ is: 'findings', filter: 'chosen', page: 0 }),
    placeholder: cut(say('findings.choose'), 150),
    options: (['all', ...findingStates] as const).map(one => ({
      value: one,
      label: cut(
        say(`findings.filter.${one}`, {
          count: one === 'all' ? all.length : all.filter(({ state }) => state === one).length,
        }),
        100,
      ),
      default: one === filter,
    })),
  }
}

const severalMenu = (say: Say, names: TrendNames, shown: readonly Finding[]): APIStringSelectComponent => ({
  type: ComponentType.StringSelect,
  custom_id: encodeTrends({ is: 'several', does: 'pick' }),
  placeholder: cut(say('findings.several'), 150),
  min_values: 1,
  max_values: shown.length,
  options: shown.map(one => ({
    value: one.id,
    label: cut(`${sayWeek(say, one.week)}: ${unmarked(names.family(one.family))}`, 100),
    description: shorten(unmarked(nameThing(say, names, one)), 100),
  })),
})

/** What can be done about those that were chosen, kept under `draft`. */
export function showSeveral(say: Say, names: TrendNames, chosen: readonly Finding[], draft: string): ShownMessage {
  return message([
    text(
      [
        `### ${say('findings.several.title', { count: chosen.length })}`,
        ...chosen.map(one => `- ${sayWeek(say, one.week)}: ${nameThing(say, names, one)}`),
      ].join('\n'),
    ),
    ...rows([
      pressButton(
        encodeTrends({ is: 'several', does: 'watch', draft }),
        say('findings.several.watch'),
        ButtonStyle.Primary,
      ),
      pressButton(encodeTrends({ is: 'several', does: 'dismiss', draft }), say('findings.several.dismiss')),
      pressButton(encodeTrends({ is: 'findings', filter: 'open', page: 0 }), say('findings.back')),
    ]),
    small(say('caution.line')),
  ])
}
