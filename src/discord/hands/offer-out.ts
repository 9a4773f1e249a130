// Shows an offered check where somebody can take it; where that cannot be, the check is taken back at once.
import { act } from '../../check/act.ts'
import type { Check } from '../../check/check.ts'
import type { Screen } from '../../check/screen.ts'
import type { Program } from '../../engine/compile.ts'
import { redraw } from '../answer.ts'
import type { Desk } from '../desk.ts'
import { showScreen } from '../show/screen.ts'
import { postPanel, sayInPublic } from './tell-others.ts'
import { holderOf, type Turn } from './turn.ts'

/** From a click: the holder's own message then says where the check stands; gives back that screen. */
export async function offerOut({ desk, interaction, say, program, check }: Turn, screen: Screen): Promise<Screen> {
  const where = { channel: interaction.channelId, locale: interaction.guildLocale }
  const seen = await showOffer(desk, program, check, screen, where)
  const note = seen === screen ? undefined : say('offered.nowhere')
  await redraw(interaction, await showScreen(say, program, seen, desk.pictures, note))
  return seen
}

type Where = { readonly channel: string | null; readonly locale: string | null }

/** The screen the check is on then: the same if the offer is to be seen, that of the check taken back if not. */
export async function showOffer(
  desk: Desk,
  program: Program,
  check: Check,
  screen: Screen,
  where: Where,
): Promise<Screen> {
  const say = await sayInPublic(desk, check, where.locale)
  if (where.channel !== null && (await postPanel(desk, say, check, where.channel))) return screen
  const back = act(program, check, holderOf(check), { is: 'withdraw' }, desk.now())
  if (!back.ok) return screen
  const saving = await desk.checks.save(back.check, check.revision, desk.newId())
  return saving === 'saved' ? back.screen : screen
}
