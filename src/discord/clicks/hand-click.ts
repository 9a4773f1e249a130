// One click of a hand-over, end to end: load, who acts, what it means, take the step, store, answer, tell the others.
import { refit } from '../../check/refit.ts'
import { inLanguage } from '../../engine/in-language.ts'
import { type Clicked, refuse } from '../answer.ts'
import type { Desk } from '../desk.ts'
import { decodeHand, type HandId } from '../hand-id.ts'
import { askModerator } from '../hands/ask-moderator.ts'
import { carryOut } from '../hands/carry-out.ts'
import { lookAt } from '../hands/look-at.ts'
import { meantBy } from '../hands/meant-by.ts'
import { openForm } from '../hands/open-form.ts'
import { actorOf, type Turn } from '../hands/turn.ts'
import { isFormDeed } from '../show/hand-forms.ts'
import { sayIn } from '../words/say.ts'
import type { ClickHandler } from './manifest.ts'

export const handClick: ClickHandler = (desk, interaction) => {
  const id = decodeHand(interaction.customId)
  return id && desk.lanes.inLane(id.check, () => click(desk, interaction, id))
}

async function click(desk: Desk, interaction: Clicked, id: HandId): Promise<void> {
  const say = sayIn(interaction.locale)
  const found = await desk.checks.load(id.check)
  if (!found) return refuse(interaction, say, { code: 'gone' })
  // Delivered twice: whoever counted it answers it.
  if (found.changedBy === interaction.id) return
  const judging = desk.programs.programFor(found.check.family, found.check.day)
  if (!judging) return refuse(interaction, say, { code: 'gone' })
  const program = inLanguage(judging, say.locale)
  const check = refit(program, found.check)
  const turn: Turn = { desk, interaction, say, program, check, actor: await actorOf(desk, interaction, check) }
  if (isFormDeed(id.does)) return openForm(turn, id, id.does)
  if (id.does === 'asked') return askModerator(turn)
  const meant = meantBy(interaction, id.does)
  if (meant === undefined) return lookAt(turn, id.does)
  if (!meant.ok) return refuse(interaction, say, meant.refusal)
  // Pressed once more by whoever has taken it: they are shown where it stands.
  if (meant.event.is === 'take' && check.holder === interaction.user.id && !check.custody?.offer)
    return lookAt(turn, 'go-on')
  return carryOut(turn, meant.event)
}
