// Shows one part of the set-up: what it is for, what holds, what the bot needs for it, and the ways to change it.
import {
  type APIActionRowComponent,
  type APIComponentInMessageActionRow,
  type APIMessageTopLevelComponent,
  ButtonStyle,
} from 'discord.js'
import { encodeSetup, type SetupAct } from '../../../custom-ids/setup-id.ts'
import { needed, type PlaceState, type Surroundings, type Use } from '../../../server/places.ts'
import type { ServerSettings } from '../../../server/settings.ts'
import { type Part, parts } from '../../../server/setup-part.ts'
import type { Say, Values } from '../../../words/say.ts'
import { sayNow, sayWarning } from '../../../words/setup-words.ts'
import { message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { channelMenu, hoursMenu, languageMenu, type OfferedTags, pingMenu, roleMenu, tagMenu } from './menus.ts'
import { valuesOf } from './values.ts'

export type PartExtras = {
  /** What has just happened, above everything else. */
  readonly note?: string
  /** A place that was chosen and cannot serve yet: it can be tried again. */
  readonly again?: SetupAct
  /** The forum was chosen, and tags of it are still to be. */
  readonly choosing?: OfferedTags
}

type Row = APIActionRowComponent<APIComponentInMessageActionRow>
type Press = (act: SetupAct, label: string, style?: ButtonStyle.Primary | ButtonStyle.Danger) => Row['components'][0]

export function showPart(
  say: Say,
  settings: ServerSettings,
  around: Surroundings,
  part: Part,
  extras: PartExtras = {},
): ShownMessage {
  const { revision } = settings
  const press: Press = (act, label, style) => pressButton(encodeSetup({ revision, act }), label, style)
  const at = parts.indexOf(part)
  const next = parts[at + 1]
  // A place was tried just now; whether a role sees what is for it was not.
  const tried = extras.note !== undefined && part !== 'moderators' && part !== 'helpers'
  const warning = tried ? undefined : sayWarning(say, settings, around, part)
  const step = say('setup.step', { at: at + 1, of: parts.length, part: say(`setup.part.${part}`) })
  return message([
    ...(extras.note ? [text(extras.note)] : []),
    text(`### ${step}\n${say(`setup.long.${part}`, valuesOf(settings))}`),
    ...needsOf(say, part),
    text(`**${say('setup.now')}** ${sayNow(say, settings, around, part)}${warning ? `\n⚠ ${warning}` : ''}`),
    ...controlsOf(say, settings, around, part, press, extras),
    ...rows([
      ...(next
        ? [
            press(
              { is: 'see', what: next },
              say('setup.next', { part: say(`setup.part.${next}`) }),
              ButtonStyle.Primary,
            ),
          ]
        : []),
      press({ is: 'see', what: 'overview' }, say('setup.overview')),
    ]),
    small(say('caution.line')),
  ])
}

/** What each permission is for. */
function needsOf(say: Say, part: Part): APIMessageTopLevelComponent[] {
  if (!isPlace(part)) return []
  const lines = needed[part].map(one => `- **${say(`permission.${one}`)}**: ${say(`permission.${one}.why`)}`)
  return [text(`${say('setup.needs')}\n${lines.join('\n')}`)]
}

const isPlace = (part: Part): part is Use & Part => part in needed

function controlsOf(
  say: Say,
  settings: ServerSettings,
  around: Surroundings,
  part: Part,
  press: Press,
  { again, choosing }: PartExtras,
): Row[] {
  const { revision } = settings
  const retry = again ? [press(again, say('setup.again'), ButtonStyle.Primary)] : []
  switch (part) {
    case 'reports':
    case 'review': {
      const chosen = part === 'reports' ? settings.reportsChannel : settings.reviewChannel
      const buttons = [
        ...retry,
        ...(chosen === null || again ? [] : [press({ is: part, channel: chosen }, say('setup.test'))]),
        ...(chosen === null ? [] : [press({ is: part, channel: 'none' }, say('setup.none'))]),
      ]
      return [channelMenu(say, revision, part, alive(around.places[part], chosen)), ...rows(buttons)]
    }
    case 'moderators':
    case 'helpers': {
      const named = part === 'moderators' ? settings.moderatorRoles : settings.helperRoles
      const there = named.filter(role => !around.goneRoles.includes(role))
      const none = press({ is: part, roles: 'none' }, say('setup.no-roles'))
      return [roleMenu(say, revision, part, there), ...rows(named.length > 0 ? [none] : [])]
    }
    case 'reminders': {
      if (settings.reminders === null) return [hoursMenu(say, settings)]
      const { role } = settings.reminders
      const there = role !== null && !around.goneRoles.includes(role) ? role : null
      const none = press({ is: 'ping', roles: 'none' }, say('setup.no-ping'))
      return [hoursMenu(say, settings), pingMenu(say, revision, there), ...rows(role === null ? [] : [none])]
    }
    case 'language':
      return [languageMenu(say, settings)]
    case 'recording':
      return rows(
        settings.outcomes
          ? [
              settings.pooling
                ? press({ is: 'pooling', on: false }, say('setup.pooling.off'))
                : press({ is: 'pooling', on: true }, say('setup.pooling.on')),
              press({ is: 'see', what: 'stop-recording' }, say('setup.outcomes.off')),
            ]
          : [press({ is: 'outcomes', on: true }, say('setup.outcomes.on'), ButtonStyle.Primary)],
        1,
      )
    case 'keeping':
      return rows([press({ is: 'ask-weeks' }, say('setup.ask-weeks'))])
    case 'note': {
      const on = !settings.weeklyNote
      return rows([
        press(
          { is: 'note', on },
          say(on ? 'setup.note.on' : 'setup.note.off'),
          ...(on ? [ButtonStyle.Primary as const] : []),
        ),
      ])
    }
    case 'offers': {
      const { forumOffers } = settings
      if (choosing) {
        const { forum } = choosing
        const known = forumOffers.some(one => one.forum === forum)
        return [
          tagMenu(say, settings, choosing),
          ...rows(known ? [press({ is: 'untag', forum }, say('setup.no-offers-here'))] : []),
        ]
      }
      const gone = around.forums.some(one => one.state.is === 'gone')
      const off = [
        ...(gone ? [press({ is: 'forum', forum: 'gone' }, say('setup.no-offers-gone'))] : []),
        ...(forumOffers.length > 0 ? [press({ is: 'forum', forum: 'none' }, say('setup.no-offers'))] : []),
      ]
      // None stands in the menu as chosen: any of them is chosen to add it, or to change its tags.
      return [channelMenu(say, revision, 'offers', null), ...rows([...retry, ...off])]
    }
  }
}

/** A channel that is still there; one that is gone cannot stand in a menu. */
const alive = (state: PlaceState | undefined, channel: string | null): string | null =>
  state?.is === 'gone' ? null : channel

/** What happens to what is recorded, asked before recording stops. */
export const showStopRecording = (say: Say, settings: ServerSettings): ShownMessage =>
  ask(say, settings, 'stop', { is: 'outcomes', on: false }, 'recording', valuesOf(settings))

/** What fewer weeks delete, asked before they hold. */
export const showFewerWeeks = (say: Say, settings: ServerSettings, weeks: number): ShownMessage =>
  ask(say, settings, 'fewer', { is: 'fewer', weeks }, 'keeping', { weeks })

function ask(
  say: Say,
  { revision }: ServerSettings,
  question: 'stop' | 'fewer',
  yes: SetupAct,
  back: Part,
  values: Values,
): ShownMessage {
  return message([
    text(`### ${say(`setup.${question}.title`, values)}\n${say(`setup.${question}.what`, values)}`),
    ...rows([
      pressButton(encodeSetup({ revision, act: yes }), say(`setup.${question}.yes`), ButtonStyle.Danger),
      pressButton(encodeSetup({ revision, act: { is: 'see', what: back } }), say(`setup.${question}.no`)),
    ]),
    small(say('caution.line')),
  ])
}
