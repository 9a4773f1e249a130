// /check start: opens a check for the person who asks, and shows its first question to them alone.
import { ApplicationCommandOptionType } from 'discord.js'
import type { Mode } from '../../check/check.ts'
import { mostCells, start } from '../../check/step.ts'
import { refuse, replyPrivately } from '../answer.ts'
import { cut } from '../show/parts.ts'
import { showScreen } from '../show/screen.ts'
import { sayIn } from '../words/say.ts'
import type { Subcommand } from './command.ts'
import { countedAlready } from './which-check.ts'

/** More open checks than this are a slip, or a nuisance. */
export const mostOpen = 10
const noFamily = '-'

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
    ],
  }),

  async suggest(desk, interaction) {
    const say = sayIn(interaction.locale)
    const typed = interaction.options.getFocused().toLocaleLowerCase(say.locale)
    const families = desk.programs.families
      .map(({ id, name, maker }) => ({ value: id, name: cut(say('family.choice', { name, maker }), 100) }))
      .filter(one => one.name.toLocaleLowerCase(say.locale).includes(typed))
    await interaction.respond([...families.slice(0, 24), { value: noFamily, name: say('family.none') }])
  },

  async run(desk, interaction) {
    const say = sayIn(interaction.locale)
    const now = desk.now()
    const typed = interaction.options.getString('family')
    const family = typed === null || typed === noFamily ? null : typed
    const program = desk.programs.programFor(family, new Date(now).toISOString().slice(0, 10))
    if (!program) return refuse(interaction, say, { code: 'unknown-family', name: cut(family ?? '', 60) })
    const open = await desk.checks.heldBy(interaction.user.id, now)
    if (await countedAlready(desk, interaction)) return
    if (open.length >= mostOpen) return refuse(interaction, say, { code: 'too-many-open', count: open.length })
    const begun = start(
      program,
      {
        id: desk.newId(),
        holder: interaction.user.id,
        server: interaction.guildId,
        mode: (interaction.options.getString('depth') ?? 'full') as Mode,
        cells: interaction.options.getInteger('cells') ?? 1,
        family,
      },
      now,
    )
    if (!begun.ok) return refuse(interaction, say, begun.refusal)
    if ((await desk.checks.create(begun.check, interaction.id)) === 'seen') return
    await replyPrivately(interaction, await showScreen(say, program, begun.screen, desk.pictures))
  },
}
