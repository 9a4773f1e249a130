// What waits on a server: checks whose question waits for somebody who may help, or that wait for somebody to take them.
import type { Answer, QuestionId } from '../engine/answers.ts'
import type { Check } from './check.ts'
import { type Actor, type HandOverAction, mayHelp, type Taker } from './custody.ts'
import { custodyOf, isFor, isInOtherHands } from './custody-of.ts'
import { standsStill, untouchedSince } from './desk.ts'
import type { PersonId } from './ids.ts'

/** `since`: ms since 1970. What nobody can take any more waits for nobody. */
export type Waiting = { readonly check: Check; readonly since: number } & (
  | {
      readonly for: 'help'
      readonly question: QuestionId
      readonly claimedBy: string | null
      readonly meant: Taker | null
    }
  | { readonly for: 'taker'; readonly to: Taker }
)

/** A question that was handled for somebody, and by whom; `answer`: undefined where they gave none, or it was given anew since. `at`: ms since 1970. */
export type HandledRequest = {
  readonly check: Check
  readonly question: QuestionId
  readonly by: PersonId
  readonly did: 'helped' | 'sent-back'
  readonly at: number
  readonly answer: Answer | undefined
}

/** Open checks in other hands, or for whose question somebody was asked, that nobody has touched for a day; the longest untouched first. */
export function standingStill(checks: readonly Check[], actor: Actor, now: number): Check[] {
  return checks
    .filter(check => check.phase.is !== 'closed' && now < check.expiresAt && isInOtherHands(check))
    .filter(check => standsStill(check, now))
    .filter(check => actor.moderator || (mayHelp(actor) && custodyOf(check).helpRequest !== undefined))
    .sort((a, b) => untouchedSince(a) - untouchedSince(b) || (a.id < b.id ? -1 : 1))
}

/** What was handled of checks that are still there, the latest first: all of it for moderators, a helper's own for a helper. */
export function handledFor(checks: readonly Check[], actor: Actor): HandledRequest[] {
  if (!mayHelp(actor)) return []
  return checks
    .filter(check => check.phase.is !== 'closed')
    .flatMap(check =>
      custodyOf(check).history.flatMap(({ by, did, at, question }): HandledRequest[] => {
        if ((did !== 'helped' && did !== 'sent-back') || question === undefined) return []
        const stands = did === 'helped' && check.saidBy?.[question] === by
        return [{ check, question, by, did, at, answer: stands ? check.answers[question] : undefined }]
      }),
    )
    .filter(one => actor.moderator || one.by === actor.person)
    .sort((a, b) => b.at - a.at || (a.check.id < b.check.id ? -1 : 1))
}

/** `mine`: what was passed on or offered to this person or a role of theirs, or what they have claimed; `free`: claimed by nobody. */
export const waitingFilters = ['all', 'help', 'free', 'mine', 'taker'] as const
export type WaitingFilter = (typeof waitingFilters)[number]
/** What a queue lists: what waits, and beside it what stands still and what was handled. */
export const queueFilters = [...waitingFilters, 'still', 'handled'] as const
export type QueueFilter = (typeof queueFilters)[number]

/** What this person may see of it, the longest waiting first. */
export function waitingFor(checks: readonly Check[], actor: Actor, filter: WaitingFilter, now: number): Waiting[] {
  return checks
    .flatMap(check => waitOf(check, now) ?? [])
    .filter(one => seen(one, actor) && passes(one, actor, filter))
    .sort((a, b) => a.since - b.since || (a.check.id < b.check.id ? -1 : 1))
}

/** Undefined for a check that waits for nobody: it goes on with its holder, is over, or its offer has lapsed. */
export function waitOf(check: Check, now: number): Waiting | undefined {
  if (check.phase.is === 'closed' || now >= check.expiresAt) return undefined
  const { helpRequest, offer, history } = custodyOf(check)
  const last = (...dids: HandOverAction[]) => history.findLast(one => dids.includes(one.did))?.at ?? check.startedAt
  if (helpRequest) {
    const { question, claimed, meant } = helpRequest
    return {
      check,
      since: last('asked', 'reopened'),
      for: 'help',
      question,
      claimedBy: claimed?.by ?? null,
      meant: meant ?? null,
    }
  }
  return offer && now < offer.until
    ? { check, since: last('offered', 'redirected'), for: 'taker', to: offer.to }
    : undefined
}

/** What has waited for longer than this, in ms; a question that somebody looks at since they said so. */
export const waitingTooLong = (checks: readonly Check[], longest: number, now: number): Waiting[] =>
  checks
    .flatMap(check => waitOf(check, now) ?? [])
    .filter(one => now - idleSince(one) >= longest)
    .sort((a, b) => a.since - b.since || (a.check.id < b.check.id ? -1 : 1))

/** Since when nobody has said that they look at it, or since somebody last did. */
export const idleSince = ({ check, since }: Waiting): number =>
  Math.max(since, custodyOf(check).helpRequest?.claimed?.at ?? 0)

/** Moderators see all of it; helpers the questions, and what is offered to everybody or to them. */
const seen = (one: Waiting, actor: Actor): boolean =>
  actor.moderator || (mayHelp(actor) && (one.for === 'help' || isFor(one.to, actor)))

function passes(one: Waiting, actor: Actor, filter: WaitingFilter): boolean {
  switch (filter) {
    case 'all':
      return true
    case 'help':
    case 'taker':
      return one.for === filter
    case 'free':
      return one.for === 'help' && one.claimedBy === null
    case 'mine':
      return one.for === 'help'
        ? one.claimedBy === actor.person || (one.meant !== null && isFor(one.meant, actor))
        : one.to.to !== 'anyone' && isFor(one.to, actor)
  }
}
