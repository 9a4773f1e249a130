// What every step of a hand-over is given: the click, the check as it stands, and who acts.
import type { BaseInteraction } from 'discord.js'
import type { Check } from '../../../check/check.ts'
import type { Actor } from '../../../check/custody.ts'
import type { CheckId } from '../../../check/ids.ts'
import type { Program } from '../../../engine/compile.ts'
import { type Say, sayIn } from '../../../words/say.ts'
import type { Clicked } from '../../interaction/reply.ts'
import { helpsUnder, moderatesUnder, rolesOf, serverOf } from '../../interaction/rights.ts'
import type { Services } from '../../services.ts'
import { loadCheck } from '../load-check.ts'

export type Turn = {
  readonly services: Services
  readonly interaction: Clicked
  readonly say: Say
  readonly program: Program
  readonly check: Check
  readonly actor: Actor
}

/** The check as it stands, in the person's language. `seen`: a duplicate delivery, to which the process that saved it replies. */
export async function turnOf(services: Services, interaction: Clicked, id: CheckId): Promise<Turn | 'gone' | 'seen'> {
  const say = sayIn(interaction.locale)
  const found = await loadCheck(services, say, id)
  if (!found) return 'gone'
  if (found.changedBy === interaction.id) return 'seen'
  const { check, program } = found
  return { services, interaction, say, program, check, actor: await actorOf(services, interaction, check) }
}

/** The person behind an interaction, with the rights they have over this check: those of its server, and only from there. */
export async function actorOf(services: Services, interaction: BaseInteraction, check: Check): Promise<Actor> {
  const here = check.server !== null && serverOf(interaction) === check.server
  const { member } = interaction
  const roles = here && member !== null ? rolesOf(member) : []
  const settings = here && check.server !== null ? await services.servers.load(check.server) : undefined
  return {
    person: interaction.user.id,
    here,
    roles,
    moderator: settings !== undefined && moderatesUnder(settings, interaction),
    helper: settings !== undefined && helpsUnder(settings, interaction),
  }
}

/** Whoever holds a check needs no rights of the server to answer it; `here`: whether they are in it. */
export const holderOf = (check: Check, here = false): Actor => ({
  person: check.holder,
  here,
  roles: [],
  moderator: false,
})
