// One click of a hand-over, end to end: load, who acts, what it means, take the step, store, answer, tell the others.
import { type Clicked, refuse } from '../answer.ts'
import type { Desk } from '../desk.ts'
import { decodeHand, type HandId } from '../hand-id.ts'
import { askModerator } from '../hands/ask-moderator.ts'
import { carryOut } from '../hands/carry-out.ts'
import { lookAt } from '../hands/look-at.ts'
import { meantBy } from '../hands/meant-by.ts'
import { openForm } from '../hands/open-form.ts'
import { turnOf } from '../hands/turn.ts'
import { isFormDeed } from '../show/hand-forms.ts'
import { sayIn } from '../words/say.ts'
import type { ClickHandler } from './manifest.ts'

export const handClick: ClickHandler = (desk, interaction) => {
  const id = decodeHand(interaction.customId)
  if (!id) return undefined
  // Photographs take their time, in which the check is not held up.
  return id.does === 'asked'
    ? askModerator(desk, interaction, id)
    : desk.lanes.inLane(id.check, () => click(desk, interaction, id))
}

async function click(desk: Desk, interaction: Clicked, id: HandId): Promise<void> {
  const turn = await turnOf(desk, interaction, id.check)
  if (turn === 'seen') return
  const say = sayIn(interaction.locale)
  if (turn === 'gone') return refuse(interaction, say, { code: 'gone' })
  const { check } = turn
  if (isFormDeed(id.does)) return openForm(turn, id.does)
  // What is said about a question belongs to that one.
  if (id.does === 'sent-back' && id.form?.revision !== check.revision)
    return refuse(interaction, say, { code: 'changed-meanwhile' })
  const meant = meantBy(interaction, id.does)
  if (meant === undefined) return lookAt(turn, id.does)
  if (!meant.ok) return refuse(interaction, say, meant.refusal)
  // Pressed once more by whoever has taken it: they are shown where it stands.
  if (meant.event.is === 'take' && check.holder === interaction.user.id && !check.custody?.offer)
    return lookAt(turn, 'go-on')
  return carryOut(turn, meant.event)
}
