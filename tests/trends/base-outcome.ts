// One plain outcome that tests vary.
import type { Outcome } from '../../src/trends/outcome.ts'

export const base: Outcome = {
  server: 'here',
  reporter: '1'.padStart(64, '0'),
  pooled: null,
  week: '2026-W10',
  family: 'harrow-30',
  format: '18650',
  verdict: 'ruled-out',
  fired: ['four-legs', 'too-light'],
  options: { legs: 'four' },
  readings: [{ question: 'weight', quantity: 'mass', from: 41, to: 42 }],
  claims: [{ question: 'capacity', quantity: 'claimed-capacity', from: 3000, to: 3500 }],
  cantTell: ['bottom-code'],
  bought: 'market',
  cells: '2-4',
  packs: [{ id: 'any-cell', version: '1.0.0', digest: 'a'.repeat(64) }],
}
