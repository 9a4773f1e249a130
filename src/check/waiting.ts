// What waits on a server: checks whose question waits for somebody who may help, or that wait for somebody to take them.
import type { QuestionId } from '../engine/answers.ts'
import type { Check } from './check.ts'
import { type Actor, mayHelp, type Taker } from './custody.ts'
import { custodyOf, isFor } from './custody-of.ts'

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

/** `mine`: what was passed on or offered to this person or a role of theirs, or what they have claimed; `free`: claimed by nobody. */
export const waitingFilters = ['all', 'help', 'free', 'mine', 'taker'] as const
export type WaitingFilter = (typeof waitingFilters)[number]

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
  const last = (did: 'asked' | 'offered') => history.findLast(one => one.did === did)?.at ?? check.startedAt
  if (helpRequest) {
    const { question, claimed, meant } = helpRequest
    return { check, since: last('asked'), for: 'help', question, claimedBy: claimed?.by ?? null, meant: meant ?? null }
  }
  return offer && now < offer.until ? { check, since: last('offered'), for: 'taker', to: offer.to } : undefined
}

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
