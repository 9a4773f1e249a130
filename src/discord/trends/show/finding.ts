// Shows a finding to moderators: what it is in five sentences and a chart, what was decided about it, and what they can do.
import { type APIButtonComponent, ButtonStyle, ComponentType } from 'discord.js'
import { encodeTrends, type findingDeeds } from '../../../custom-ids/trends-id.ts'
import { nobody } from '../../../server/traces.ts'
import type { ShownPicture } from '../../../services/pictures/shown-picture.ts'
import { lastUndoable } from '../../../trends/findings/decide.ts'
import type { Decision, Deed, Finding, PostPlace } from '../../../trends/findings/finding.ts'
import { isWeek, type Week } from '../../../trends/week.ts'
import { sayDay, sayWeek } from '../../../words/dates.ts'
import { sayFinding, sayFindingTitle, sayStanding } from '../../../words/finding-words.ts'
import { plain, plainLines } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import type { TrendNames } from '../../../words/trend-names.ts'
import { cut, gallery, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { linkTo } from '../../posts/link-to.ts'

export type FindingView = {
  /** The week that runs. */
  readonly week: Week
  readonly picture?: ShownPicture | undefined
  /** Stands above. */
  readonly note?: string | undefined
  /** Opened from the list: links to where it stands in channels, and a way back. */
  readonly fromList?: boolean
}

/** With what was decided and the caution it has to fit a message. */
const longestLines = 2250

export function showFinding(say: Say, names: TrendNames, finding: Finding, view: FindingView): ShownMessage {
  const pictures = view.picture ? [view.picture] : []
  const lines = sayFinding(say, names, finding, view.week, longestLines).map(one => `**${one.label}** ${one.text}`)
  return message(
    [
      ...(view.note ? [text(view.note)] : []),
      text(
        `### ${sayFindingTitle(say, names, finding, view.week)}\n${sayStanding(say, finding, view.week)}\n${cut(lines.join('\n'), longestLines)}`,
      ),
      ...gallery(pictures),
      ...(finding.decisions.length > 0
        ? [
            text(
              cut(
                finding.decisions
                  .slice(-3)
                  .map(one => sayDecision(say, one))
                  .join('\n'),
                800,
              ),
            ),
          ]
        : []),
      ...rows(buttonsOf(say, finding)),
      ...rows(linksOf(say, finding, view.fromList ?? false)),
      small(`${say('finding.care')}\n${say('trends.fives')}`),
    ],
    pictures,
  )
}

const undoing: Readonly<Record<Deed, 'watch' | 'warned' | 'edited' | 'dismissed' | 'known-fake'>> = {
  'put-off': 'watch',
  warned: 'warned',
  edited: 'edited',
  dismissed: 'dismissed',
  'known-fake': 'known-fake',
}

function buttonsOf(say: Say, finding: Finding): APIButtonComponent[] {
  const { id, state, warning } = finding
  const act = (does: (typeof findingDeeds)[number]) => encodeTrends({ is: 'finding', id, does })
  const waits = state === 'open' || state === 'watching'
  const last = lastUndoable(finding)
  return [
    ...(waits ? [pressButton(act('warn'), say('finding.warn'), ButtonStyle.Primary)] : []),
    ...(waits || state === 'warned' ? [pressButton(act('fake'), say('finding.fake'))] : []),
    ...(waits
      ? [pressButton(act('watch'), say('finding.watch')), pressButton(act('dismiss'), say('finding.dismiss'))]
      : []),
    ...(warning?.posted && warning.message !== null ? [pressButton(act('edit'), say('finding.edit'))] : []),
    ...(typeof last === 'string'
      ? []
      : [
          pressButton(
            encodeTrends({ is: 'finding', id, does: 'undo', of: finding.decisions.length }),
            say(`finding.undo.${undoing[last.did]}`),
          ),
        ]),
    pressButton(act('draft'), say('finding.draft')),
  ]
}

function linksOf(say: Say, { server, post, warning }: Finding, fromList: boolean): APIButtonComponent[] {
  const link = (label: string, place: PostPlace): APIButtonComponent => ({
    type: ComponentType.Button,
    style: ButtonStyle.Link,
    label: cut(label, 80),
    url: linkTo(server, place),
  })
  return [
    ...(fromList && post ? [link(say('finding.to-post'), post)] : []),
    ...(warning?.message ? [link(say('finding.to-warning'), { ...warning, message: warning.message })] : []),
    pressButton(
      encodeTrends({ is: 'findings', filter: 'open', page: 0 }),
      say(fromList ? 'findings.back' : 'finding.to-list'),
    ),
  ]
}

/** Who decided what, when and why, and who took it back; nobody is pinged by it. */
function sayDecision(say: Say, { by, at, did, why, undone }: Decision): string {
  const who = (person: string) => (person === nobody ? say('finding.somebody') : `<@${person}>`)
  const reason = did === 'put-off' && isWeek(why) ? sayWeek(say, why) : plain(cut(why, 240))
  const what = say(`finding.did.${did}`, {
    who: who(by),
    when: sayDay(say, at),
    ...(did !== 'known-fake' && { why: reason }),
  })
  if (!undone) return what
  return say('finding.undone', {
    what,
    who: who(undone.by),
    when: sayDay(say, undone.at),
    why: undone.why === '' ? 'none' : plain(cut(undone.why, 240)),
  })
}

/** A warning as everybody sees it: the moderator's text as text, and the whole caution below it, never cut off. */
export const showWarning = (say: Say, warning: string, edited = false): ShownMessage =>
  message([
    text(`### ${say('warning.title')}\n${plainLines(warning)}`),
    ...(edited ? [small(say('warning.edited'))] : []),
    text(`> ${say('caution.full')}`),
  ])

/** What stands in its place once it is withdrawn: why, and what it said. */
export const showWithdrawn = (say: Say, warning: string, why: string): ShownMessage =>
  message([
    text(`### ${say('warning.withdrawn.title')}\n${plainLines(why)}`),
    text(
      `${say('warning.withdrawn.was')}\n${plainLines(warning)
        .split('\n')
        .map(line => `> ${line}`)
        .join('\n')}`,
    ),
    text(`> ${say('caution.full')}`),
  ])
