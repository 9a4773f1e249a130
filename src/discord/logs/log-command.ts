// /log: what a discharge log really shows.
import { ApplicationCommandOptionType, ApplicationCommandType } from 'discord.js'
import { type Say, sayIn } from '../../words/say.ts'
import type { Command } from '../interaction/command.ts'
import { defer, editReply, replyPrivately } from '../interaction/reply.ts'
import { everywhere } from '../interaction/where-offered.ts'
import { message, small, text } from '../message/parts.ts'
import { readTest, type SaidOfTest } from './log-request.ts'
import { answerLog } from './read-log.ts'

const typedOption = (say: Say, name: 'label' | 'cutoff' | 'current' | 'room') => ({
  type: ApplicationCommandOptionType.String as const,
  name,
  description: say(`command.log.${name}`),
  max_length: 60,
})

export const logCommand: Command = {
  name: 'log',

  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'log',
    description: say('command.log'),
    ...everywhere,
    options: [
      {
        type: ApplicationCommandOptionType.Attachment,
        name: 'file',
        description: say('command.log.file'),
        required: true,
      },
      typedOption(say, 'label'),
      typedOption(say, 'cutoff'),
      typedOption(say, 'current'),
      typedOption(say, 'room'),
      {
        type: ApplicationCommandOptionType.String,
        name: 'instrument',
        description: say('command.log.instrument'),
        choices: (['hobby-load', 'lab-load'] as const).map(kind => ({ name: say(`instrument.${kind}`), value: kind })),
      },
      {
        type: ApplicationCommandOptionType.String,
        name: 'wires',
        description: say('command.log.wires'),
        choices: (['two-wire', 'four-wire'] as const).map(kind => ({ name: say(`log.wires.${kind}`), value: kind })),
      },
      {
        type: ApplicationCommandOptionType.String,
        name: 'chemistry',
        description: say('command.log.chemistry'),
        choices: (['usual', 'iron-phosphate'] as const).map(kind => ({
          name: say(`log.chemistry.${kind}`),
          value: kind,
        })),
      },
    ],
  }),

  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const { url, size } = interaction.options.getAttachment('file', true)
    const said = Object.fromEntries(asked.map(name => [name, interaction.options.getString(name)])) as SaidOfTest
    const read = readTest(say, said, interaction.locale)
    if (!read.ok)
      return replyPrivately(interaction, message([text(read.sentences.join('\n')), small(say('caution.line'))]))
    await defer(interaction)
    await editReply(
      interaction,
      await answerLog(services, say, interaction.user.id, { ...read.test, file: { url, size } }),
    )
  },
}

const asked = ['label', 'cutoff', 'current', 'room', 'instrument', 'wires', 'chemistry'] as const
