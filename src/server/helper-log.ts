// How often each person has handled somebody's question, by week: for moderators, for eight weeks, unless that person says no.
import type { ServerId } from './settings.ts'

/** The weeks (ISO, such as 2026-W48) over which helpers are counted. */
export const helpersOver = 8

/** Fewer than this are not shown, and more in steps of it: a figure that moved by one would tell of one person's one evening. */
export const helperStep = 5

export type HelpCounted = { readonly person: string; readonly count: number }

export type HelperLog = {
  /** Counts one question that this person has handled; nothing for somebody who wants none counted. */
  count(server: ServerId, person: string, week: string): Promise<void>
  /** Each person's sum over the weeks from `from` to `to`, both included. */
  sums(server: ServerId, from: string, to: string): Promise<HelpCounted[]>
  /** Whether this person wants none of their help counted, anywhere. */
  saidNo(person: string): Promise<boolean>
  /** What was counted of them goes with it. */
  sayNo(person: string): Promise<void>
  sayYes(person: string): Promise<void>
  /** Forgets the weeks before `week`; says how many rows went. */
  purgeBefore(week: string): Promise<number>
}

/** What moderators see of it: who helped at least so often, in steps, the most first; nothing of the others, nor any sum. */
export const shownHelp = (sums: readonly HelpCounted[]): HelpCounted[] =>
  sums
    .map(({ person, count }) => ({ person, count: Math.floor(count / helperStep) * helperStep }))
    .filter(one => one.count > 0)
    .sort((a, b) => b.count - a.count || (a.person < b.person ? -1 : 1))
