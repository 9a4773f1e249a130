// One click on a check, end to end: load, is it theirs, is it the current step, take the step, store, answer once.
import type { Check } from '../../check/check.ts'
import { refit } from '../../check/refit.ts'
import { screenOf } from '../../check/screen.ts'
import { step } from '../../check/step.ts'
import type { Program } from '../../engine/compile.ts'
import { inLanguage } from '../../engine/in-language.ts'
import { type Clicked, redraw, refuse } from '../answer.ts'
import type { Desk } from '../desk.ts'
import { type ClickId, decodeClick } from '../id-codec.ts'
import { sayRefusal } from '../refusal.ts'
import { saveStep } from '../save-step.ts'
import { showReadingForm } from '../show/reading-form.ts'
import { showScreen } from '../show/screen.ts'
import { type Say, sayIn } from '../words/say.ts'
import { eventOf } from './event-of.ts'
import type { ClickHandler } from './manifest.ts'

export const checkClick: ClickHandler = (desk, interaction) => {
  const id = decodeClick(interaction.customId)
  return id && desk.lanes.inLane(id.check, () => click(desk, interaction, id))
}

async function click(desk: Desk, interaction: Clicked, id: ClickId): Promise<void> {
  const say = sayIn(interaction.locale)
  // Whoever only wants to see the check sees it as it stands; every other act is compared again when it is saved.
  const found = await desk.checks.load(id.check, id.act.is === 'show' ? undefined : id.revision)
  if (!found) return refuse(interaction, say, { code: 'gone' })
  // Delivered twice: whoever counted it answers it.
  if (found.changedBy === interaction.id) return
  const stored = found.check
  if (stored.holder !== interaction.user.id) return refuse(interaction, say, { code: 'not-yours' })
  const judging = desk.programs.programFor(stored.family, stored.day)
  if (!judging) return refuse(interaction, say, { code: 'gone' })
  const program = inLanguage(judging, say.locale)
  const check = refit(program, stored)
  const show = (note?: string, now = check) => showScreen(say, program, screenOf(program, now), desk.pictures, note)
  if (id.act.is === 'show') return redraw(interaction, await show())
  if (id.revision !== check.revision) return redraw(interaction, await show(say('stale.note')))
  if (id.act.is === 'measure') return openForm(desk, interaction, say, program, check)

  const read = eventOf(say, interaction, id.act, check, program)
  if (!read.ok) return redraw(interaction, await show(read.note))
  const stepped = step(program, check, read.event, desk.now())
  if (!stepped.ok) {
    const { code } = stepped.refusal
    if (code === 'expired' || code === 'closed') return refuse(interaction, say, stepped.refusal)
    return redraw(interaction, await show(sayRefusal(say, stepped.refusal)))
  }
  const { saving, screen } = await saveStep(desk, interaction, program, check, stepped)
  if (saving === 'seen') return
  if (saving === 'saved') return redraw(interaction, await showScreen(say, program, screen, desk.pictures))
  const latest = await desk.checks.load(check.id)
  if (!latest) return refuse(interaction, say, { code: 'gone' })
  await redraw(interaction, await show(say('stale.note'), refit(program, latest.check)))
}

async function openForm(desk: Desk, interaction: Clicked, say: Say, program: Program, check: Check): Promise<void> {
  const { phase } = check
  const question = 'question' in phase ? program.questions.get(phase.question) : undefined
  if (!question || interaction.isModalSubmit())
    return refuse(interaction, say, { code: 'not-now', event: 'measure', phase: phase.is })
  await interaction.showModal(showReadingForm(say, check, question, desk.newId().slice(0, 8)))
}
