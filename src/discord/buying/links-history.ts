// What was changed about the server's links, as moderators see it, and the press that takes one change back.

import { encodeLinks, type LinksAct } from '../../custom-ids/links-id.ts'
import type { ServerSettings } from '../../server/settings.ts'
import type { Say } from '../../words/say.ts'
import { changedMeanwhile, sayRefusal } from '../interaction/refusal.ts'
import { type Clicked, updateOrReply } from '../interaction/reply.ts'
import type { ShownMessage } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { isOfLinks, showHistory } from '../setup/show/show-history.ts'
import { takeBack } from '../setup/take-back.ts'

const nowhere = { places: { reports: undefined, review: undefined }, forums: [], tags: {}, goneRoles: [] }

export async function viewLinkHistory(
  services: Services,
  say: Say,
  settings: ServerSettings,
  page: number,
  note?: string,
): Promise<ShownMessage> {
  const history = await services.servers.history(settings.server)
  return showHistory(
    say,
    { settings, history, around: nowhere, page, links: true, ...(note && { note }) },
    {
      page: to => encodeLinks({ is: 'history', page: to }),
      undo: of => encodeLinks({ is: 'undo', of, revision: settings.revision }),
      back: { id: encodeLinks({ is: 'manage' }), label: say('links.back') },
    },
  )
}

export async function undoLinks(
  services: Services,
  interaction: Clicked,
  say: Say,
  settings: ServerSettings,
  { of, revision }: Extract<LinksAct, { is: 'undo' }>,
): Promise<void> {
  const view = async (now: ServerSettings, note: string) =>
    updateOrReply(interaction, await viewLinkHistory(services, say, now, 1, note))
  if (settings.changedBy === interaction.id) return view(settings, say('history.done'))
  if (settings.revision !== revision) return view(settings, sayRefusal(say, changedMeanwhile))
  const change = (await services.servers.history(settings.server)).find(one => one.revision === of)
  // What else was changed is taken back by those who may manage the server.
  if (change && !isOfLinks(change)) return view(settings, sayRefusal(say, { code: 'not-manager' }))
  const { now, note } = await takeBack(services, interaction, say, settings, of)
  await view(now, note)
}
