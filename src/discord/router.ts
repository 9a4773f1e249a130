// Sends each interaction to its one handler; whatever happens there, the person gets an answer.
import type { AutocompleteInteraction, ChatInputCommandInteraction, Interaction } from 'discord.js'
import { sayIn } from '../words/say.ts'
import { clickHandlers } from './click-handlers.ts'
import { commands, messageCommands } from './commands.ts'
import type { Ended } from './gateway/figures.ts'
import { chargeOf } from './interaction/asked-of.ts'
import type { Runs } from './interaction/command.ts'
import { answerFailure, failingOf } from './interaction/failures.ts'
import { type Answerable, refuse } from './interaction/reply.ts'
import { typedBack } from './interaction/typed-back.ts'
import type { Services } from './services.ts'

/** Says how it ended. Never rejects. `trouble`: what went wrong on its way here, which is all that can be told then. */
export async function route(services: Services, interaction: Interaction, trouble?: unknown): Promise<Ended> {
  try {
    if (trouble !== undefined) throw trouble
    return await dispatch(services, interaction)
  } catch (error) {
    await answerFailure(services, interaction, error)
    return failingOf(error)
  }
}

async function dispatch(services: Services, interaction: Interaction): Promise<Ended> {
  const charge = chargeOf(interaction)
  const tooMuch =
    charge &&
    (await services.fairUse.admit(
      charge.asked,
      interaction.user.id,
      interaction.guildId,
      services.now(),
      charge.tokens,
    ))
  if (interaction.isAutocomplete()) {
    await (tooMuch ? interaction.respond([]) : runsOf(interaction)?.suggest?.(services, interaction))
    return tooMuch ? 'too-much' : 'fine'
  }
  if (!isAnswerable(interaction)) return 'fine'
  const say = sayIn(interaction.locale)
  if (tooMuch) {
    // Photographs and files are counted; what was typed beside them is not lost with them.
    await refuse(interaction, say, tooMuch, typedBack(say, interaction))
    return 'too-much'
  }
  if (interaction.isCommand()) {
    const known = interaction.isChatInputCommand()
      ? runsOf(interaction)?.run(services, interaction)
      : messageCommands.find(one => one.name === interaction.commandName)?.run(services, interaction)
    await (known ?? refuse(interaction, say, { code: 'unknown-command' }))
    return 'fine'
  }
  const [mark = ''] = interaction.customId.split('.', 1)
  const handled = clickHandlers.get(mark)?.handle(services, interaction)
  await (handled ?? refuse(interaction, say, { code: 'unknown-click' }))
  return 'fine'
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
