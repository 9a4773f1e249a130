// Releases as short as tests of stories need them, and what a server has after it looked at them.
import { begin, type Finding } from '../../../src/trends/findings/finding.ts'
import { partKey, tellStories } from '../../../src/trends/findings/stories.ts'
import type { Item } from '../../../src/trends/outcome.ts'
import type { ShownPattern } from '../../../src/trends/patterns/show-patterns.ts'
import type { Release } from '../../../src/trends/release/release.ts'
import type { Rise } from '../../../src/trends/rises/judge-week.ts'
import type { Week } from '../../../src/trends/week.ts'

export const first = '2026-W40'
export const rise = (rule: string | null, week: Week = first, family = 'rook'): Rise => ({
  family,
  rule,
  week,
  standsOut: true,
})
export const pattern = (items: readonly Item[], family = 'rook', recent = 10): ShownPattern => ({
  family,
  items,
  recent,
  recentOf: 40,
  earlier: 0,
  earlierOf: 100,
  growth: 3,
})
export const release = (week: Week, rises: readonly Rise[], patterns: readonly ShownPattern[] = []): Release =>
  ({ format: 1, scope: 'server', week, rises, patterns, families: [] }) as unknown as Release

/** What a server has after these releases, one look each. */
export function allAfter(...releases: readonly Release[]): Finding[] {
  const findings = new Map<string, Finding>()
  for (const one of releases) look(one, findings)
  return [...findings.values()]
}
export function look(one: Release, findings: Map<string, Finding>): void {
  const told = tellStories(one, [...findings.values()])
  for (const grown of told.grown) findings.set(grown.id, grown)
  for (const [i, begun] of told.begun.entries()) {
    const id = `f${findings.size}-${i}`
    findings.set(id, begin(begun, id, 's'))
  }
}
export const keysOf = ({ parts }: Finding) => parts.map(partKey)
