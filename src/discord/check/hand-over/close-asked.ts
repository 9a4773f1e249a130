// The holder says yes to whoever asked whether the check can be closed: it is closed as by themselves.
import { act } from '../../../check/act.ts'
import { custodyOf } from '../../../check/custody-of.ts'
import type { Later } from '../../../services/keyed-queue.ts'
import { changedMeanwhile } from '../../interaction/refusal.ts'
import { refuse, replyPrivately } from '../../interaction/reply.ts'
import { sayInPublic } from '../../posts/say-in-public.ts'
import { saveStep } from '../save-step.ts'
import { showScreen } from '../show/screen.ts'
import { tellOthers } from './tell-others.ts'
import type { Turn } from './turn.ts'

export async function closeAsked({ services, interaction, say, program, check, actor }: Turn): Promise<Later> {
  if (actor.person !== check.holder) return () => refuse(interaction, say, { code: 'not-yours' })
  // A button that has stood there since closes nothing that goes on again.
  if (!custodyOf(check).closing) return () => refuse(interaction, say, { code: 'closing-not-asked' })
  const closed = act(program, check, actor, { is: 'close' }, services.now())
  if (!closed.ok) return () => refuse(interaction, say, closed.refusal)
  const { saving, screen, check: saved } = await saveStep(services, interaction, program, check, closed)
  if (saving === 'seen') return undefined
  if (saving === 'stale') return () => refuse(interaction, say, changedMeanwhile)
  await replyPrivately(interaction, await showScreen(say, program, screen, services))
  await tellOthers(services, await sayInPublic(services, saved.server, interaction.guildLocale), saved)
  return undefined
}
