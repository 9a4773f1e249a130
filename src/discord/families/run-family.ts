// /family as it runs, but for its list: a model is shown, begun, taken in from a file, or offered as a reference.
import type { ChatInputCommandInteraction } from 'discord.js'
import { encodeFamily, familyStartIds } from '../../custom-ids/family-id.ts'
import { newOpening } from '../../custom-ids/id-parts.ts'
import { skeletonOf } from '../../families/names.ts'
import { type Say, sayIn } from '../../words/say.ts'
import type { Runs } from '../interaction/command.ts'
import { defer, editReply, refuse, replyPrivately } from '../interaction/reply.ts'
import { moderating, serverOf } from '../interaction/rights.ts'
import { message, type ShownMessage, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { makeFamily, newFamilyId } from './make-family.ts'
import { seeFamily } from './see-family.ts'
import { identityForm, referenceForm } from './show/menus.ts'
import { sayImportProblem } from './show/say-import.ts'
import { sayChoice } from './suggest-families.ts'
import { workingOn } from './working-on.ts'

const told = (note: string, say: Say): ShownMessage => message([text(note), small(say('caution.line'))])

export const runShow: Runs = {
  async suggest(services, interaction) {
    const server = serverOf(interaction)
    const say = sayIn(interaction.locale)
    const wanted = skeletonOf(interaction.options.getFocused())
    const moderator = (await moderating(services, interaction)) !== undefined
    const heads = server === null ? [] : await services.families.heads(server)
    const shown = [...heads]
      // What is retired comes last, as where a check is begun.
      .sort((a, b) => Number(a.state === 'retired') - Number(b.state === 'retired'))
      .filter(one => moderator || one.head > 0)
      .filter(one => skeletonOf([one.name, one.maker, ...one.alsoCalled].join(' ')).includes(wanted))
    await interaction.respond(
      shown.slice(0, 25).map(one => ({
        value: one.id,
        name: sayChoice(say, one, heads),
      })),
    )
  },
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const server = serverOf(interaction)
    const id = interaction.options.getString('family', true)
    const shown = server === null ? undefined : await seeFamily(services, interaction, say, server, id)
    await replyPrivately(interaction, shown ?? told(say('families.refused.gone'), say))
  },
}

export const runNew: Runs = {
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    if (!(await moderating(services, interaction))) return refuse(interaction, say, { code: 'not-moderator' })
    const id = familyStartIds.write({ act: 'new', opening: newOpening(services.newId) })
    await interaction.showModal(identityForm(say, id))
  },
}

export const runImport: Runs = {
  run: importFile,
}

async function importFile(services: Services, interaction: ChatInputCommandInteraction): Promise<void> {
  const say = sayIn(interaction.locale)
  const settings = await moderating(services, interaction)
  if (!settings) return refuse(interaction, say, { code: 'not-moderator' })
  await defer(interaction)
  const read = await services.files.read(
    interaction.options.getAttachment('file', true).url,
    newFamilyId(services.newId),
  )
  if (!read.ok)
    return editReply(
      interaction,
      told(say('families.import.refused', { problem: sayImportProblem(say, services.families.base, read) }), say),
    )
  const made = await makeFamily(services, interaction, settings.server, read.facts)
  if ('note' in made) return editReply(interaction, told(made.note, say))
  const shown = await seeFamily(services, interaction, say, settings.server, made.id)
  await editReply(interaction, shown ?? told(say('families.import.done'), say))
}

/** Offered is what can be shown. */
export const runOffer: Runs = {
  ...runShow,
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const server = serverOf(interaction)
    const id = interaction.options.getString('family', true)
    const work = server === null ? undefined : await workingOn(services, server, id)
    if (!work?.inForce) return replyPrivately(interaction, told(say('families.refused.gone'), say))
    const act = { is: 'reference-offered' as const, opening: newOpening(services.newId) }
    const custom = encodeFamily({ family: work.family.id, revision: work.family.revision, act })
    await interaction.showModal(referenceForm(say, custom))
  },
}
