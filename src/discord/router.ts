// Sends each interaction to its one handler; whatever happens there, the person gets an answer.
import type { Interaction } from 'discord.js'
import { refuse } from './answer.ts'
import { onCheckClick } from './clicks/check-click.ts'
import { commands } from './commands/manifest.ts'
import type { Desk } from './desk.ts'
import { answerFailure } from './errors.ts'
import { decodeClick } from './id-codec.ts'
import { sayIn } from './words/say.ts'

export async function route(desk: Desk, interaction: Interaction): Promise<void> {
  try {
    await dispatch(desk, interaction)
  } catch (error) {
    await answerFailure(desk, interaction, error)
  }
}

async function dispatch(desk: Desk, interaction: Interaction): Promise<void> {
  if (interaction.isChatInputCommand() || interaction.isAutocomplete()) {
    const command = commands.find(one => one.name === interaction.commandName)
    const wanted = interaction.options.getSubcommand(false)
    const subcommand = command?.subcommands.find(one => one.name === wanted)
    if (interaction.isAutocomplete()) await subcommand?.suggest?.(desk, interaction)
    else if (subcommand) await subcommand.run(desk, interaction)
    else await refuse(interaction, sayIn(interaction.locale), { code: 'unknown-command' })
    return
  }
  if (!interaction.isMessageComponent() && !interaction.isModalSubmit()) return
  const id = decodeClick(interaction.customId)
  if (id) await onCheckClick(desk, interaction, id)
  else await refuse(interaction, sayIn(interaction.locale), { code: 'unknown-click' })
}
