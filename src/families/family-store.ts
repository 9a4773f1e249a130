// What the families' room needs of a store: families changed by compare-and-set, versions only ever added, and what belongs to them.
import type { Outcome } from '../trends/outcome.ts'
import type { ServerFamily, Version } from './family.ts'
import type { Reference } from './strength/references.ts'

/** A family as lists and completion show it, without its facts. */
export type FamilyHead = Pick<ServerFamily, 'id' | 'state' | 'head' | 'revision'> & {
  readonly name: string
  readonly maker: string
  readonly alsoCalled: readonly string[]
  readonly format: string
  readonly successor: string | null
  /** The digest of the version in force; null before the first. */
  readonly digest: string | null
}

export type Saving = 'saved' | 'stale' | 'name-taken'
export type Creating = 'saved' | 'name-taken' | 'too-many-families' | 'too-many-drafts'

export type FamilyPhoto = {
  readonly id: string
  readonly server: string
  readonly family: string
  readonly feature: string
  readonly option: string
  readonly genuine: boolean
  /** What it shows, in a moderator's words, for those who do not see it. */
  readonly alt: string
  readonly by: string
  readonly at: number
  readonly bytes: Uint8Array
}
export type PhotoHead = Omit<FamilyPhoto, 'bytes'> & { readonly size: number }

/** What the back-test needs of an outcome; what was measured is not in it, and counts as it was judged then. */
export type Tested = Pick<Outcome, 'reporter' | 'options' | 'verdict' | 'fired'>

export type FamilyStore = {
  /** A server's families, those in force first, then by name. */
  heads(server: string): Promise<readonly FamilyHead[]>
  load(server: string, id: string): Promise<ServerFamily | undefined>
  /** Those that wait for a second moderator, the longest first. */
  waiting(server: string): Promise<readonly ServerFamily[]>
  /** The first revision; done once an interaction, however often it is delivered. */
  create(family: ServerFamily, nameKey: string): Promise<Creating>
  /** One statement over the revision before; the name stays free for others while it is not this one's. */
  save(family: ServerFamily, nameKey: string): Promise<Saving>
  /**
   * Adds a version and makes it the family's head in one statement, over revision and head as they were seen: all of it or nothing.
   * `family` is how it stands afterwards.
   */
  putInForce(family: ServerFamily, nameKey: string, version: Version): Promise<Saving>
  /** Newest first. */
  versions(server: string, id: string): Promise<readonly Version[]>
  version(server: string, id: string, number: number): Promise<Version | undefined>
  /** The version that a check began on. */
  byDigest(server: string, id: string, digest: string): Promise<Version | undefined>
  /** Every version in force of a server: what a cell is held against. */
  inForce(server: string): Promise<readonly Version[]>
  references(server: string, id: string): Promise<readonly Reference[]>
  /** Adds or replaces one by its id, up to `most` of a family. */
  keepReference(server: string, family: string, reference: Reference, most: number): Promise<'kept' | 'too-many'>
  photos(server: string, family: string): Promise<readonly PhotoHead[]>
  photo(server: string, id: string): Promise<FamilyPhoto | undefined>
  /** Up to `most` of a server, and of a family that is still there; once, however often it is delivered. */
  keepPhoto(photo: FamilyPhoto, most: number): Promise<'kept' | 'too-many' | 'gone'>
  removePhoto(server: string, id: string): Promise<void>
  /** Counts one trial of a server in a week; false where `most` were made already. */
  countTrial(server: string, week: string, most: number): Promise<boolean>
  /** Outcomes of a family (null: none known) in weeks from `from` to `to`, for the back-test; at most `most`, in no order of time. */
  outcomes(server: string, family: string | null, from: string, to: string, most: number): Promise<readonly Tested[]>
  /** Deletes a family that never came into force, with all that belongs to it. */
  discard(server: string, id: string, revision: number): Promise<Saving>
  /** Deletes everything of a server's families. */
  forget(server: string): Promise<void>
}
