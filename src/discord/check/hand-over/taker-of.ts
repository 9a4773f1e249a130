// Who a check is offered to, as somebody chose them: or why they cannot be.
import type { APIRole, Role, User } from 'discord.js'
import type { Taker } from '../../../check/custody.ts'
import type { Refusal } from '../../interaction/refusal.ts'

/** What was chosen: nobody at all, a person (and whether they are of this server), or a role. */
export type Chosen = {
  readonly user?: User | undefined
  readonly isHere: boolean
  readonly role?: Role | APIRole | null | undefined
}

export type Choosing = { readonly ok: true; readonly taker: Taker } | { readonly ok: false; readonly refusal: Refusal }

/** `server`: where it is offered; its own id is the role of everybody there. */
export function takerOf({ user, isHere, role }: Chosen, server: string | null): Choosing {
  if (role) {
    if (role.id === server) return refused({ code: 'to-everyone' })
    return role.managed ? refused({ code: 'to-a-bot' }) : taken({ to: 'role', role: role.id })
  }
  if (!user) return taken({ to: 'anyone' })
  if (user.bot) return refused({ code: 'to-a-bot' })
  return isHere ? taken({ to: 'person', person: user.id }) : refused({ code: 'not-here' })
}

const taken = (taker: Taker): Choosing => ({ ok: true, taker })
const refused = (refusal: Refusal): Choosing => ({ ok: false, refusal })
