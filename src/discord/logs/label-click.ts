// A label given to a log afterwards: a form, and the file read once more and held against what was typed.
import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import type { IdOf } from '../../custom-ids/id-kind.ts'
import { newOpening } from '../../custom-ids/id-parts.ts'
import { logLabelIds } from '../../custom-ids/log-label-id.ts'
import type { Say } from '../../words/say.ts'
import { sayIn } from '../../words/say.ts'
import { onClick } from '../interaction/click-handler.ts'
import { type Clicked, defer, editReply, followUpPrivately, refuse } from '../interaction/reply.ts'
import { form, lineField } from '../message/form.ts'
import { message, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { type SaidLater, withClaim } from './log-request.ts'
import { answerLog, type UnlabelledLog } from './read-log.ts'

export const labelClick = onClick(logLabelIds, press)

const fields = ['label', 'cutoff', 'current', 'room'] as const

async function press(services: Services, interaction: Clicked, act: IdOf<typeof logLabelIds>): Promise<void> {
  const say = sayIn(interaction.locale)
  const kept = (await services.drafts.find(act.draft)) as UnlabelledLog | undefined
  if (kept?.is !== 'unlabelled') return refuse(interaction, say, { code: 'log-forgotten' })
  if (kept.person !== interaction.user.id) return refuse(interaction, say, { code: 'not-yours' })
  if (!interaction.isModalSubmit()) return interaction.showModal(labelForm(say, act.draft, newOpening(services.newId)))
  const typed = (field: string) => interaction.fields.getTextInputValue(field).trim() || null
  const said = Object.fromEntries(fields.map(field => [field, typed(field)])) as SaidLater
  await defer(interaction)
  const read = withClaim(say, kept.request, said, interaction.locale)
  if (read.ok) return editReply(interaction, await answerLog(services, say, kept.person, read.request))
  // What the log shows stays where it is, with the button for another try.
  await followUpPrivately(interaction, message([text(read.sentences.join('\n')), small(say('caution.line'))]))
}

function labelForm(say: Say, draft: string, opened: string): APIModalInteractionResponseCallbackData {
  const id = logLabelIds.write({ is: 'labelled', draft, opening: opened })
  return form(
    id,
    say('log.give-label'),
    fields.map(field =>
      lineField(
        field,
        { label: say(`log.form.${field}`), hint: say(`command.log.${field}`) },
        { most: 60, required: field === 'label' },
      ),
    ),
  )
}
