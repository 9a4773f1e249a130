// What waits for a second moderator, as whoever looks sees it: what waits for their press first, the newest of it before the rest.
import type { APIMessageTopLevelComponent, BaseInteraction } from 'discord.js'
import type { ServerFamily } from '../../families/family.ts'
import { mayAgree } from '../../families/review.ts'
import type { ServerSettings } from '../../server/settings.ts'
import { bare, plain } from '../../words/plain.ts'
import type { Say } from '../../words/say.ts'
import { moderating } from '../interaction/rights.ts'
import { pressButton, rows, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { isAlone } from './review-family.ts'
import { idFor } from './show/menus.ts'

/** So many reviews that wait are named; the rest comes up once these are done. */
const mostWaiting = 5

export type Waiting = { readonly family: ServerFamily; readonly by: string; readonly mine: boolean }

/** `mine`: whoever looks may agree to it now. */
export async function waitingFor(
  services: Services,
  settings: ServerSettings,
  person: string,
): Promise<readonly Waiting[]> {
  const alone = isAlone(settings)
  const now = services.now()
  const all = (await services.families.store.waiting(settings.server))
    .flatMap(family => (family.review ? [{ family, review: family.review }] : []))
    .sort((a, b) => b.review.at - a.review.at)
    .map(({ family, review }) => ({ family, by: review.by, mine: mayAgree(family, { person, now }, alone) }))
  return [...all.filter(one => one.mine), ...all.filter(one => !one.mine)]
}

const nameOf = (family: ServerFamily): string => family.draft?.identity.name ?? family.id

const lookButton = (say: Say, { family }: Waiting, is: 'waiting' | 'waiting-beside' = 'waiting') =>
  pressButton(idFor(family.id, family.revision)({ is }), say('families.button.waits', { name: bare(nameOf(family)) }))

/** What stands first in the list: a sentence and a button for each. */
export function showWaitingFirst(say: Say, waiting: readonly Waiting[], person: string) {
  const shown = waiting.slice(0, mostWaiting)
  const lines = shown.map(({ family, by, mine }) => {
    const name = plain(nameOf(family))
    if (mine) return say(by === person ? 'families.list.waits-alone' : 'families.list.waits', { name, who: `<@${by}>` })
    return say('families.list.waits-mine', { name })
  })
  return [...lines.map(line => text(line)), ...rows(shown.map(one => lookButton(say, one)))]
}

/** One row of buttons; the list has the rest. */
const mostNoted = 3

/**
 * Above the first screens of a moderator: how many models wait for their press, with a button for each that leaves the screen as it is;
 * nothing for anybody else.
 */
export async function noteWaiting(
  services: Services,
  interaction: BaseInteraction,
  say: Say,
): Promise<readonly APIMessageTopLevelComponent[]> {
  const settings = await moderating(services, interaction)
  if (!settings) return []
  const waiting = (await waitingFor(services, settings, interaction.user.id)).filter(one => one.mine)
  if (waiting.length === 0) return []
  const buttons = waiting.slice(0, mostNoted).map(one => lookButton(say, one, 'waiting-beside'))
  return [text(say('families.waiting.note', { count: waiting.length })), ...rows(buttons)]
}
