// What is kept under the id of a person or of a server: found, and deleted, over every table at once.
//
// That it was deleted is remembered for 90 days as a keyed digest (`stores/erasures.ts`), so that a back-up brings nothing back.

/** Everything that stands under a person's id, as it is stored. What is kept under a pseudonym is the outcome log's to find. */
export type KeptOfPerson = {
  /** Open, finished and closed checks, until they expire. */
  readonly checks: readonly unknown[]
  /** What they have to do with checks that somebody else holds: started, had, were offered or helped with. */
  readonly others: readonly unknown[]
  /** What waits for a later click of theirs. */
  readonly drafts: readonly unknown[]
  /** What they have decided as a moderator about what was found. */
  readonly decisions: readonly unknown[]
  /** How many questions they handled for others, by server and week. */
  readonly helped: readonly unknown[]
  /** What they have changed about servers' settings and links. */
  readonly settings: readonly unknown[]
  /** What they have to do with the families of servers: versions, drafts, reference cells, photographs. */
  readonly families: readonly unknown[]
}

/** How many records were deleted, or in the case of decisions, changes and families, have lost their name. */
export type Forgotten = {
  readonly checks: number
  readonly drafts: number
  readonly decisions: number
  readonly settings: number
  readonly families: number
}

/** Stands where the name of a person stood who has had it deleted. */
export const nobody = ''

export type Traces = {
  of(person: string): Promise<KeptOfPerson>
  /**
   * Deletes a person's checks, drafts and what was counted of their help (one that somebody else started goes back to them without a single answer), takes them out of others' checks, and puts nobody's name beside what they have decided. A check that is deleted
   * leaves no outcome. Done twice, the second time finds nothing.
   */
  forgetPerson(person: string): Promise<Forgotten>
  /**
   * Deletes what is kept of a server: checks started in it, findings, outcomes, its own releases, and its settings last, so that one
   * that was cut off in between is still known. What the releases of the pool show stays as it was published.
   */
  forgetServer(server: string): Promise<void>
}
