// Shows what was changed about a server's settings, or its links alone, and beside each change the button that takes it back.
import { type APIMessageTopLevelComponent, ButtonStyle, ComponentType } from 'discord.js'
import { type History, mostChanges, type SettingsChange } from '../../../server/history.ts'
import type { Surroundings } from '../../../server/places.ts'
import type { ServerSettings } from '../../../server/settings.ts'
import { undo } from '../../../server/undo.ts'
import { sayDifference, sayMade, sayNoUndo } from '../../../words/history-words.ts'
import type { Say } from '../../../words/say.ts'
import { cut, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'

/** So many fit into one message at their longest. */
const onPage = 4
const longestEntry = 700

/** The ids of its buttons, which differ between the set-up and the links. `page` from 1. */
export type HistoryIds = {
  page(page: number): string
  undo(of: number): string
  readonly back: { readonly id: string; readonly label: string }
}

export type HistoryView = {
  readonly settings: ServerSettings
  readonly history: History
  readonly around: Surroundings
  readonly page: number
  /** Only what was changed about links. */
  readonly links: boolean
  readonly note?: string
}

export function showHistory(say: Say, view: HistoryView, ids: HistoryIds): ShownMessage {
  const { history, links, note } = view
  const listed = links ? history.filter(isOfLinks) : history
  const pages = Math.max(1, Math.ceil(listed.length / onPage))
  const page = Math.min(view.page, pages)
  const turn = (to: number, key: 'page.back' | 'page.on') =>
    to < 1 || to > pages ? [] : [pressButton(ids.page(to), say(key))]
  return message([
    ...(note ? [text(note)] : []),
    text(
      `### ${say(links ? 'history.title.links' : 'history.title')}\n${say(listed.length === 0 ? 'history.none' : 'history.intro', { most: mostChanges })}`,
    ),
    ...listed.slice((page - 1) * onPage, page * onPage).map(change => showChange(say, view, change, ids)),
    ...rows([...turn(page - 1, 'page.back'), ...turn(page + 1, 'page.on'), pressButton(ids.back.id, ids.back.label)]),
    small(say('caution.line')),
  ])
}

/** What touches nothing but links: who looks after these may take it back. */
export const isOfLinks = ({ is, links }: SettingsChange): boolean => links.length > 0 && Object.keys(is).length === 0

function showChange(
  say: Say,
  { settings, history, around }: HistoryView,
  change: SettingsChange,
  ids: HistoryIds,
): APIMessageTopLevelComponent {
  const lines = [sayMade(say, change, history), ...sayDifference(say, change, settings, around).map(one => `- ${one}`)]
  const said = cut(lines.join('\n'), longestEntry)
  const undoing = undo(settings, history, change.revision, '')
  if (undoing.ok)
    return {
      type: ComponentType.Section,
      components: [text(said)],
      accessory: pressButton(ids.undo(change.revision), say('history.undo')),
    }
  // That it was taken back stands there already.
  return text(undoing.refusal.code === 'undone-already' ? said : `${said}\n-# ${sayNoUndo(say, undoing.refusal)}`)
}

/** What taking a change back deletes or ends, asked before it is done; undefined where it does neither. */
export function askBeforeUndoing(
  say: Say,
  settings: ServerSettings,
  change: SettingsChange | undefined,
  yes: string,
  no: string,
): ShownMessage | undefined {
  const weeks = change?.was.keepWeeks ?? settings.keepWeeks
  const stops = change?.was.outcomes === false && settings.outcomes
  const said = [
    ...(weeks < settings.keepWeeks ? [say('history.sure.fewer', { weeks })] : []),
    ...(stops ? [say('history.sure.stop')] : []),
  ]
  if (said.length === 0) return undefined
  return message([
    text(`### ${say('history.sure.title')}\n${said.join(' ')}`),
    ...rows([pressButton(yes, say('history.sure.yes'), ButtonStyle.Danger), pressButton(no, say('history.sure.no'))]),
    small(say('caution.line')),
  ])
}
