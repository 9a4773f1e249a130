// Something a release has found that moderators are told of once, and what they did about it.
import type { ShownPattern } from './patterns/show-patterns.ts'
import type { Release } from './release/release.ts'
import type { Rise } from './rises/judge-week.ts'
import type { Week } from './week.ts'

export type Found =
  | { readonly is: 'rise'; readonly rise: Rise }
  | { readonly is: 'pattern'; readonly pattern: ShownPattern }

/** What a moderator did, kept so that the others can see who decided what, and why. Times in ms since 1970. */
export type Decision = {
  readonly by: string
  readonly at: number
  readonly did: 'warned' | 'dismissed' | 'put-off'
  /** The reason, or the warning that was posted. */
  readonly why: string
}

/** A warning that has been decided on; `posted` once Discord has it. */
export type Warning = { readonly channel: string; readonly text: string; readonly posted: boolean }

export type Finding = {
  readonly id: string
  readonly server: string
  /** The same for the same finding in every later week, so that it is told of once. */
  readonly key: string
  /** The release that found it. */
  readonly week: Week
  readonly found: Found
  /** Grows by one with every change. */
  readonly revision: number
  /** `new`: nobody has been told; `told`: it waits for a decision; `settled`: warned of or dismissed. */
  readonly state: 'new' | 'told' | 'settled'
  /** Told again from this week on; null: not. */
  readonly again: Week | null
  readonly warning: Warning | null
  readonly decisions: readonly Decision[]
}

export type NewFinding = Pick<Finding, 'key' | 'week' | 'found'>

/** What a release found for the first time: the rises of its own week, and its patterns. */
export function findingsOf(release: Release): NewFinding[] {
  const { week } = release
  const rises = release.rises
    .filter(rise => rise.week === week)
    .map(rise => ({
      key: `rise ${rise.family} ${rise.rule ?? ''} ${week}`,
      week,
      found: { is: 'rise', rise } as const,
    }))
  const patterns = release.patterns.map(pattern => ({
    key: `pattern ${pattern.family} ${pattern.items.join(' ')}`,
    week,
    found: { is: 'pattern', pattern } as const,
  }))
  return [...rises, ...patterns]
}

export type Deciding =
  | { readonly is: 'told' }
  | { readonly is: 'warn'; readonly by: string; readonly channel: string; readonly text: string }
  | { readonly is: 'warning-posted' }
  /** The warning could not be posted: the finding waits for a decision again. */
  | { readonly is: 'warning-failed' }
  | { readonly is: 'dismiss'; readonly by: string; readonly why: string }
  | { readonly is: 'put-off'; readonly by: string; readonly until: Week }

/** The finding after a decision at `now`; undefined if it does not go in its state (somebody else was first). */
export function decide(finding: Finding, event: Deciding, now: number): Finding | undefined {
  const moved = (change: Partial<Finding>): Finding => ({ ...finding, ...change, revision: finding.revision + 1 })
  const decided = (by: string, did: Decision['did'], why: string) => [...finding.decisions, { by, at: now, did, why }]
  const open = finding.state === 'told'
  switch (event.is) {
    case 'told':
      return finding.state === 'settled' ? undefined : moved({ state: 'told', again: null })
    case 'warn': {
      const { by, channel, text } = event
      if (!open) return undefined
      return moved({
        state: 'settled',
        warning: { channel, text, posted: false },
        decisions: decided(by, 'warned', text),
      })
    }
    case 'warning-posted':
      return finding.warning?.posted === false ? moved({ warning: { ...finding.warning, posted: true } }) : undefined
    case 'warning-failed':
      return finding.warning?.posted === false
        ? moved({ state: 'told', warning: null, decisions: finding.decisions.slice(0, -1) })
        : undefined
    case 'dismiss':
      return open ? moved({ state: 'settled', decisions: decided(event.by, 'dismissed', event.why) }) : undefined
    case 'put-off':
      return open ? moved({ again: event.until, decisions: decided(event.by, 'put-off', event.until) }) : undefined
  }
}
