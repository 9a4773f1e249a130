// The hand-over machine: one event in, the check with its new custody out, or a refusal that changes nothing.
//
// A check always has exactly one holder. An offer leaves it with them until somebody takes it, so none is lost on the way.
import type { Check } from './check.ts'
import {
  type Actor,
  type Custody,
  type HandOverAction,
  type HandOverRecord,
  type HelpRequest,
  longestReason,
  mayHelp,
  mostHandled,
  offerLasts,
  type Taker,
} from './custody.ts'
import { custodyOf, isFor, isInOtherHands } from './custody-of.ts'
import { type DeskEvent, tend } from './desk.ts'
import type { PersonId } from './ids.ts'
import type { CheckRefusal } from './refusals.ts'

export type HandOverEvent =
  | { readonly is: 'offer'; readonly to: Taker; readonly why: string }
  | { readonly is: 'take' }
  | { readonly is: 'decline'; readonly why: string }
  | { readonly is: 'withdraw' }
  /** To whom the holder had it from. */
  | { readonly is: 'give-back'; readonly why: string }
  /** Asks a moderator to answer the question the check is at. */
  | { readonly is: 'ask'; readonly words: string; readonly where: string | null }
  | { readonly is: 'unask' }
  /** Somebody who may help says that they look at it, or that they do not any more. */
  | { readonly is: 'claim' }
  | { readonly is: 'let-go' }
  /** Somebody who may help leaves it to a person or a role. */
  | { readonly is: 'pass-on'; readonly to: Taker }
  /** A moderator cannot answer it either, or says what to look at. */
  | { readonly is: 'send-back'; readonly why: string }
  | { readonly is: 'take-over'; readonly why: string }
  | { readonly is: 'share'; readonly shares: boolean }
  | DeskEvent

export type HandedOver =
  | { readonly ok: true; readonly check: Check }
  | { readonly ok: false; readonly refusal: CheckRefusal }

/** What can happen to a check's custody, as codes. */
export const handOvers = [
  'offer',
  'take',
  'decline',
  'withdraw',
  'give-back',
  'ask',
  'unask',
  'claim',
  'let-go',
  'pass-on',
  'send-back',
  'take-over',
  'share',
  'redirect',
  'ask-closing',
  'keep-open',
  'pair',
  'reopen',
] as const satisfies readonly HandOverEvent['is'][]

export const isHandOver = (event: { readonly is: string }): event is HandOverEvent =>
  (handOvers as readonly string[]).includes(event.is)

/** Takes one event at `now` (ms since 1970). Neither the revision nor the question on screen changes here. */
export function handOver(check: Check, event: HandOverEvent, actor: Actor, now: number): HandedOver {
  const custody = custodyOf(check)
  const { offer, helpRequest } = custody
  const holds = actor.person === check.holder
  if (check.server === null) return refuse({ code: 'outside-server' })
  const tooOften = custody.history.length >= mostHandled
  const entry = (did: HandOverAction, words = '', to?: Taker): HandOverRecord => {
    const why = cut(words)
    return { by: actor.person, did, at: now, ...(to && { to }), ...(why && { why }) }
  }
  switch (event.is) {
    case 'offer':
      if (!holds) return refuse({ code: 'not-yours' })
      if (!actor.here) return refuse({ code: 'outside-server' })
      if (offer) return refuse({ code: 'offered' })
      if (event.to.to === 'person' && event.to.person === check.holder) return refuse({ code: 'to-oneself' })
      if (tooOften) return refuse({ code: 'handed-too-often', most: mostHandled })
      return kept(
        check,
        { ...without(custody, 'helpRequest'), offer: { to: event.to, until: now + offerLasts } },
        entry('offered', event.why, event.to),
      )
    case 'take':
      if (!offer) return refuse({ code: 'nothing-to-take' })
      if (now >= offer.until) return refuse({ code: 'offer-lapsed' })
      if (holds) return refuse({ code: 'to-oneself' })
      if (!isFor(offer.to, actor)) return refuse({ code: 'not-for-you' })
      return passedTo(check, actor.person, custody, entry('took'))
    case 'decline':
      if (!offer) return refuse({ code: 'nothing-to-take' })
      if (offer.to.to !== 'person' || offer.to.person !== actor.person) return refuse({ code: 'not-for-you' })
      return kept(check, without(custody, 'offer'), entry('declined', event.why))
    case 'withdraw':
      if (!holds) return refuse({ code: 'not-yours' })
      return offer ? kept(check, without(custody, 'offer'), entry('withdrew')) : refuse({ code: 'nothing-to-take' })
    case 'give-back':
      if (!holds) return refuse({ code: 'not-yours' })
      if (offer) return refuse({ code: 'offered' })
      if (custody.from === undefined) return refuse({ code: 'nothing-to-give-back' })
      return passedTo(check, custody.from, custody, entry('gave-back', event.why))
    case 'ask':
      if (!holds) return refuse({ code: 'not-yours' })
      if (!actor.here) return refuse({ code: 'outside-server' })
      if (offer) return refuse({ code: 'offered' })
      if (helpRequest) return refuse({ code: 'asked-already' })
      if (!('question' in check.phase)) return refuse({ code: 'nothing-to-ask' })
      if (tooOften) return refuse({ code: 'handed-too-often', most: mostHandled })
      return kept(
        check,
        { ...custody, helpRequest: { question: check.phase.question, words: cut(event.words), where: event.where } },
        entry('asked', event.words),
      )
    case 'unask':
      if (!holds) return refuse({ code: 'not-yours' })
      return helpRequest
        ? kept(check, without(custody, 'helpRequest'), entry('unasked'))
        : refuse({ code: 'not-asked' })
    case 'claim':
    case 'let-go':
    case 'pass-on':
    case 'send-back': {
      if (!mayHelp(actor)) return refuse({ code: 'not-moderator' })
      if (!helpRequest) return refuse({ code: 'not-asked' })
      const about = { question: helpRequest.question }
      if (event.is === 'send-back')
        return kept(check, without(custody, 'helpRequest'), { ...entry('sent-back', event.why), ...about })
      if (tooOften) return refuse({ code: 'handed-too-often', most: mostHandled })
      return helped(check, custody, helpRequest, event, actor, entry, about, now)
    }
    case 'take-over':
      if (!actor.moderator) return refuse({ code: 'not-moderator' })
      if (holds) return refuse({ code: 'to-oneself' })
      // Nobody's own check is opened to moderators who were not asked.
      if (!isInOtherHands(check)) return refuse({ code: 'not-asked' })
      return passedTo(check, actor.person, custody, entry('took-over', event.why))
    case 'share':
      if (!holds) return refuse({ code: 'not-yours' })
      return { ok: true, check: { ...check, custody: { ...custody, shares: event.shares } } }
    default: {
      const tended = tend(check, event, actor, now)
      if ('code' in tended) return refuse(tended)
      const { entry: deed, custody: next } = tended
      return deed === undefined
        ? { ok: true, check: { ...check, custody: next } }
        : kept(check, next, {
            ...entry(deed.did, deed.why, deed.to),
            ...(deed.question && { question: deed.question }),
          })
    }
  }
}

/** Claimed, let go or passed on: whom the question waits for. */
function helped(
  check: Check,
  custody: Custody,
  { claimed, meant, ...asked }: HelpRequest,
  event: Extract<HandOverEvent, { is: 'claim' | 'let-go' | 'pass-on' }>,
  actor: Actor,
  entry: (did: HandOverAction, words?: string, to?: Taker) => HandOverRecord,
  about: Pick<HandOverRecord, 'question'>,
  now: number,
): HandedOver {
  const still = meant && { meant }
  switch (event.is) {
    case 'claim': {
      if (claimed?.by === actor.person) return refuse({ code: 'to-oneself' })
      // Whoever has said so first is not pushed aside; they let it go, or pass it on.
      if (claimed) return refuse({ code: 'claimed-already' })
      const helpRequest = { ...asked, ...still, claimed: { by: actor.person, at: now } }
      return kept(check, { ...custody, helpRequest }, { ...entry('claimed'), ...about })
    }
    case 'let-go': {
      if (claimed?.by !== actor.person) return refuse({ code: 'not-claimed' })
      return kept(check, { ...custody, helpRequest: { ...asked, ...still } }, { ...entry('let-go'), ...about })
    }
    case 'pass-on': {
      const { to } = event
      if (to.to === 'anyone')
        return kept(check, { ...custody, helpRequest: asked }, { ...entry('passed-on', '', to), ...about })
      if (to.to === 'person' && to.person === check.holder) return refuse({ code: 'to-oneself' })
      return kept(
        check,
        { ...custody, helpRequest: { ...asked, meant: to } },
        { ...entry('passed-on', '', to), ...about },
      )
    }
  }
}

const without = (custody: Custody, part: 'offer' | 'helpRequest'): Custody => {
  const { [part]: _gone, ...rest } = custody
  return rest
}

const kept = (check: Check, custody: Custody, entry: HandOverRecord): HandedOver => ({
  ok: true,
  check: { ...check, custody: { ...custody, history: [...custody.history, entry] } },
})

/** Into other hands: what the last holder consented to, shared or asked is theirs and does not go along. */
function passedTo(check: Check, holder: PersonId, custody: Custody, entry: HandOverRecord): HandedOver {
  const { starter, history } = custody
  const from = holder === starter ? {} : { from: entry.did === 'gave-back' ? starter : check.holder }
  const passed = { starter, ...from, shares: false, history: [...history, entry] }
  const { leaves, ...rest } = check
  // Whether it is counted depends on who holds it; that one of them said no stays so.
  const declined = leaves === 'declined' ? { leaves } : {}
  return { ok: true, check: { ...rest, ...declined, holder, consents: {}, custody: passed } }
}

/** People's words as one line: a line of their own could pass for one of ours. */
const cut = (words: string): string => [...words.replace(/\s+/g, ' ').trim()].slice(0, longestReason).join('')
const refuse = (refusal: CheckRefusal): HandedOver => ({ ok: false, refusal })
