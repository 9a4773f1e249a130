// /check start: opens a check for the person who asks, and shows its first question to them alone.
import { ApplicationCommandOptionType } from 'discord.js'
import type { Mode } from '../../check/check.ts'
import { mostCells } from '../../check/step.ts'
import { refuse, replyPrivately } from '../answer.ts'
import { beginCheck } from '../begin-check.ts'
import { cut } from '../show/parts.ts'
import { showScreen } from '../show/screen.ts'
import { sayIn } from '../words/say.ts'
import type { Subcommand } from './command.ts'

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
    const typed = interaction.options.getString('family')
    const begun = await beginCheck(desk, interaction, {
      family: typed === null || typed === noFamily ? null : typed,
      mode: (interaction.options.getString('depth') ?? 'full') as Mode,
      cells: interaction.options.getInteger('cells') ?? 1,
    })
    if (begun.is === 'seen') return
    if (begun.is === 'refused') return refuse(interaction, say, begun.refusal)
    await replyPrivately(interaction, await showScreen(say, begun.program, begun.screen, desk.pictures))
  },
}
