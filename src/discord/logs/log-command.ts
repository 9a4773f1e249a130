// /log: what a discharge log really shows.
import { ApplicationCommandOptionType, ApplicationCommandType } from 'discord.js'
import type { Say } from '../../words/say.ts'
import type { Command } from '../interaction/command.ts'
import { everywhere } from '../interaction/where-offered.ts'

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

  load: async () => (await import('./run-log.ts')).runLog,
}
