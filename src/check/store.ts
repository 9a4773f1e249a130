// What a check needs of a store. Kept promises: what was saved is stored; no interaction counts twice; no stale save wins.
import type { Check } from './check.ts'
import type { CheckId, PersonId } from './ids.ts'

/** `seen`: this interaction has been counted already. `stale`: someone saved the check meanwhile. */
export type Saving = 'saved' | 'seen' | 'stale'

/** A check as it stands, and the interaction that changed it last. */
export type Stored = { readonly check: Check; readonly changedBy: string }

/** `Outcome`: what a finished check leaves behind for the counts. The check room hands it on and does not look into it. */
export type CheckStore<Outcome = unknown> = {
  /**
   * Stores a new check, unless `interaction` has opened one already (`seen`), or its holder has `most` open ones, counted together
   * with what every other process opens meanwhile (`full`).
   */
  create(check: Check, interaction: string, most?: number): Promise<'saved' | 'seen' | 'full'>
  /** The check as it stands; one that is known to stand at `expected` may come from memory, since a save compares again. */
  load(id: CheckId, expected?: number): Promise<Stored | undefined>
  /**
   * Stores `check` if the stored revision is still `expected` and `interaction` has not changed it before. With `outcome`, which is
   * null where there is none to leave, its outcome is settled in the same transaction, unless it was before. `stood`: what is stored at
   * `expected`, where that is at hand; what has not changed since is then not written again.
   */
  save(check: Check, expected: number, interaction: string, outcome?: Outcome | null, stood?: Check): Promise<Saving>
  /** The same for a check that comes to another holder: `full` where they have `most` open ones already, whatever other processes do meanwhile. */
  pass(check: Check, expected: number, interaction: string, now: number, most: number): Promise<Saving | 'full'>
  /** Finished checks whose outcome is not settled and that expire at `expiry` or before, the first to expire first. */
  finished(expiry: number, limit: number): Promise<Check[]>
  /** Settles the outcome of a finished check that still stands at its revision, once and for all; false if it does not. */
  settle(check: Check, outcome: Outcome | null): Promise<boolean>
  /** The checks a person holds that are neither closed nor expired, newest first. */
  heldBy(person: PersonId, now: number): Promise<Check[]>
  /** Open checks this person started and somebody else holds now, newest first. */
  startedBy(person: PersonId, now: number): Promise<Check[]>
  /** Open checks of a server that were handed over, or are to be, or about which a moderator was asked; oldest first. */
  handedIn(server: string, now: number): Promise<Check[]>
  /** Whether `interaction` has opened a check of this person or was the last to change one. */
  counted(person: PersonId, interaction: string): Promise<boolean>
  /** How many of the checks that a person holds or has closed were started at `since` (ms since 1970) or later. */
  startedSince(person: PersonId, since: number): Promise<number>
  /** Deletes checks past their expiry, closed ones after a day; returns how many went. */
  purge(now: number): Promise<number>
}
