// Sends each interaction to its one handler; whatever happens there, the person gets an answer.
import type { AutocompleteInteraction, ChatInputCommandInteraction, Interaction } from 'discord.js'
import { refuse } from './answer.ts'
import { clickHandlers } from './clicks/manifest.ts'
import type { Runs } from './commands/command.ts'
import { commands, messageCommands } from './commands/manifest.ts'
import type { Desk } from './desk.ts'
import { answerFailure } from './errors.ts'
import { sayIn } from './words/say.ts'

export async function route(desk: Desk, interaction: Interaction): Promise<void> {
  try {
    await dispatch(desk, interaction)
  } catch (error) {
    await answerFailure(desk, interaction, error)
  }
}

async function dispatch(desk: Desk, interaction: Interaction): Promise<void> {
  if (interaction.isAutocomplete()) return runsOf(interaction)?.suggest?.(desk, interaction)
  if (interaction.isChatInputCommand() || interaction.isMessageContextMenuCommand()) {
    const known = interaction.isChatInputCommand()
      ? runsOf(interaction)?.run(desk, interaction)
      : messageCommands.find(one => one.name === interaction.commandName)?.run(desk, interaction)
    return known ?? refuse(interaction, sayIn(interaction.locale), { code: 'unknown-command' })
  }
  if (!interaction.isMessageComponent() && !interaction.isModalSubmit()) return
  for (const handle of clickHandlers) {
    const handled = handle(desk, interaction)
    if (handled) return handled
  }
  await refuse(interaction, sayIn(interaction.locale), { code: 'unknown-click' })
}

/** What runs for a command, be it the command itself or the subcommand that was named. */
function runsOf(interaction: AutocompleteInteraction | ChatInputCommandInteraction): Runs | undefined {
  const command = commands.find(one => one.name === interaction.commandName)
  if (!command || !('subcommands' in command)) return command
  const wanted = interaction.options.getSubcommand(false)
  return command.subcommands.find(one => one.name === wanted)
}
