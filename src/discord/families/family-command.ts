// /family: the models a server describes: see one, list them, describe a new one, take one in from a file.
import {
  ApplicationCommandOptionType,
  ApplicationCommandType,
  type ChatInputCommandInteraction,
  type Interaction,
} from 'discord.js'
import { encodeFamily, familyStartIds } from '../../custom-ids/family-id.ts'
import { newOpening } from '../../custom-ids/id-parts.ts'
import type { Facts } from '../../families/facts/facts-schema.ts'
import type { ServerFamily } from '../../families/family.ts'
import { skeletonOf } from '../../families/names.ts'
import { type Say, sayIn } from '../../words/say.ts'
import type { Command, Subcommand } from '../interaction/command.ts'
import { defer, editReply, refuse, replyPrivately } from '../interaction/reply.ts'
import { moderating, serverOf } from '../interaction/rights.ts'
import { onServers } from '../interaction/where-offered.ts'
import { message, type ShownMessage, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { listFamilies } from './list-families.ts'
import { seeFamily } from './see-family.ts'
import { identityForm, referenceForm } from './show/menus.ts'
import { sayImportProblem } from './show/say-import.ts'
import { sayChoice } from './suggest-families.ts'
import { workingOn } from './working-on.ts'

const told = (note: string, say: Say): ShownMessage => message([text(note), small(say('caution.line'))])
const newFamilyId = (newId: () => string): string => `f-${newId().slice(0, 8)}`

const show: Subcommand = {
  name: 'show',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'show',
    description: say('command.family.show'),
    options: [
      {
        type: ApplicationCommandOptionType.String,
        name: 'family',
        description: say('command.family.show.family'),
        autocomplete: true,
        required: true,
      },
    ],
  }),
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

const make: Subcommand = {
  name: 'new',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'new',
    description: say('command.family.new'),
  }),
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    if (!(await moderating(services, interaction))) return refuse(interaction, say, { code: 'not-moderator' })
    const id = familyStartIds.write({ act: 'new', opening: newOpening(services.newId) })
    await interaction.showModal(identityForm(say, id))
  },
}

const takeIn: Subcommand = {
  name: 'import',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'import',
    description: say('command.family.import'),
    options: [
      {
        type: ApplicationCommandOptionType.Attachment,
        name: 'file',
        description: say('command.family.import.file'),
        required: true,
      },
    ],
  }),
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

/** A new draft; what stands in its way is said. */
export async function makeFamily(
  services: Services,
  interaction: Pick<Interaction, 'id' | 'user' | 'locale'>,
  server: string,
  facts: Facts,
): Promise<{ readonly id: string } | { readonly note: string }> {
  const say = sayIn(interaction.locale)
  const { identity } = facts
  const family: ServerFamily = {
    ...{ id: identity.id, server, state: 'draft', revision: 0, head: 0 },
    ...{ draft: facts, review: null, retired: null },
    ...{ changedBy: interaction.id, madeBy: interaction.user.id, madeAt: services.now() },
  }
  const done = await services.families.store.create(family, skeletonOf(`${identity.maker} ${identity.name}`))
  services.families.renew(server)
  if (done === 'saved') return { id: identity.id }
  return {
    note:
      done === 'name-taken'
        ? say('families.refused.name-taken')
        : say(`families.refused.${done}`, { most: done === 'too-many-drafts' ? 50 : 300 }),
  }
}

const offer: Subcommand = {
  ...show,
  name: 'offer',
  describe: say => ({
    ...show.describe(say),
    name: 'offer',
    description: say('command.family.offer'),
  }),
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

const subcommands = [show, listFamilies, offer, make, takeIn]

export const familyCommand: Command = {
  name: 'family',
  subcommands,
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'family',
    description: say('command.family'),
    ...onServers,
    options: subcommands.map(one => one.describe(say)),
  }),
}

export { newFamilyId }
