// Sends each interaction to its one handler; whatever happens there, the person gets an answer.
import type { AutocompleteInteraction, ChatInputCommandInteraction, Interaction } from 'discord.js'
import { sayIn } from '../words/say.ts'
import { clickHandlers } from './click-handlers.ts'
import { commands, messageCommands } from './commands.ts'
import { askedOf } from './fair-use/asked-of.ts'
import type { Runs } from './interaction/command.ts'
import { answerFailure } from './interaction/failures.ts'
import { type Answerable, refuse } from './interaction/reply.ts'
import type { Services } from './services.ts'

export async function route(services: Services, interaction: Interaction): Promise<void> {
  try {
    await dispatch(services, interaction)
  } catch (error) {
    await answerFailure(services, interaction, error)
  }
}

async function dispatch(services: Services, interaction: Interaction): Promise<void> {
  const asked = askedOf(interaction)
  const tooMuch = asked && services.fairUse.admit(asked, interaction.user.id, interaction.guildId, services.now())
  if (interaction.isAutocomplete())
    return tooMuch ? interaction.respond([]) : runsOf(interaction)?.suggest?.(services, interaction)
  if (!isAnswerable(interaction)) return
  const say = sayIn(interaction.locale)
  if (tooMuch) return refuse(interaction, say, tooMuch)
  if (interaction.isCommand()) {
    const known = interaction.isChatInputCommand()
      ? runsOf(interaction)?.run(services, interaction)
      : messageCommands.find(one => one.name === interaction.commandName)?.run(services, interaction)
    return known ?? refuse(interaction, say, { code: 'unknown-command' })
  }
  const [mark = ''] = interaction.customId.split('.', 1)
  const handled = clickHandlers.get(mark)?.handle(services, interaction)
  return handled ?? refuse(interaction, say, { code: 'unknown-click' })
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
