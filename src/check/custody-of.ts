// What follows from a check's custody: whose it is, who may take it, and who sees how far it is.
import type { QuestionId } from '../engine/answers.ts'
import type { Check } from './check.ts'
import type { Actor, Custody, Taker } from './custody.ts'

/** A check that was never handed over is with whoever started it. */
export const custodyOf = (check: Check): Custody =>
  check.custody ?? { starter: check.holder, shares: false, history: [] }

/** Whether this person is one of those an offer is for: of the server, in any case. */
export function isFor(taker: Taker, actor: Actor): boolean {
  if (!actor.here) return false
  if (taker.to === 'anyone') return true
  return taker.to === 'person' ? taker.person === actor.person : actor.roles.includes(taker.role)
}

/** Whether a check is with somebody else than its starter, offered to somebody, or at a question that moderators were asked. */
export function isInOtherHands(check: Check): boolean {
  const { starter, offer, helpRequest } = custodyOf(check)
  return check.holder !== starter || offer !== undefined || helpRequest !== undefined
}

/** Whether a person may see how far a check is: its holder, its starter, whom it is offered to, and moderators. */
export function seesProgress(check: Check, actor: Actor): boolean {
  const { starter, offer } = custodyOf(check)
  return (
    actor.moderator ||
    [check.holder, starter].includes(actor.person) ||
    (offer !== undefined && offer.to.to !== 'anyone' && isFor(offer.to, actor))
  )
}

/** Whether a person may see what was answered: its holder, and its starter if the holder shares it. */
export const seesAnswers = (check: Check, actor: Actor): boolean =>
  actor.person === check.holder || (actor.person === custodyOf(check).starter && custodyOf(check).shares)

/** Whether a helper has given an answer that accuses, and its holder wants another one to give it, too. */
export const isSecond = ({ phase, custody, saidBy }: Check, question: QuestionId): boolean =>
  custody?.pair === true &&
  phase.is === 'second-look' &&
  phase.question === question &&
  saidBy?.[question] !== undefined
