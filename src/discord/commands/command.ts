// What a command is: data for Discord, and functions that run it.
import type {
  APIApplicationCommandSubcommandOption,
  AutocompleteInteraction,
  ChatInputCommandInteraction,
  RESTPostAPIChatInputApplicationCommandsJSONBody,
} from 'discord.js'
import type { Desk } from '../desk.ts'
import type { Say } from '../words/say.ts'

export type Subcommand = {
  readonly name: string
  describe(say: Say): APIApplicationCommandSubcommandOption
  run(desk: Desk, interaction: ChatInputCommandInteraction): Promise<void>
  suggest?(desk: Desk, interaction: AutocompleteInteraction): Promise<void>
}

export type Command = {
  readonly name: string
  describe(say: Say): RESTPostAPIChatInputApplicationCommandsJSONBody
  readonly subcommands: readonly Subcommand[]
}
