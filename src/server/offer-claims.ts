// What offers in forums need of a store: of every process that hears of a new post, one makes the offer, once.
import type { ServerId } from './settings.ts'

export type OfferClaims = {
  /** True for the first who claims a post, ever; `now` in ms since 1970. */
  claim(server: ServerId, post: string, now: number): Promise<boolean>
  /** Forgets the claims made before `before`; says how many. */
  purge(before: number): Promise<number>
}

/** A post is only new once: after so long, in ms, nothing will tell of it any more. */
export const claimsKept = 14 * 24 * 3600_000
