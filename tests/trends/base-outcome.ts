// One plain outcome that tests vary.
import type { Outcome } from '../../src/trends/outcome.ts'

export const base: Outcome = {
  server: 'here',
  reporter: '1'.padStart(64, '0'),
  pooled: null,
  week: '2026-W10',
  family: 'harrow-30',
  verdict: 'ruled-out',
  fired: ['four-legs', 'too-light'],
  options: { legs: 'four' },
  bought: 'market',
  packs: [{ id: 'any-cell', version: '1.0.0', digest: 'a'.repeat(64) }],
}
