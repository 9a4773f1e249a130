// A letter to the seller: drafted for the holder of a finished check, changed in a form, shown to them alone, and kept nowhere.
import type { VerdictScreen } from '../../../check/screen.ts'
import { screenOf } from '../../../check/screen.ts'
import { newOpening } from '../../../custom-ids/id-parts.ts'
import { isLetterLanguage, type LetterAct, type LetterLanguage, letterIds } from '../../../custom-ids/letter-id.ts'
import type { Program } from '../../../engine/compile.ts'
import { inLanguage } from '../../../engine/in-language.ts'
import { hasLetter, writeLetter } from '../../../words/letter/draft-letter.ts'
import { sayIn } from '../../../words/say.ts'
import { onClick } from '../../interaction/click-handler.ts'
import type { Refusal } from '../../interaction/refusal.ts'
import { type Clicked, refuse, replyPrivately, updateOrReply } from '../../interaction/reply.ts'
import type { Services } from '../../services.ts'
import { loadCheck } from '../load-check.ts'
import { letterField, letterForm, letterIn, ownLanguage, showLetter } from './letter-screen.ts'

export const letterClick = onClick(letterIds, press)

async function press(services: Services, interaction: Clicked, act: LetterAct): Promise<void> {
  const say = sayIn(interaction.locale)
  const found = await finished(services, interaction, act)
  if ('refusal' in found) return refuse(interaction, say, found.refusal)
  const { judging, program, screen } = found
  const show = (text: string, language: LetterLanguage) => showLetter(say, program, screen, { text, language })
  /** As it was drafted, in the language the seller reads. */
  const draft = (language: LetterLanguage) => writeLetter(sayIn(language), inLanguage(judging, language), screen)
  switch (act.is) {
    case 'write': {
      const language = ownLanguage(say)
      return replyPrivately(interaction, show(draft(language), language))
    }
    case 'language': {
      const [chosen] = interaction.isStringSelectMenu() ? interaction.values : []
      const language = isLetterLanguage(chosen) ? chosen : ownLanguage(say)
      return updateOrReply(interaction, show(draft(language), language))
    }
    case 'change': {
      if (interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
      const { language } = act
      const text = shownIn(interaction) ?? draft(language)
      return interaction.showModal(letterForm(say, act.check, { text, language }, newOpening(services.newId)))
    }
    case 'changed': {
      const typed = interaction.isModalSubmit() ? interaction.fields.getTextInputValue(letterField).trim() : ''
      return updateOrReply(interaction, show(typed === '' ? draft(act.language) : typed, act.language))
    }
  }
}

/** The letter on the screen, with whatever the person has changed in it: their message is the only place where it is. */
const shownIn = ({ message }: Clicked): string | undefined =>
  message ? letterIn(message.components.map(part => part.toJSON())) : undefined

type Finished =
  | { readonly judging: Program; readonly program: Program; readonly screen: VerdictScreen }
  | { readonly refusal: Refusal }

/** The verdict of the person's own check, or why there is nothing to write from. */
async function finished(services: Services, interaction: Clicked, act: LetterAct): Promise<Finished> {
  const found = await loadCheck(services, sayIn(interaction.locale), act.check)
  if (!found) return { refusal: { code: 'gone' } }
  const { check, program, judging } = found
  if (check.holder !== interaction.user.id) return { refusal: { code: 'not-yours' } }
  const screen = screenOf(judging, check)
  if (screen.kind === 'closed') return { refusal: { code: 'closed' } }
  if (screen.kind !== 'verdict') return { refusal: { code: 'not-now', event: 'letter', phase: check.phase.is } }
  return hasLetter(screen) ? { judging, program, screen } : { refusal: { code: 'nothing-to-write' } }
}
