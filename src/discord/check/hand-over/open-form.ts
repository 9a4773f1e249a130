// Opens the form of a deed, for those who may do it now: whoever may not is told before they type anything.
import { act } from '../../../check/act.ts'
import type { HandOverEvent } from '../../../check/hand-over.ts'
import { newOpening } from '../../../custom-ids/id-parts.ts'
import { refuse } from '../../interaction/reply.ts'
import { type HandOverForm, handForm } from './show/forms.ts'
import type { Turn } from './turn.ts'

export async function openForm(turn: Turn, does: HandOverForm): Promise<void> {
  const { services, interaction, say, program, check, actor } = turn
  if (interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
  const tried = act(program, check, actor, tryOf(does), services.now())
  if (!tried.ok) return refuse(interaction, say, tried.refusal)
  const photos = does === 'ask' && mayPhotograph(turn) && (await hasReviewChannel(turn))
  await interaction.showModal(handForm(say, check, does, newOpening(services.newId), photos))
}

const hasReviewChannel = async ({ services, check: { server } }: Turn): Promise<boolean> =>
  server !== null && (await services.servers.load(server)).reviewChannel !== null

/** Nobody is asked to photograph a cell that may be hot, hissing or leaking. */
const mayPhotograph = ({ program, check: { phase } }: Turn): boolean =>
  !('question' in phase) || program.hazards.get(phase.question) !== 'get-away'

/** The event with nothing filled in yet. */
function tryOf(does: HandOverForm): HandOverEvent {
  if (does === 'offer' || does === 'redirect') return { is: does, to: { to: 'anyone' }, why: '' }
  if (does === 'pass-on') return { is: does, to: { to: 'anyone' } }
  return does === 'ask' ? { is: does, words: '', where: null } : { is: does, why: '' }
}
