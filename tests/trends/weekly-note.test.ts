// The weekly note says what the release shows as a whole and how many findings wait, and nothing besides.
import { expect, test } from 'vitest'
import { findingStates } from '../../src/trends/findings/finding.ts'
import type { Release } from '../../src/trends/release/release.ts'
import { noteOf } from '../../src/trends/weekly-note.ts'
import { many, weekly } from './weekly.ts'

const release: Release = { ...weekly(many(1))[0]!.release!, scope: 'pool', checks: 0, more: 0 }

test('of the release it has the week, whose it is, and the counts of all cells together', () => {
  expect(noteOf(release, []).counts).toEqual({
    week: '2026-W01',
    scope: 'pool',
    checks: 0,
    more: 0,
    verdicts: release.verdicts,
  })
})

test('without a release it has no counts, and still says what waits', () => {
  expect(noteOf(undefined, [{ state: 'open' }])).toEqual({ counts: undefined, open: 1, watching: 0 })
})

test('of findings it counts those that are open and those that are watched; what is decided is in neither number', () => {
  const findings = findingStates.flatMap((state, i) => Array.from({ length: i + 1 }, () => ({ state })))
  expect(noteOf(undefined, findings)).toMatchObject({ open: 1, watching: 2 })
})
