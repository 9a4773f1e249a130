// Sends each interaction to its one handler; whatever happens there, the person gets an answer.
import type { AutocompleteInteraction, ChatInputCommandInteraction, Interaction } from 'discord.js'
import type { TooMuch } from '../services/fair-use/open-fair-use.ts'
import { sayIn } from '../words/say.ts'
import { clickHandlers } from './click-handlers.ts'
import { commands, messageCommands } from './commands.ts'
import type { Ended } from './gateway/figures.ts'
import { chargeOf } from './interaction/asked-of.ts'
import type { Loads, Runs } from './interaction/command.ts'
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

/** Discord takes no answer after three seconds: what has waited for its turn so long, in ms, is not begun, and can be pressed again. */
const tooLateAfter = 2_900

async function dispatch(services: Services, interaction: Interaction): Promise<Ended> {
  const { guildId: server, user } = interaction
  const arrived = services.now()
  const charge = chargeOf(interaction)
  const here = charge && services.fairUse.admitInTurn(charge.asked, user.id, server, arrived, charge.tokens)
  // Being refused takes its turn, too: a crowd that is sent away is a crowd.
  return services.lanes.run(server, user.id, async () => {
    // What was typed is kept even where nobody can be told so any more.
    if (services.now() - arrived > tooLateAfter && !interaction.isModalSubmit()) return 'ordinary'
    const tooMuch = typeof here === 'function' ? await here() : here
    await (tooMuch ? sendAway(interaction, tooMuch) : handle(services, interaction))
    return tooMuch ? 'too-much' : 'fine'
  })
}

async function sendAway(interaction: Interaction, tooMuch: TooMuch): Promise<void> {
  if (interaction.isAutocomplete()) return interaction.respond([])
  if (!isAnswerable(interaction)) return
  const say = sayIn(interaction.locale)
  // Photographs and files are counted; what was typed beside them is not lost with them.
  await refuse(interaction, say, tooMuch, typedBack(say, interaction))
}

async function handle(services: Services, interaction: Interaction): Promise<void> {
  if (interaction.isAutocomplete()) return (await runsOf(interaction)?.load())?.suggest?.(services, interaction)
  if (!isAnswerable(interaction)) return
  const say = sayIn(interaction.locale)
  if (interaction.isCommand()) {
    const known = interaction.isChatInputCommand()
      ? (await runsOf(interaction)?.load())?.run(services, interaction)
      : (await messageCommands.find(one => one.name === interaction.commandName)?.load())?.run(services, interaction)
    return known ?? refuse(interaction, say, { code: 'unknown-command' })
  }
  const [mark = ''] = interaction.customId.split('.', 1)
  const loading = clickHandlers.get(mark)?.load()
  const handler = loading instanceof Promise ? await loading : loading
  const handled = handler?.handle(services, interaction)
  await (handled ?? refuse(interaction, say, { code: 'unknown-click' }))
}

const isAnswerable = (interaction: Interaction): interaction is Interaction & Answerable =>
  interaction.isChatInputCommand() ||
  interaction.isMessageContextMenuCommand() ||
  interaction.isMessageComponent() ||
  interaction.isModalSubmit()

/** What runs for a command, be it the command itself or the subcommand that was named. */
function runsOf(interaction: AutocompleteInteraction | ChatInputCommandInteraction): Loads<Runs> | undefined {
  const command = commands.find(one => one.name === interaction.commandName)
  if (!command || !('subcommands' in command)) return command
  const wanted = interaction.options.getSubcommand(false)
  return command.subcommands.find(one => one.name === wanted)
}
