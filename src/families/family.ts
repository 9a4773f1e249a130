// A server's family: its draft, the version in force, who did what, and what may be done next.
import type { Facts } from './facts/facts-schema.ts'

export type FamilyState = 'draft' | 'in-review' | 'in-force' | 'retired'

/** Who, when (ms since 1970) and why; `by` is `nobody` once that person was forgotten. */
export type Deed = { readonly by: string; readonly at: number; readonly why: string }

export type Review = Deed & {
  /** The digest of what is asked for: another draft needs another review. */
  readonly digest: string
}

export type Retirement = Deed & { readonly successor: string | null }

/** One family of a server as a store keeps it. */
export type ServerFamily = {
  readonly id: string
  readonly server: string
  readonly state: FamilyState
  /** Grows with every change; a click names the one it has seen. */
  readonly revision: number
  /** The number of the version in force; 0 before the first. */
  readonly head: number
  readonly draft: Facts | null
  readonly review: Review | null
  readonly retired: Retirement | null
  /** The interaction that changed it last. */
  readonly changedBy: string
  readonly madeBy: string
  readonly madeAt: number
}

export type Version = {
  readonly family: string
  readonly number: number
  readonly facts: Facts
  readonly digest: string
  readonly by: string
  /** The second moderator; null where there was only one, who pressed twice. */
  readonly agreedBy: string | null
  readonly at: number
  readonly why: string
  /** The version it goes back to. */
  readonly undoes: number | null
}

export const limits = {
  families: 300,
  drafts: 50,
  versions: 200,
  references: 50,
  photos: 60,
  fakes: 20,
  features: 25,
} as const

/** A must waits so long, in ms, where one moderator alone puts it in force. */
export const waitAlone = 24 * 3600_000
