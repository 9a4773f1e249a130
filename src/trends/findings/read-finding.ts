// A finding as the first versions wrote it, one rise or pattern, settled or not, brought up to what it is now.
import type { Week } from '../week.ts'
import { type Decision, type Finding, type Found, type Standing, untouched, type Warning } from './finding.ts'

/** What versions before findings had parts wrote. */
export type EarlierFinding = {
  readonly id: string
  readonly server: string
  readonly key: string
  readonly week: Week
  readonly found: Found
  readonly revision: number
  readonly state: 'new' | 'told' | 'settled'
  readonly again: Week | null
  readonly warning: Omit<Warning, 'message'> | null
  readonly decisions: readonly Pick<Decision, 'by' | 'at' | 'did' | 'why'>[]
}

/** The same finding as it is kept now. */
export function broughtUp(earlier: EarlierFinding): Finding {
  const { id, server, key, week, found, revision, state } = earlier
  const warning = earlier.warning && { ...earlier.warning, message: null }
  let standing: Standing = untouched
  const decisions: Decision[] = []
  for (const one of earlier.decisions) {
    decisions.push({ ...one, before: standing, undone: null })
    standing = after(standing, one, warning)
  }
  // A watch that had come to its end stood as told, with no week to come.
  const over = standing.state === 'watching' && earlier.again === null
  return {
    ...(over ? untouched : standing),
    id,
    server,
    key,
    family: found.is === 'rise' ? found.rise.family : found.pattern.family,
    week,
    seen: week,
    parts: [found],
    revision,
    told: state !== 'new',
    post: null,
    stale: false,
    withdrawal: null,
    decisions,
  }
}

function after(before: Standing, { did, why }: EarlierFinding['decisions'][number], warning: Warning | null): Standing {
  if (did === 'put-off') return { ...before, state: 'watching', until: why }
  if (did === 'dismissed') return { ...before, state: 'dismissed', until: null }
  return { ...before, state: 'warned', until: null, warning }
}
