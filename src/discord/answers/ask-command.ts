// /ask: a question about cells, answered for the person who asks alone; the same in the menu of somebody's message.
import { ApplicationCommandOptionType, ApplicationCommandType } from 'discord.js'
import { longestQuery } from '../../answers/entry.ts'
import type { Command, MessageCommand } from '../interaction/command.ts'
import { everywhere } from '../interaction/where-offered.ts'

export const askCommand: Command = {
  name: 'ask',
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'ask',
    description: say('command.ask'),
    ...everywhere,
    options: [
      {
        type: ApplicationCommandOptionType.String,
        name: 'question',
        description: say('command.ask.question'),
        required: true,
        autocomplete: true,
        max_length: longestQuery,
      },
    ],
  }),

  load: async () => (await import('./run-ask.ts')).runAsk,
}

export const findAnswerCommand: MessageCommand = {
  name: 'Find an answer',
  describe: say => ({ type: ApplicationCommandType.Message, name: say('command.find-answer'), ...everywhere }),
  load: async () => (await import('./run-ask.ts')).runFindAnswer,
}
