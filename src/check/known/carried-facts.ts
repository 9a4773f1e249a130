// What can be known of a cell before its check begins: from a claim, a log, a batch, or a check that was just closed.
import type { Answer } from '../../engine/answers.ts'

/** The questions that such facts answer, each with the kind of its answer. */
export const carried = {
  format: 'option',
  'other-format': 'option',
  'claimed-capacity': 'reading',
  'claimed-current': 'reading',
  'current-word': 'option',
  chemistry: 'option',
  'measured-capacity': 'option',
  'test-current': 'option',
  'load-test': 'option',
  'how-many': 'option',
  'batch-masses': 'option',
} as const satisfies Record<string, Answer['kind']>

export type CarriedQuestion = keyof typeof carried
export type CarriedFacts = Partial<Record<CarriedQuestion, Answer>>
