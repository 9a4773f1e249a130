// A check without an answer, paused unless told otherwise, for tests of what stores do with any check.
import type { Check } from '../../src/check/check.ts'

export const pausedCheck = (id: string, more: Partial<Check> = {}): Check => ({
  id,
  revision: 0,
  server: null,
  holder: 'ada',
  mode: 'quick',
  cells: 1,
  family: null,
  packs: [],
  day: '2026-11-25',
  answers: {},
  trail: [],
  consents: {},
  phase: { is: 'paused' },
  startedAt: 0,
  expiresAt: 1e15,
  ...more,
})
