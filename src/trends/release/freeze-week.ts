// Freezing a week: the patterns join the release, and the release becomes the bytes every later request returns.
import canonicalize from 'canonicalize'
import type { FamilyId } from '../../engine/answers.ts'
import type { PatternRow } from '../outcome-log.ts'
import { findInSlices, type ShownPattern } from '../patterns/show-patterns.ts'
import { atOnce, type Slices } from '../slices.ts'
import type { ClosedWeek } from './close-week.ts'
import type { Release } from './release.ts'
import type { ReleaseState } from './state.ts'

export type FrozenWeek = {
  readonly release: Release
  /** The release as canonical JSON (RFC 8785): the same release always gives the same bytes. */
  readonly bytes: string
  readonly state: ReleaseState
}

/** Completes a closed week. `failed` holds, for each family of `patternsOf`, its failed checks of `patternWeeks(week)`. */
export const freezeWeek = (closed: ClosedWeek, failed: ReadonlyMap<FamilyId, readonly PatternRow[]>): FrozenWeek =>
  atOnce(freezeInSlices(closed, failed))

export function* freezeInSlices(
  { release, state, patternsOf }: ClosedWeek,
  failed: ReadonlyMap<FamilyId, readonly PatternRow[]>,
): Slices<FrozenWeek> {
  const patterns: ShownPattern[] = []
  for (const [family, checks] of patternsOf)
    patterns.push(...(yield* findInSlices(family, checks, failed.get(family) ?? [], release.week)))
  const whole: Release = { ...release, patterns }
  return { release: whole, bytes: canonicalize(whole) ?? '', state }
}

export type ReadRelease =
  | { readonly ok: true; readonly release: Release }
  | { readonly ok: false; readonly refusal: { readonly code: 'damaged-release' } }

/** Reads frozen bytes back; refuses bytes that are not exactly as `freezeWeek` writes them. */
export function readRelease(bytes: string): ReadRelease {
  try {
    const release = JSON.parse(bytes) as Release
    if (release.format === 1 && canonicalize(release) === bytes) return { ok: true, release }
  } catch {
    // Not JSON: damaged all the same.
  }
  return { ok: false, refusal: { code: 'damaged-release' } }
}
