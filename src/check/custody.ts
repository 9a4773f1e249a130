// Who a check is with: how it came to them, who is asked to take it, and what a moderator is asked.
import type { QuestionId } from '../engine/answers.ts'
import type { PersonId, RoleId } from './ids.ts'

/** Who may take a check that is offered. `anyone`: whoever of the server takes it first, on purpose. */
export type Taker =
  | { readonly to: 'person'; readonly person: PersonId }
  | { readonly to: 'role'; readonly role: RoleId }
  | { readonly to: 'anyone' }

/** While it is open nobody answers the check, but danger can be said; its holder can take it back. `until`: ms since 1970; then nobody can take it any more. */
export type Offer = { readonly to: Taker; readonly until: number }

/**
 * A moderator or helper is asked to answer this question. `words`: what the person wrote about it; `where`: the channel they asked in.
 * `claimed`: who has said that they look at it, which keeps nobody else from answering; `meant`: whom it was passed on to.
 */
export type HelpRequest = {
  readonly question: QuestionId
  readonly words: string
  readonly where: string | null
  readonly claimed?: { readonly by: PersonId; readonly at: number }
  readonly meant?: Exclude<Taker, { to: 'anyone' }>
}

export type HandOverAction =
  | 'offered'
  | 'took'
  | 'declined'
  | 'withdrew'
  | 'gave-back'
  | 'asked'
  | 'unasked'
  | 'helped'
  | 'sent-back'
  | 'took-over'
  | 'claimed'
  | 'let-go'
  | 'passed-on'
  | 'redirected'
  | 'asked-closing'
  | 'kept-open'
  | 'reopened'

/** One line of a check's history; it goes when the check goes. */
export type HandOverRecord = {
  readonly by: PersonId
  readonly did: HandOverAction
  /** Milliseconds since 1970. */
  readonly at: number
  readonly to?: Taker
  readonly why?: string
  /** The question it was about. */
  readonly question?: QuestionId
}

export type Custody = {
  readonly starter: PersonId
  /** Who the holder had it from; absent while it is with the starter. */
  readonly from?: PersonId
  readonly offer?: Offer
  readonly helpRequest?: HelpRequest
  /** Somebody who may help asks whether it can be closed, as it stands still; its holder says so or not. `at`: ms since 1970. */
  readonly closing?: { readonly by: PersonId; readonly at: number }
  /** The holder wants two helpers to say the same before an answer of theirs accuses the cell. */
  readonly pair?: true
  /** Whether the holder lets the starter see the answers. */
  readonly shares: boolean
  /** Oldest first. */
  readonly history: readonly HandOverRecord[]
}

/** Who acts, as an interaction brings them. `here`: in the server the check belongs to; `roles` and `moderator` are of that server. */
export type Actor = {
  readonly person: PersonId
  readonly here: boolean
  readonly roles: readonly RoleId[]
  readonly moderator: boolean
  /** Of a role that may answer for people who are stuck, and decides nothing else. */
  readonly helper?: boolean
}

/** Whether a person may answer the question somebody else is stuck at. */
export const mayHelp = ({ moderator, helper }: Actor): boolean => moderator || helper === true

/** An offer that nobody takes lapses after three days. */
export const offerLasts = 3 * 24 * 3600_000

/** A check that nobody has touched for a day stands still. */
export const stillAfter = 24 * 3600_000

/** More hand-overs than this are a game, not a check. */
export const mostHandled = 50
export const longestReason = 300
