// What every step of a hand-over is given: the click, the check as it stands, and who acts.
import type { BaseInteraction } from 'discord.js'
import type { Check } from '../../check/check.ts'
import type { Actor } from '../../check/custody.ts'
import type { Program } from '../../engine/compile.ts'
import type { Clicked } from '../answer.ts'
import type { Desk } from '../desk.ts'
import { moderating, serverOf } from '../rights.ts'
import type { Say } from '../words/say.ts'

export type Turn = {
  readonly desk: Desk
  readonly interaction: Clicked
  readonly say: Say
  readonly program: Program
  readonly check: Check
  readonly actor: Actor
}

/** The person behind an interaction, with the rights they have over this check: those of its server, and only from there. */
export async function actorOf(desk: Desk, interaction: BaseInteraction, check: Check): Promise<Actor> {
  const here = check.server !== null && serverOf(interaction) === check.server
  const { member } = interaction
  const roles =
    !here || member === null ? [] : Array.isArray(member.roles) ? member.roles : [...member.roles.cache.keys()]
  const moderator = here && (await moderating(desk, interaction)) !== undefined
  return { person: interaction.user.id, roles, moderator }
}

/** Whoever holds a check needs no rights of the server to answer it. */
export const holderOf = (check: Check): Actor => ({ person: check.holder, roles: [], moderator: false })
