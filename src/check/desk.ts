// What moderators and helpers do about a check out of the queue: offer it to somebody else, ask to close it, look at an answer again.
import type { QuestionId } from '../engine/answers.ts'
import { type Check, lifetime } from './check.ts'
import {
  type Actor,
  type Custody,
  type HandOverAction,
  mayHelp,
  mostHandled,
  offerLasts,
  stillAfter,
  type Taker,
} from './custody.ts'
import { custodyOf, isInOtherHands } from './custody-of.ts'
import type { CheckRefusal } from './refusals.ts'

export type DeskEvent =
  /** A moderator offers a check that waits for somebody to somebody else. */
  | { readonly is: 'redirect'; readonly to: Taker; readonly why: string }
  /** Somebody who may help asks whether a check that stands still can be closed; its holder keeps it open, or closes it. */
  | { readonly is: 'ask-closing' }
  | { readonly is: 'keep-open' }
  /** The holder wants a second helper, or does not any more. */
  | { readonly is: 'pair'; readonly wanted: boolean }
  /** Somebody who may help looks once more at the answer that was given for the holder of a finished check. */
  | { readonly is: 'reopen' }

/** The custody after it, and the line of history that says so, if any. */
export type Tended = {
  readonly custody: Custody
  readonly entry?: {
    readonly did: HandOverAction
    readonly why?: string
    readonly to?: Taker
    readonly question?: QuestionId
  }
}

/** Since when nobody has touched a check, to the hour; ms since 1970. */
export const untouchedSince = ({ expiresAt }: Check): number => expiresAt - lifetime

export const standsStill = (check: Check, now: number): boolean => now - untouchedSince(check) >= stillAfter

/** The answer that this person may look at once more: the last a helper gave for the holder; a helper only at their own. */
export function reopensAt(check: Check, actor: Actor): QuestionId | undefined {
  const helped = custodyOf(check).history.filter(one => one.did === 'helped')
  return helped.findLast(({ question = '' }) => {
    const by = check.saidBy?.[question]
    return by !== undefined && (actor.moderator || (mayHelp(actor) && by === actor.person))
  })?.question
}

export function tend(check: Check, event: DeskEvent, actor: Actor, now: number): Tended | CheckRefusal {
  const { closing, pair: _pair, ...rest } = custodyOf(check)
  const custody = custodyOf(check)
  const holds = actor.person === check.holder
  const tooOften = custody.history.length >= mostHandled
  switch (event.is) {
    case 'redirect':
      if (!actor.moderator) return { code: 'not-moderator' }
      if (holds || (event.to.to === 'person' && event.to.person === check.holder)) return { code: 'to-oneself' }
      if (!custody.offer) return { code: 'nothing-to-take' }
      if (now >= custody.offer.until) return { code: 'offer-lapsed' }
      if (tooOften) return { code: 'handed-too-often', most: mostHandled }
      return {
        custody: { ...custody, offer: { to: event.to, until: now + offerLasts } },
        entry: { did: 'redirected', to: event.to, why: event.why },
      }
    case 'ask-closing':
      if (!mayHelp(actor)) return { code: 'not-moderator' }
      if (holds) return { code: 'to-oneself' }
      if (!isInOtherHands(check)) return { code: 'not-asked' }
      // Helpers have to do with questions alone.
      if (!actor.moderator && !custody.helpRequest) return { code: 'not-moderator' }
      if (closing) return { code: 'closing-asked' }
      if (!standsStill(check, now)) return { code: 'moves-still', hours: stillAfter / 3600_000 }
      if (tooOften) return { code: 'handed-too-often', most: mostHandled }
      return { custody: { ...custody, closing: { by: actor.person, at: now } }, entry: { did: 'asked-closing' } }
    case 'keep-open': {
      if (!holds) return { code: 'not-yours' }
      if (!closing) return { code: 'closing-not-asked' }
      const { closing: _asked, ...open } = custody
      return { custody: open, entry: { did: 'kept-open' } }
    }
    case 'pair':
      if (!holds) return { code: 'not-yours' }
      return { custody: { ...rest, ...(closing && { closing }), ...(event.wanted && { pair: true as const }) } }
    case 'reopen': {
      if (!mayHelp(actor)) return { code: 'not-moderator' }
      if (holds) return { code: 'to-oneself' }
      if (custody.offer) return { code: 'offered' }
      if (custody.helpRequest) return { code: 'asked-already' }
      if (check.phase.is !== 'done') return { code: 'not-finished' }
      const question = reopensAt(check, actor)
      if (question === undefined) return { code: 'not-helped' }
      if (tooOften) return { code: 'handed-too-often', most: mostHandled }
      const helpRequest = { question, words: '', where: null, claimed: { by: actor.person, at: now } }
      return { custody: { ...custody, helpRequest }, entry: { did: 'reopened', question } }
    }
  }
}
