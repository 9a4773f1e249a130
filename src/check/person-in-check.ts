// A person in a check that somebody else holds: what they did with it, and the check once they want to stand in it no more.
import type { QuestionId } from '../engine/answers.ts'
import type { Check } from './check.ts'
import type { Custody, HandOverRecord, HelpRequest } from './custody.ts'
import { custodyOf } from './custody-of.ts'
import type { CheckId, PersonId } from './ids.ts'

/** Stands where the id of a person stood; nobody has it. */
export const forgotten: PersonId = ''

/** What a person has to do with another's check: nothing of its answers, and of its history only what they did or what was done to them. */
export type PartInCheck = {
  readonly check: CheckId
  readonly server: string | null
  readonly started: boolean
  readonly history: readonly HandOverRecord[]
  /** Questions they answered in the holder's place. */
  readonly answered: readonly QuestionId[]
}

export function partIn(check: Check, person: PersonId): PartInCheck {
  const { starter, history } = custodyOf(check)
  return {
    check: check.id,
    server: check.server,
    started: starter === person,
    history: history.filter(({ by, to }) => by === person || (to?.to === 'person' && to.person === person)),
    answered: Object.entries(check.saidBy ?? {}).flatMap(([id, by]) => (by === person ? [id] : [])),
  }
}

/** A check they held goes back to whoever started it, without anything they answered; undefined where that was themselves. */
export function giveBackWithout(check: Check, person: PersonId): Check | undefined {
  const { starter } = custodyOf(check)
  if (starter === person) return undefined
  const { saidBy: _said, leaves: _leaves, ...rest } = check
  const {
    from: _from,
    offer: _offer,
    helpRequest: _helpRequest,
    closing: _closing,
    pair: _pair,
    ...custody
  } = without({ ...check, holder: starter }, person)
  // Packs that it was judged by are found anew, and with them what is given.
  const anew = { answers: {}, trail: [], consents: {}, packs: [], phase: { is: 'paused' } } as const
  return { ...rest, ...anew, holder: starter, custody: { ...custody, shares: false } }
}

/** The check without a trace of them: an offer to them lapses, what came from them came from its holder, deeds have no name. */
export function forgetPerson(check: Check, person: PersonId): Check {
  const { custody, saidBy, ...rest } = check
  const said = saidBy && Object.fromEntries(Object.entries(saidBy).map(([id, by]) => [id, nameless(by, person)]))
  return {
    ...rest,
    ...(custody && { custody: without(check, person) }),
    ...(said && { saidBy: said }),
  }
}

function without(check: Check, person: PersonId): Custody {
  const { from, offer, helpRequest, closing, starter, history, ...rest } = custodyOf(check)
  const toThem = offer?.to.to === 'person' && offer.to.person === person
  return {
    ...rest,
    starter: starter === person ? check.holder : starter,
    ...(from !== undefined && from !== person && starter !== person && { from }),
    ...(offer && !toThem && { offer }),
    ...(helpRequest && { helpRequest: unclaimed(helpRequest, person) }),
    ...(closing && closing.by !== person && { closing }),
    history: history.map(one => forgetIn(one, person)),
  }
}

/** A question that they have claimed, or that was passed on to them, waits for everybody again. */
function unclaimed({ claimed, meant, ...asked }: HelpRequest, person: PersonId): HelpRequest {
  return {
    ...asked,
    ...(claimed && claimed.by !== person && { claimed }),
    ...(meant && !(meant.to === 'person' && meant.person === person) && { meant }),
  }
}

/** What they did stays, without who and without their words. */
function forgetIn({ by, to, why, ...rest }: HandOverRecord, person: PersonId): HandOverRecord {
  const mine = by === person
  return {
    ...rest,
    by: nameless(by, person),
    ...(to && { to: to.to === 'person' ? { ...to, person: nameless(to.person, person) } : to }),
    ...(why !== undefined && !mine && { why }),
  }
}

const nameless = (by: PersonId, person: PersonId): PersonId => (by === person ? forgotten : by)
