// /check start: opens a check for the person who asks, and shows its first question to them alone.
import { ApplicationCommandOptionType, type ChatInputCommandInteraction } from 'discord.js'
import type { Mode } from '../../../check/check.ts'
import { mostCells } from '../../../check/step.ts'
import { sayIn } from '../../../words/say.ts'
import { noFamily, suggestFamilies } from '../../families/suggest-families.ts'
import type { Runs, Subcommand } from '../../interaction/command.ts'
import { refuse, replyPrivately } from '../../interaction/reply.ts'
import { mayWriteHere, serverOf } from '../../interaction/rights.ts'
import { beginCheck } from '../begin-check.ts'
import { offerOut } from '../hand-over/offer-out.ts'
import { type Choosing, takerOf } from '../hand-over/taker-of.ts'
import { showScreen } from '../show/screen.ts'

const runs: Runs = {
  async suggest(services, interaction) {
    const say = sayIn(interaction.locale)
    await interaction.respond(
      await suggestFamilies(services, say, serverOf(interaction), interaction.options.getFocused()),
    )
  },

  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const typed = interaction.options.getString('family')
    const offering = offerIn(interaction)
    if (offering && !offering.ok) return refuse(interaction, say, offering.refusal)
    // What the bot posts for somebody, they may post themselves.
    if (offering && serverOf(interaction) !== null && !mayWriteHere(interaction))
      return refuse(interaction, say, { code: 'may-not-post-here' })
    const tooMuch =
      offering && (await services.fairUse.admitPost(interaction.user.id, interaction.channelId, services.now()))
    if (tooMuch) return refuse(interaction, say, tooMuch)
    const begun = await beginCheck(services, interaction, {
      family: typed === null || typed === noFamily ? null : typed,
      ...modeIn(interaction),
      cells: interaction.options.getInteger('cells') ?? 1,
      ...(offering && { offer: offering.taker }),
    })
    if (begun.is === 'seen') return
    if (begun.is === 'refused') return refuse(interaction, say, begun.refusal)
    const { program, screen } = begun
    // In the check's turn: whoever presses at once waits until it is seen that it is offered.
    await services.queue.inOrder(screen.check.id, async () => {
      await replyPrivately(interaction, await showScreen(say, program, screen, services))
      if (offering) await offerOut({ services, interaction, say, program, check: screen.check }, screen)
    })
  },
}

export const checkStart: Subcommand = {
  name: 'start',

  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'start',
    description: say('command.check.start'),
    options: [
      {
        type: ApplicationCommandOptionType.String,
        name: 'family',
        description: say('command.check.start.family'),
        autocomplete: true,
      },
      {
        type: ApplicationCommandOptionType.String,
        name: 'depth',
        description: say('command.check.start.depth'),
        choices: [
          { name: say('command.check.start.depth.full'), value: 'full' },
          { name: say('command.check.start.depth.quick'), value: 'quick' },
        ],
      },
      {
        type: ApplicationCommandOptionType.Integer,
        name: 'cells',
        description: say('command.check.start.cells'),
        min_value: 1,
        max_value: mostCells,
      },
      {
        type: ApplicationCommandOptionType.Mentionable,
        name: 'for',
        description: say('command.check.start.for'),
      },
      {
        type: ApplicationCommandOptionType.Boolean,
        name: 'anyone',
        description: say('command.check.start.anyone'),
      },
    ],
  }),

  load: async () => runs,
}

/** How thorough it is to be, where that was said; otherwise the first screen asks. */
function modeIn(interaction: ChatInputCommandInteraction): { readonly mode?: Mode } {
  const depth = interaction.options.getString('depth')
  return depth === 'quick' || depth === 'full' ? { mode: depth } : {}
}

/** Who it is for, as the options say; undefined for one's own check. */
function offerIn(interaction: ChatInputCommandInteraction): Choosing | undefined {
  const chosen = interaction.options.get('for')
  const anyone = interaction.options.getBoolean('anyone') ?? false
  if (!chosen && !anyone) return undefined
  if (chosen && anyone) return { ok: false, refusal: { code: 'two-takers' } }
  const { user, member, role } = chosen ?? {}
  return takerOf({ user, isHere: Boolean(member), role }, interaction.guildId)
}
