// A moderator answers in the holder's place: what they see of the check, and who is told once they have answered.
import type { Check } from '../../../check/check.ts'
import { type Actor, mayHelp } from '../../../check/custody.ts'
import { custodyOf, isSecond } from '../../../check/custody-of.ts'
import { helpingScreen } from '../../../check/screen.ts'
import type { Program } from '../../../engine/compile.ts'
import { weekOf } from '../../../trends/week.ts'
import type { Say } from '../../../words/say.ts'
import { editReply, redraw } from '../../interaction/reply.ts'
import { message, type ShownMessage, small, text } from '../../message/parts.ts'
import { sayInPublic } from '../../posts/say-in-public.ts'
import type { Services } from '../../services.ts'
import { showScreen } from '../show/screen.ts'
import { showFirstOfTwo, showThanks } from './show/help-request.ts'
import type { PanelNote } from './show/panel.ts'
import { isDanger } from './tell-danger.ts'
import { postWord, tellOthers } from './tell-others.ts'
import type { Turn } from './turn.ts'

/** Whether this person may answer the question somebody else is stuck at. */
export const mayHelpWith = (check: Check, actor: Actor): boolean =>
  mayHelp(actor) && custodyOf(check).helpRequest !== undefined

/** The question that is asked, and nothing else of the check. */
export async function showHelping(
  services: Services,
  say: Say,
  program: Program,
  check: Check,
  note?: string,
): Promise<ShownMessage> {
  const screen = helpingScreen(program, check)
  if (screen) return showScreen(say, program, screen, services, note)
  return message([text(say('helping.over')), small(say('caution.line'))])
}

/** After an answer is stored: it may be asked a second time; else its holder is told where they asked. */
export async function afterHelp(
  { services, interaction, say, program, check: before }: Turn,
  after: Check,
): Promise<void> {
  if (deeds(after) > deeds(before)) await countHelp(services, after, interaction.user.id)
  if (custodyOf(after).helpRequest) {
    const question = custodyOf(after).helpRequest?.question ?? ''
    // Whoever has answered first of two is asked nothing more.
    const first = isSecond(after, question) && after.saidBy?.[question] === interaction.user.id
    const next = first ? showFirstOfTwo(say, after) : await showHelping(services, say, program, after)
    return redraw(interaction, next)
  }
  await redraw(interaction, showThanks(say, after))
  const inPublic = await sayInPublic(services, after.server, interaction.guildLocale)
  const channel = custodyOf(before).helpRequest?.where ?? undefined
  const word = wordFor(program, before, after)
  const who = after.holder
  const told = channel !== undefined && (await postWord(services, inPublic, after, { word, who, channel }))
  await editReply(interaction, showThanks(say, after, { in: told ? channel : undefined }))
  await tellOthers(services, inPublic, after)
}

const deeds = (check: Check): number => custodyOf(check).history.filter(one => one.did === 'helped').length

/** That somebody has handled a question; what was stored stays so, whether or not it can be counted. */
export async function countHelp(services: Services, { server }: Check, person: string): Promise<void> {
  if (server === null) return
  await services.helpers
    .count(server, person, weekOf(services.now()))
    .catch(error => services.log.warn({ err: error }, 'help could not be counted'))
}

function wordFor(program: Program, before: Check, after: Check): PanelNote {
  if (isDanger(program, after)) return 'danger'
  if (after.phase.is === 'done') return 'result'
  const question = custodyOf(before).helpRequest?.question ?? ''
  if (after.answers[question]?.kind !== 'cant-tell') return 'helped'
  return isSecond(before, question) ? 'disagree' : 'unsure'
}
