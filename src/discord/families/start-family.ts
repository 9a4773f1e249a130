// The form that begins a family, and the menu of the list that leads to one.

import { familyStartIds } from '../../custom-ids/family-id.ts'
import { bareFacts } from '../../families/construction.ts'
import { formats, kinds } from '../../families/facts/facts-schema.ts'
import { nameProblems, tidyName } from '../../families/names.ts'
import { readPrinted } from '../../families/read-figures.ts'
import { sayFactProblem } from '../../words/family-words.ts'
import { plain } from '../../words/plain.ts'
import { sayIn } from '../../words/say.ts'
import { onClick } from '../interaction/click-handler.ts'
import { type Clicked, refuse, replyPrivately, updateOrReply } from '../interaction/reply.ts'
import { moderating, serverOf } from '../interaction/rights.ts'
import { message, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { chosenIn, typedIn } from './change-family.ts'
import { makeFamily, newFamilyId } from './family-command.ts'
import { seeFamily } from './see-family.ts'
import { fields } from './show/menus.ts'

export const familyStartClick = onClick(familyStartIds, (services, interaction, { act }) =>
  act === 'new' ? begin(services, interaction) : look(services, interaction),
)

async function look(services: Services, interaction: Clicked): Promise<void> {
  const say = sayIn(interaction.locale)
  const server = serverOf(interaction)
  const [id = ''] = interaction.isStringSelectMenu() ? interaction.values : []
  const shown = server === null ? undefined : await seeFamily(services, interaction, say, server, id)
  await updateOrReply(interaction, shown ?? message([text(say('families.refused.gone')), small(say('caution.line'))]))
}

async function begin(services: Services, interaction: Clicked): Promise<void> {
  const say = sayIn(interaction.locale)
  const settings = await moderating(services, interaction)
  if (!settings) return refuse(interaction, say, { code: 'not-moderator' })
  if (!interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
  const told = (note: string) => replyPrivately(interaction, message([text(note), small(say('caution.line'))]))
  const [name, maker] = [fields.name, fields.maker].map(one => tidyName(typedIn(interaction, one)))
  const problems = [name, maker].flatMap(one => nameProblems(one ?? ''))
  const [problem] = problems
  if (problem) return told(sayFactProblem(say, services.families.base, problem))
  if (!name || !maker) return told(say('families.refused.reference-empty'))
  const printed = typedIn(interaction, fields.printed)
  const read = readPrinted(printed)
  if (!read.ok) return told(say('families.refused.figures', { what: plain(read.what) }))
  const facts = {
    ...bareFacts({
      id: newFamilyId(services.newId),
      name,
      maker,
      alsoCalled: [],
      format: formats.find(one => one === chosenIn(interaction, fields.format)[0]) ?? '18650',
      kind: kinds.find(one => one === chosenIn(interaction, fields.kind)[0]) ?? 'bare',
      chemistry: 'not-known',
    }),
    figures: read.figures,
  }
  const made = await makeFamily(services, interaction, settings.server, facts)
  if ('note' in made) return told(made.note)
  const shown = await seeFamily(services, interaction, say, settings.server, made.id)
  await replyPrivately(interaction, shown ?? message([text(say('families.saved')), small(say('caution.line'))]))
}
