// Reads a finding as it is stored, also as earlier versions wrote it: one rise or pattern each, settled or not.
import type { Week } from '../week.ts'
import { type Decision, type Finding, type Found, type Standing, untouched, type Warning } from './finding.ts'

/** What versions before findings had parts wrote. */
type Earlier = {
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

/** `body`: parsed JSON that this project has written. */
export function readFinding(body: unknown): Finding {
  const stored = body as Finding | Earlier
  return 'found' in stored ? broughtUp(stored) : stored
}

function broughtUp(earlier: Earlier): Finding {
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

function after(before: Standing, { did, why }: Earlier['decisions'][number], warning: Warning | null): Standing {
  if (did === 'put-off') return { ...before, state: 'watching', until: why }
  if (did === 'dismissed') return { ...before, state: 'dismissed', until: null }
  return { ...before, state: 'warned', until: null, warning }
}
