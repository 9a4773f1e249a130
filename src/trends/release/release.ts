// A release: what everyone may know of a closed week.
import type { FamilyId, RuleId } from '../../engine/answers.ts'
import type { Verdict } from '../../ground/verdicts.ts'
import type { ShownPattern } from '../patterns/show-patterns.ts'
import type { Rise } from '../rises/judge-week.ts'
import type { Interval } from '../stats/wilson.ts'
import type { Week } from '../week.ts'

/** Of the shown checks `of`, with the Wilson interval at 95 %. */
export type Share = { readonly of: number; readonly share: number } & Interval

/**
 * A count rounded down to fives, from the first outcome on, and how much of it is new in this release. A cell under five is not
 * listed: withheld and none look the same.
 */
export type Shown = { readonly checks: number; readonly more: number; readonly share?: Share }

export type ShownVerdict = { readonly verdict: Verdict } & Shown
export type ShownRule = { readonly rule: RuleId } & Shown
export type ShownBought = { readonly bought: string } & Shown

export type ShownFamily = {
  /** `unknownFamily` where the family is not known. */
  readonly family: FamilyId
  readonly verdicts: readonly ShownVerdict[]
  readonly rules: readonly ShownRule[]
  readonly bought: readonly ShownBought[]
} & Shown

export type Release = {
  readonly format: 1
  readonly scope: 'server' | 'pool'
  readonly week: Week
  /** Sums of what the families show, nothing more. */
  readonly checks: number
  readonly more: number
  readonly verdicts: readonly ShownVerdict[]
  readonly rules: readonly ShownRule[]
  readonly bought: readonly ShownBought[]
  readonly families: readonly ShownFamily[]
  /** False until there is enough history to say whether anything rises. */
  readonly judged: boolean
  /** Rises noticed in the last eight weeks, each series once, the latest first; new are those of this week. */
  readonly rises: readonly Rise[]
  /** This week's own. */
  readonly spikes: readonly Rise[]
  readonly patterns: readonly ShownPattern[]
}
