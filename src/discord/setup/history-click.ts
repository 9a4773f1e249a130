// What was changed about the set-up, as somebody who may manage the server sees it, and the press that takes one change back.

import { encodeSetup, type HistoryAct, type SetupAct } from '../../custom-ids/setup-id.ts'
import type { ServerSettings } from '../../server/settings.ts'
import type { Say } from '../../words/say.ts'
import { changedMeanwhile, sayRefusal } from '../interaction/refusal.ts'
import { type Clicked, defer, editReply, redraw } from '../interaction/reply.ts'
import type { ShownMessage } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { lookRound } from './places.ts'
import { askBeforeUndoing, showHistory } from './show/show-history.ts'
import { takeBack } from './take-back.ts'

export const isHistory = (act: SetupAct): act is HistoryAct =>
  act.is === 'history' || act.is === 'undo' || act.is === 'undone'

export async function viewHistory(
  services: Services,
  interaction: Clicked,
  say: Say,
  settings: ServerSettings,
  page: number,
  note?: string,
): Promise<ShownMessage> {
  const history = await services.servers.history(settings.server)
  const around = lookRound(interaction.guild, settings)
  const id = (act: SetupAct) => encodeSetup({ revision: settings.revision, act })
  return showHistory(
    say,
    { settings, history, around, page, links: false, ...(note && { note }) },
    {
      page: to => id({ is: 'history', page: to }),
      undo: of => id({ is: 'undo', of }),
      back: { id: id({ is: 'see', what: 'overview' }), label: say('setup.overview') },
    },
  )
}

export async function pressHistory(
  services: Services,
  interaction: Clicked,
  say: Say,
  settings: ServerSettings,
  { revision, act }: { readonly revision: number; readonly act: HistoryAct },
): Promise<void> {
  if (act.is === 'history')
    return redraw(interaction, await viewHistory(services, interaction, say, settings, act.page))
  const view = (now: ServerSettings, note: string) => viewHistory(services, interaction, say, now, 1, note)
  // Delivered again, a click meets its own change.
  if (settings.changedBy === interaction.id) return redraw(interaction, await view(settings, say('history.done')))
  if (settings.revision !== revision)
    return redraw(interaction, await view(settings, sayRefusal(say, changedMeanwhile)))
  if (act.is === 'undo') {
    const history = await services.servers.history(settings.server)
    const id = (is: SetupAct) => encodeSetup({ revision, act: is })
    const change = history.find(one => one.revision === act.of)
    const yes = id({ is: 'undone', of: act.of })
    const asked = askBeforeUndoing(say, settings, change, yes, id({ is: 'history', page: 1 }))
    if (asked) return redraw(interaction, asked)
  }
  await defer(interaction)
  const { now, note } = await takeBack(services, interaction, say, settings, act.of)
  await editReply(interaction, await view(now, note))
}
