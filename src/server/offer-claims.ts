// What offers in forums and weekly notes need of a store: of every process that would post one, one does, once.
import type { ServerId } from './settings.ts'

export type OfferClaims = {
  /** True for the first who claims a post (of a forum, or the note of a week), ever; `now` in ms since 1970. */
  claim(server: ServerId, post: string, now: number): Promise<boolean>
  /** Forgets the claims made before `before`; says how many. */
  purge(before: number): Promise<number>
}

/** A post is only new once: after so long, in ms, nothing will tell of it any more. */
export const claimsKept = 14 * 24 * 3600_000
