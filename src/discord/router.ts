// Sends each interaction to its one handler; whatever happens there, the person gets an answer.
import type { AutocompleteInteraction, ChatInputCommandInteraction, Interaction } from 'discord.js'
import { type Answerable, refuse } from './answer.ts'
import { clickHandlers } from './clicks/manifest.ts'
import type { Runs } from './commands/command.ts'
import { commands, messageCommands } from './commands/manifest.ts'
import type { Desk } from './desk.ts'
import { answerFailure } from './errors.ts'
import { askedOf } from './fair-use/asked-of.ts'
import { sayIn } from './words/say.ts'

export async function route(desk: Desk, interaction: Interaction): Promise<void> {
  try {
    await dispatch(desk, interaction)
  } catch (error) {
    await answerFailure(desk, interaction, error)
  }
}

async function dispatch(desk: Desk, interaction: Interaction): Promise<void> {
  const asked = askedOf(interaction)
  const tooMuch = asked && desk.fairUse.admit(asked, interaction.user.id, interaction.guildId, desk.now())
  if (interaction.isAutocomplete())
    return tooMuch ? interaction.respond([]) : runsOf(interaction)?.suggest?.(desk, interaction)
  if (!isAnswerable(interaction)) return
  const say = sayIn(interaction.locale)
  if (tooMuch) return refuse(interaction, say, tooMuch)
  if (interaction.isCommand()) {
    const known = interaction.isChatInputCommand()
      ? runsOf(interaction)?.run(desk, interaction)
      : messageCommands.find(one => one.name === interaction.commandName)?.run(desk, interaction)
    return known ?? refuse(interaction, say, { code: 'unknown-command' })
  }
  for (const handle of clickHandlers) {
    const handled = handle(desk, interaction)
    if (handled) return handled
  }
  await refuse(interaction, say, { code: 'unknown-click' })
}

const isAnswerable = (interaction: Interaction): interaction is Interaction & Answerable =>
  interaction.isChatInputCommand() ||
  interaction.isMessageContextMenuCommand() ||
  interaction.isMessageComponent() ||
  interaction.isModalSubmit()

/** What runs for a command, be it the command itself or the subcommand that was named. */
function runsOf(interaction: AutocompleteInteraction | ChatInputCommandInteraction): Runs | undefined {
  const command = commands.find(one => one.name === interaction.commandName)
  if (!command || !('subcommands' in command)) return command
  const wanted = interaction.options.getSubcommand(false)
  return command.subcommands.find(one => one.name === wanted)
}
