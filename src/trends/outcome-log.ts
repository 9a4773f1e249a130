// What the trends room needs of a store: outcomes written once, counted by week, and releases kept as they were frozen.
import type { FamilyId } from '../engine/answers.ts'
import type { WeekCount } from './counts.ts'
import type { Epoch } from './epoch.ts'
import type { Reporter } from './make-outcome.ts'
import type { Item, Outcome } from './outcome.ts'
import type { PoolContribution } from './release/pool.ts'
import type { ReleaseState } from './release/state.ts'
import type { Week } from './week.ts'

/** Whose outcomes: one server's, or those of every server that pools. */
export type Scope = { readonly kind: 'server'; readonly server: string } | { readonly kind: 'pool' }

/** A check that failed something, as the search for patterns sees it. */
export type PatternRow = { readonly week: Week; readonly items: readonly Item[] }

export type OutcomeLog = {
  /**
   * Lets those outcomes be counted that checks have left in weeks up to this one, those of a server once at least five people have left
   * one in the same epoch: then all of them are of the week in which the fifth came, so that nobody who knows who has checked can tell
   * which is whose. Says how many there were. Until then they are known to their own people only. Where a person has left several for a
   * family, any one of them counts. With it each changes its person's pseudonym for a code that no outcome of another family bears.
   */
  admit(upTo: Week): Promise<number>
  /**
   * Keeps an outcome among those that are counted, as it is. Unique by (server, epoch of the week, family, reporter), null
   * being a family of its own: a second contribution is 'already-contributed' and changes nothing, also when two processes race.
   * If another outcome holds (epoch, family, pooled) already, the row is kept with `pooled` null.
   */
  record(outcome: Outcome): Promise<'recorded' | 'already-contributed'>
  /** The week of the oldest outcome in scope; null if there is none. */
  firstWeek(scope: Scope): Promise<Week | null>
  /**
   * Counts of all weeks from `from` to `to`, both included, any order, no zero rows: by (week, family), by (week, family, verdict), by
   * (week, family, rule) and by (week, family, bought). Because of `record`'s uniqueness a plain count of
   * rows is a count of reporters. In the pool only rows with `pooled` count.
   */
  weekCounts(scope: Scope, from: Week, to: Week): Promise<readonly WeekCount[]>
  /** Of how many people of which servers the pool counts a family, in the weeks from `from` to `to`, both included, in any order. */
  poolContributions(from: Week, to: Week): Promise<readonly PoolContribution[]>
  /** A family's checks in which a rule fired, from `from` to `to`, both included, in any order. */
  failedChecks(scope: Scope, family: FamilyId, from: Week, to: Week): Promise<readonly PatternRow[]>
  /**
   * Outcomes judged by other versions of a pack than this one, for judging them again; at most `limit`, in the store's own order, those
   * after the outcome `after` (its id) only.
   */
  judgedOtherwise(pack: string, version: string, limit: number, after?: string): Promise<readonly StoredOutcome[]>
  /** Replaces verdict, fired rules and packs of one outcome; nothing else of it can change. */
  rejudge(id: string, outcome: Outcome): Promise<void>
  /** Under which codes outcomes of these pseudonyms of an epoch would be counted: one for each family that is counted on their server. */
  codesOf(epoch: Epoch, whose: readonly Reporter[]): Promise<readonly string[]>
  /** A person's outcomes by pseudonym or code, in any order, those included that are not counted yet. */
  of(codes: readonly string[]): Promise<readonly Outcome[]>
  /** Deletes a person's outcomes by pseudonym or code; says how many. Frozen releases and what their state counted stay as they are. */
  forget(codes: readonly string[]): Promise<number>
  /** Deletes what still waits of earlier epochs, for which there were too few; says how many. */
  dropWaiting(epoch: Epoch): Promise<number>
  /** Deletes what waits sealed under the key of a week before this one, since those keys are gone; says how many. */
  dropSealedBefore(week: Week): Promise<number>
  /** Deletes outcomes of weeks before this one, of one server or of all; says how many. */
  purgeBefore(week: Week, server?: string): Promise<number>
}

/** An outcome with the store's own handle for it, which says nothing about the check. */
export type StoredOutcome = { readonly id: string; readonly outcome: Outcome }

export type ReleaseLog = {
  /** The last closed week and the private state to go on from, null if that is damaged; null before the first. */
  latest(scope: Scope): Promise<{ readonly week: Week; readonly state: ReleaseState | null } | null>
  /**
   * Keeps a release and the state behind it together, only if none is kept for this scope and week, and only if the scope's
   * last closed week is still the one before it (or there is none): otherwise 'already-frozen' and nothing changes.
   */
  freeze(scope: Scope, week: Week, bytes: string, state: ReleaseState): Promise<'frozen' | 'already-frozen'>
  /** The release of a week exactly as it was frozen; null if there is none. */
  bytes(scope: Scope, week: Week): Promise<string | null>
  /** Releases of servers whose findings nobody has taken down yet, those of each server from the oldest on. */
  unread(): Promise<readonly { readonly server: string; readonly week: Week }[]>
  /** A server's release of this week, and those before it, are unread no more. */
  markRead(server: string, week: Week): Promise<void>
  /** Weeks with a release, oldest first. */
  weeks(scope: Scope): Promise<readonly Week[]>
}
