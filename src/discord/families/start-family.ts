// The form that begins a family, and the menu of the list that leads to one.

import { familyStartIds } from '../../custom-ids/family-id.ts'
import { bareFacts } from '../../families/construction.ts'
import { sayIn } from '../../words/say.ts'
import { onClick } from '../interaction/click-handler.ts'
import { type Clicked, defer, editReply, refuse, updateOrReply } from '../interaction/reply.ts'
import { moderating, serverOf } from '../interaction/rights.ts'
import { message, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { makeFamily, newFamilyId } from './make-family.ts'
import { seeFamily } from './see-family.ts'
import { openTypedAgain, showTypedAgain } from './typed-again.ts'
import { identityIn } from './typed-identity.ts'

export const familyStartClick = onClick(familyStartIds, (services, interaction, { act, opening }) =>
  act === 'again'
    ? again(services, interaction, opening)
    : act === 'new'
      ? begin(services, interaction)
      : look(services, interaction),
)

async function look(services: Services, interaction: Clicked): Promise<void> {
  const say = sayIn(interaction.locale)
  const server = serverOf(interaction)
  const [id = ''] = interaction.isStringSelectMenu() ? interaction.values : []
  const shown = server === null ? undefined : await seeFamily(services, interaction, say, server, id)
  await updateOrReply(interaction, shown ?? message([text(say('families.refused.gone')), small(say('caution.line'))]))
}

/** The form once more, with what was typed into the one that was not taken. */
async function again(services: Services, interaction: Clicked, draft: string): Promise<void> {
  const say = sayIn(interaction.locale)
  if (!(await moderating(services, interaction))) return refuse(interaction, say, { code: 'not-moderator' })
  return openTypedAgain(services, interaction, say, draft, opening => familyStartIds.write({ act: 'new', opening }))
}

async function begin(services: Services, interaction: Clicked): Promise<void> {
  const say = sayIn(interaction.locale)
  const settings = await moderating(services, interaction)
  if (!settings) return refuse(interaction, say, { code: 'not-moderator' })
  if (!interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
  const told = async (why: string) => editReply(interaction, await showTypedAgain(services, interaction, say, why))
  // The first pictures of a process may take longer than Discord waits.
  await defer(interaction)
  const typed = identityIn(say, services.families.base, interaction)
  if ('note' in typed) return told(typed.note)
  const more = { id: newFamilyId(services.newId), alsoCalled: [], chemistry: 'not-known' as const }
  const facts = { ...bareFacts({ ...more, ...typed.identity }), figures: typed.figures }
  const made = await makeFamily(services, interaction, settings.server, facts)
  if ('note' in made) return told(made.note)
  const shown = await seeFamily(services, interaction, say, settings.server, made.id)
  await editReply(interaction, shown ?? message([text(say('families.saved')), small(say('caution.line'))]))
}
