// One click of a hand-over, end to end: load, who acts, what it means, take the step, store, answer, tell the others.

import { type HandId, handOverIds } from '../../../custom-ids/hand-over-id.ts'
import { decideInOrder, type Later } from '../../../services/keyed-queue.ts'
import { sayIn } from '../../../words/say.ts'
import { onClick } from '../../interaction/click-handler.ts'
import { changedMeanwhile } from '../../interaction/refusal.ts'
import { type Clicked, refuse } from '../../interaction/reply.ts'
import type { Services } from '../../services.ts'
import { askModerator } from './ask-moderator.ts'
import { carryOut } from './carry-out.ts'
import { closeAsked } from './close-asked.ts'
import { lookAt } from './look-at.ts'
import { meantBy } from './meant-by.ts'
import { openForm } from './open-form.ts'
import { isHandOverForm } from './show/forms.ts'
import { turnOf } from './turn.ts'

export const handClick = onClick(handOverIds, (services, interaction, id) =>
  // Photographs take their time, in which the check is not held up.
  id.does === 'asked'
    ? askModerator(services, interaction, id)
    : decideInOrder(services.queue, id.check, () => click(services, interaction, id)),
)

async function click(services: Services, interaction: Clicked, id: HandId): Promise<Later> {
  const turn = await turnOf(services, interaction, id.check)
  if (turn === 'seen') return undefined
  const say = sayIn(interaction.locale)
  if (turn === 'gone') return () => refuse(interaction, say, { code: 'gone' })
  const { check } = turn
  const { does } = id
  if (isHandOverForm(does)) return () => openForm(turn, does)
  // What is said about a question belongs to that one.
  if (id.does === 'sent-back' && id.form?.revision !== check.revision)
    return () => refuse(interaction, say, changedMeanwhile)
  if (id.does === 'close-it') return closeAsked(turn)
  const meant = meantBy(interaction, id.does)
  if (meant === undefined) return () => lookAt(turn, id.does)
  if (!meant.ok) return () => refuse(interaction, say, meant.refusal)
  // Pressed once more by whoever has taken it: they are shown where it stands.
  if (meant.event.is === 'take' && check.holder === interaction.user.id && !check.custody?.offer)
    return () => lookAt(turn, 'go-on')
  return carryOut(turn, meant.event)
}
