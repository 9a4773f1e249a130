// The buttons of a model that anybody may press: they change nothing of it, so they are answered outside its turn.

import type { ActOf, FamilyAct } from '../../custom-ids/family-id.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { beginCheck } from '../check/begin-check.ts'
import { showScreen } from '../check/show/screen.ts'
import { type Clicked, refuse, replyPrivately, updateOrReply } from '../interaction/reply.ts'
import { serverOf } from '../interaction/rights.ts'
import { message, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { sheetOf } from './family-sheet.ts'
import { offeredEnough } from './keep-reference.ts'
import { seeFamily } from './see-family.ts'
import { beginWalk } from './walk-cell.ts'
import { workingOn } from './working-on.ts'

const forAll = ['see', 'sheet', 'check', 'reference-offered'] as const
export type ForAll = ActOf<(typeof forAll)[number]>
export const isForAll = (act: FamilyAct): act is ForAll => forAll.some(one => one === act.is)

export async function answerAnybody(
  services: Services,
  interaction: Clicked,
  family: string,
  { is }: ForAll,
): Promise<void> {
  const say = sayIn(interaction.locale)
  const server = serverOf(interaction)
  if (is === 'see') {
    const shown = server === null ? undefined : await seeFamily(services, interaction, say, server, family)
    return shown ? updateOrReply(interaction, shown) : sayGone(interaction, say)
  }
  if (is === 'sheet') {
    const sheet = server === null ? undefined : await sheetOf(services, say, server, family)
    return sheet ? replyPrivately(interaction, sheet) : sayGone(interaction, say)
  }
  if (is === 'check') return checkOne(services, interaction, say, family)
  const offeredTo = server === null ? undefined : await workingOn(services, server, family)
  if (server === null || !offeredTo?.inForce) return sayGone(interaction, say)
  const enough = offeredEnough(say, offeredTo, interaction.user.id)
  if (enough === undefined) return beginWalk(services, interaction, say, offeredTo, false)
  return replyPrivately(interaction, message([text(enough), small(say('caution.line'))]))
}

/** A check of such a cell, for whoever presses: nothing of it is a moderator's. */
async function checkOne(services: Services, interaction: Clicked, say: Say, family: string): Promise<void> {
  if (interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
  const begun = await beginCheck(services, interaction, { family, cells: 1 })
  if (begun.is === 'seen') return
  if (begun.is === 'refused') return refuse(interaction, say, begun.refusal)
  return replyPrivately(interaction, await showScreen(say, begun.program, begun.screen, services))
}

export const sayGone = (interaction: Clicked, say: Say): Promise<void> =>
  replyPrivately(interaction, message([text(say('families.refused.gone')), small(say('caution.line'))]))
