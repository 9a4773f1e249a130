// The option "which", shared by the commands that take one of a person's own open checks.
import {
  type APIApplicationCommandStringOption,
  ApplicationCommandOptionType,
  type AutocompleteInteraction,
  type ChatInputCommandInteraction,
} from 'discord.js'
import type { Check } from '../../../check/check.ts'
import { refit } from '../../../check/refit.ts'
import type { Program } from '../../../engine/compile.ts'
import { inLanguage } from '../../../engine/in-language.ts'
import { findFamily } from '../../../engine/programs.ts'
import { nameWhat } from '../../../words/describe.ts'
import { type Say, sayIn } from '../../../words/say.ts'
import { refuse } from '../../interaction/reply.ts'
import { cut } from '../../message/parts.ts'
import type { Services } from '../../services.ts'

export const whichOption = (say: Say): APIApplicationCommandStringOption => ({
  type: ApplicationCommandOptionType.String,
  name: 'which',
  description: say('command.check.which'),
  autocomplete: true,
})

export async function suggestChecks(services: Services, interaction: AutocompleteInteraction): Promise<void> {
  const say = sayIn(interaction.locale)
  const typed = interaction.options.getFocused().toLocaleLowerCase(say.locale)
  const day = new Intl.DateTimeFormat(say.locale, { dateStyle: 'medium', timeZone: 'UTC' })
  const choices = (await services.checks.heldBy(interaction.user.id, services.now())).map(check => ({
    value: check.id,
    name: cut(
      say('check.choice', {
        what: nameWhat(say, findFamily(services.programs, check.family)),
        date: day.format(check.startedAt),
        count: check.trail.length,
      }),
      100,
    ),
  }))
  await interaction.respond(choices.filter(one => one.name.toLocaleLowerCase(say.locale).includes(typed)).slice(0, 25))
}

export type OwnCheck = { readonly check: Check; readonly program: Program }

/**
 * The person's open check that was named, or their latest one, fitted to its program. Undefined if there is nothing left to do:
 * the command has counted before, or the person has been told why not.
 */
export async function ownCheck(
  services: Services,
  interaction: ChatInputCommandInteraction,
  say: Say,
): Promise<OwnCheck | undefined> {
  const open = await services.checks.heldBy(interaction.user.id, services.now())
  if (await countedAlready(services, interaction)) return undefined
  const named = interaction.options.getString('which')
  const found = named === null ? open[0] : open.find(check => check.id === named)
  const program = found && services.programs.programFor(found.family, found.day)
  if (found && program) return { check: refit(program, found), program: inLanguage(program, say.locale) }
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
export async function latestOpen(services: Services, person: string): Promise<OwnCheck | undefined> {
  const [check] = await services.checks.heldBy(person, services.now())
  const program = check && services.programs.programFor(check.family, check.day)
  return check && program && { check: refit(program, check), program }
}
