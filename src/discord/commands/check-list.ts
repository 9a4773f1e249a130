// /check list: a person's open checks, each with a button to go on.
import { ApplicationCommandOptionType, ButtonStyle } from 'discord.js'
import { findFamily } from '../../engine/programs.ts'
import { replyPrivately } from '../answer.ts'
import { button, message, rows, small, text } from '../show/parts.ts'
import { sayExpiry, sayWhat } from '../words/describe.ts'
import { sayIn } from '../words/say.ts'
import type { Subcommand } from './command.ts'

export const checkList: Subcommand = {
  name: 'list',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'list',
    description: say('command.check.list'),
  }),
  async run(desk, interaction) {
    const say = sayIn(interaction.locale)
    const open = await desk.checks.heldBy(interaction.user.id, desk.now())
    if (open.length === 0)
      return replyPrivately(interaction, message([text(say('list.none')), small(say('caution.line'))]))
    const lines = open.map((check, i) => {
      const what = sayWhat(say, findFamily(desk.programs, check.family))
      return `${i + 1}. ${say('list.entry', { what, count: check.trail.length, date: sayExpiry(check) })}`
    })
    const buttons = open.map((check, i) =>
      button(check, { is: 'show' }, say('list.resume', { number: i + 1 }), ButtonStyle.Primary),
    )
    await replyPrivately(
      interaction,
      message([text(`### ${say('list.title')}\n${lines.join('\n')}`), ...rows(buttons), small(say('caution.line'))]),
    )
  },
}
