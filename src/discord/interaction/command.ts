// What a command is: data for Discord, and what runs it, loaded when it is wanted.
import type {
  APIApplicationCommandSubcommandOption,
  AutocompleteInteraction,
  ChatInputCommandInteraction,
  MessageContextMenuCommandInteraction,
  RESTPostAPIChatInputApplicationCommandsJSONBody,
  RESTPostAPIContextMenuApplicationCommandsJSONBody,
} from 'discord.js'
import type { Say } from '../../words/say.ts'
import type { Services } from '../services.ts'

/** What runs when somebody sends the command, and what is offered while they type it. */
export type Runs = {
  run(services: Services, interaction: ChatInputCommandInteraction): Promise<void>
  suggest?(services: Services, interaction: AutocompleteInteraction): Promise<void>
}

/** What runs lies apart from the data: a start needs the data of all commands, and nobody may ever send most of them. */
export type Loads<What> = { load(): Promise<What> }

export type Subcommand = Loads<Runs> & {
  readonly name: string
  describe(say: Say): APIApplicationCommandSubcommandOption
}

/** A command with subcommands, or one that runs itself. */
export type Command = {
  readonly name: string
  describe(say: Say): RESTPostAPIChatInputApplicationCommandsJSONBody
} & ({ readonly subcommands: readonly Subcommand[] } | Loads<Runs>)

export type RunsOnMessage = {
  run(services: Services, interaction: MessageContextMenuCommandInteraction): Promise<void>
}

/** A command in the menu of a message; `name` is what Discord calls it in English. */
export type MessageCommand = Loads<RunsOnMessage> & {
  readonly name: string
  describe(say: Say): RESTPostAPIContextMenuApplicationCommandsJSONBody
}
