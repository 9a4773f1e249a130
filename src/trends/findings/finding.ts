// A finding: one story that releases tell of, with its parts, where it stands, and every decision about it with a way back.
import type { FamilyId } from '../../engine/answers.ts'
import type { ShownPattern } from '../patterns/show-patterns.ts'
import type { Rise } from '../rises/judge-week.ts'
import type { Week } from '../week.ts'

export type Found =
  | { readonly is: 'rise'; readonly rise: Rise }
  | { readonly is: 'pattern'; readonly pattern: ShownPattern }

/** `open`: it waits for a decision; `watching`: it waits until a week; the others are decided. */
export const findingStates = ['open', 'watching', 'warned', 'known-fake', 'dismissed'] as const
export type FindingState = (typeof findingStates)[number]

/** A message that everybody reads, as it is to stand; `posted` once Discord has it. `message` is null until then, and in old records. */
export type Warning = {
  readonly channel: string
  readonly text: string
  readonly posted: boolean
  readonly message: string | null
}

/** The known fake a finding has become: whose it is, and its id among that family's known fakes. */
export type KnownFakeOf = { readonly family: FamilyId; readonly fake: string }

/** All that a decision may change, and therefore all that an undo puts back. */
export type Standing = {
  readonly state: FindingState
  /** While it is watched: the week from which it waits for a decision again. */
  readonly until: Week | null
  readonly warning: Warning | null
  readonly knownFake: KnownFakeOf | null
}

export type Deed = 'warned' | 'edited' | 'dismissed' | 'put-off' | 'known-fake'

/** What a moderator did, kept so that the others can see who decided what, and why. Times in ms since 1970. */
export type Decision = {
  readonly by: string
  readonly at: number
  readonly did: Deed
  /** The reason, the warning that was posted, or the week until which it is watched. */
  readonly why: string
  /** How it stood before. */
  readonly before: Standing
  readonly undone: { readonly by: string; readonly at: number; readonly why: string } | null
}

/** Where the moderators' post of a finding stands. */
export type PostPlace = { readonly channel: string; readonly message: string }

/** A warning that is taken back with a word; `posted` once the message in the channel says so. */
export type Withdrawal = Warning & { readonly why: string }

export type Finding = Standing & {
  readonly id: string
  readonly server: string
  /** Unique on the server, so that two processes that find the same thing keep it once. */
  readonly key: string
  readonly family: FamilyId
  /** The week in which something of it was found first, and the one of the last release that found something. */
  readonly week: Week
  readonly seen: Week
  /** As the last release told of each: rises first. */
  readonly parts: readonly Found[]
  /** Grows by one with every change. */
  readonly revision: number
  /** Whether moderators have been told in their channel. */
  readonly told: boolean
  /** Null before, where the post was deleted, and in records of versions that did not keep it. */
  readonly post: PostPlace | null
  /** Whether the post no longer shows the finding as it stands. */
  readonly stale: boolean
  readonly withdrawal: Withdrawal | null
  readonly decisions: readonly Decision[]
}

/** `seen`: where the release that begins it tells of something earlier, too. */
export type NewFinding = Pick<Finding, 'key' | 'family' | 'week' | 'parts'> & { readonly seen?: Week }

export const untouched: Standing = { state: 'open', until: null, warning: null, knownFake: null }

/** A finding as it begins: nobody has been told. */
export const begin = (found: NewFinding, id: string, server: string): Finding => ({
  ...untouched,
  ...found,
  id,
  server,
  seen: found.seen ?? found.week,
  revision: 0,
  told: false,
  post: null,
  stale: false,
  withdrawal: null,
  decisions: [],
})

/** A finding without the name of a person who has had it deleted; `nobody` stands in its place. */
export function withoutPerson(finding: Finding, person: string, nobody: string): Finding {
  const named = (by: string) => (by === person ? nobody : by)
  return {
    ...finding,
    decisions: finding.decisions.map(one => ({
      ...one,
      by: named(one.by),
      undone: one.undone && { ...one.undone, by: named(one.undone.by) },
    })),
  }
}

export const isPending = ({ warning, withdrawal }: Pick<Finding, 'warning' | 'withdrawal'>): boolean =>
  warning?.posted === false || withdrawal?.posted === false

/** Whether the channel is behind: not told yet, told of an earlier state, or watched until a week that has come. */
export const isDue = (finding: Finding, week: Week): boolean => !finding.told || finding.stale || isOver(finding, week)

/** Whether it was watched until a week that has come. */
export const isOver = ({ state, until }: Standing, week: Week): boolean =>
  state === 'watching' && until !== null && until <= week
