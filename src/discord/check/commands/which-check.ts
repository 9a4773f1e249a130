// The option "which", shared by the commands that take one of a person's own open checks.

import {
  type APIApplicationCommandStringOption,
  ApplicationCommandOptionType,
  type AutocompleteInteraction,
  type ChatInputCommandInteraction,
} from 'discord.js'
import { sayDay } from '../../../words/dates.ts'
import { nameWhat } from '../../../words/describe.ts'
import { type Say, sayIn } from '../../../words/say.ts'
import { familiesOfChecks } from '../../families/families-of-checks.ts'
import { refuse } from '../../interaction/reply.ts'
import { cut } from '../../message/parts.ts'
import type { Services } from '../../services.ts'
import { fitCheck, type LoadedCheck } from '../load-check.ts'

export const whichOption = (say: Say): APIApplicationCommandStringOption => ({
  type: ApplicationCommandOptionType.String,
  name: 'which',
  description: say('command.check.which'),
  autocomplete: true,
})

export async function suggestChecks(services: Services, interaction: AutocompleteInteraction): Promise<void> {
  const say = sayIn(interaction.locale)
  const typed = interaction.options.getFocused().toLocaleLowerCase(say.locale)
  const held = await services.checks.heldBy(interaction.user.id, services.now())
  const family = await familiesOfChecks(services, held)
  const choices = held.map(check => ({
    value: check.id,
    name: cut(
      say('check.choice', {
        what: nameWhat(say, family(check)),
        date: sayDay(say, check.startedAt),
        count: check.trail.length,
      }),
      100,
    ),
  }))
  await interaction.respond(choices.filter(one => one.name.toLocaleLowerCase(say.locale).includes(typed)).slice(0, 25))
}

/**
 * The person's open check that was named, or their latest one, fitted to its program. Undefined if there is nothing left to do:
 * the command has counted before, or the person has been told why not.
 */
export async function ownCheck(
  services: Services,
  interaction: ChatInputCommandInteraction,
  say: Say,
): Promise<LoadedCheck | undefined> {
  const open = await services.checks.heldBy(interaction.user.id, services.now())
  if (await countedAlready(services, interaction)) return undefined
  const named = interaction.options.getString('which')
  const found = named === null ? open[0] : open.find(check => check.id === named)
  const own = found && (await fitCheck(services, say, found))
  if (own) return own
  await refuse(interaction, say, { code: found ? 'gone' : 'no-such-check' })
  return undefined
}

/**
 * Whether this command was delivered before and has counted. Asked after the person's checks were read: had the first delivery
 * changed them before that, it is seen here; had it not, both are about the same check, and only one save goes through.
 */
function countedAlready(services: Services, interaction: ChatInputCommandInteraction): Promise<boolean> {
  return services.checks.counted(interaction.user.id, interaction.id)
}

/** The person's latest open check, fitted to its program: the one that facts can be added to. */
export async function latestOpen(services: Services, say: Say, person: string): Promise<LoadedCheck | undefined> {
  const [check] = await services.checks.heldBy(person, services.now())
  return check && (await fitCheck(services, say, check))
}
