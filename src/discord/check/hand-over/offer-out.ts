// Shows an offered check where somebody can take it; where that cannot be, the check is taken back at once.
import { act } from '../../../check/act.ts'
import type { Check } from '../../../check/check.ts'
import type { Screen } from '../../../check/screen.ts'
import { type Answerable, editReply } from '../../interaction/reply.ts'
import { sayInPublic } from '../../posts/say-in-public.ts'
import { showScreen } from '../show/screen.ts'
import { postPanel } from './tell-others.ts'
import { holderOf, type Turn } from './turn.ts'

/** After whoever offers it has been answered: if nobody could see the offer, the check is taken back, and they are told. Gives back the check. */
export async function offerOut(
  { services, interaction, say, program, check }: Omit<Turn, 'interaction' | 'actor'> & { interaction: Answerable },
  screen: Screen,
): Promise<Check> {
  const inPublic = await sayInPublic(services, check.server, interaction.guildLocale)
  const { channelId } = interaction
  if (channelId !== null && (await postPanel(services, inPublic, check, channelId))) return check
  const back = act(program, check, holderOf(check), { is: 'withdraw' }, services.now())
  const saved = back.ok && (await services.checks.save(back.check, check.revision, services.newId())) === 'saved'
  const now = saved && back.ok ? back.screen : screen
  await editReply(interaction, await showScreen(say, program, now, services, say('offered.nowhere')))
  return now.check
}
