// The clicks of a hand-over that change nothing: the menu on one's own check, how far it is, the question to answer for somebody.
import { mayHelp } from '../../../check/custody.ts'
import { custodyOf, seesProgress } from '../../../check/custody-of.ts'
import { helpingScreen, screenOf } from '../../../check/screen.ts'
import type { HandOverCommand } from '../../../custom-ids/hand-over-id.ts'
import { redraw, refuse, replyPrivately } from '../../interaction/reply.ts'
import { showScreen } from '../show/screen.ts'
import { showHands } from './show/holder-menu.ts'
import { showProgress } from './show/progress.ts'
import type { Turn } from './turn.ts'

export async function lookAt(
  { services, interaction, say, program, check, actor }: Turn,
  does: HandOverCommand,
): Promise<void> {
  const screen = () => showScreen(say, program, screenOf(program, check), services)
  if (does === 'progress') {
    if (!seesProgress(check, actor)) return refuse(interaction, say, { code: 'not-party' })
    return replyPrivately(interaction, showProgress(say, program, check, actor))
  }
  if (does === 'help') {
    if (!mayHelp(actor)) return refuse(interaction, say, { code: 'not-moderator' })
    const helping = custodyOf(check).helpRequest && helpingScreen(program, check)
    if (!helping) return refuse(interaction, say, { code: 'not-asked' })
    return replyPrivately(interaction, await showScreen(say, program, helping, services))
  }
  if (actor.person !== check.holder) return refuse(interaction, say, { code: 'not-yours' })
  // The word to go on stands where everybody sees it: the check itself is shown to its holder alone.
  if (does === 'go-on') return replyPrivately(interaction, await screen())
  if (does === 'hands') return redraw(interaction, showHands(say, program, check))
  if (does === 'return') return redraw(interaction, await screen())
  return refuse(interaction, say, { code: 'unknown-click' })
}
