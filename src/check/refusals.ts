// What a person may not do with a check right now, as codes with the context a sentence needs.
import type { QuestionId } from '../engine/answers.ts'
import type { Phase } from './check.ts'

export type CheckRefusal =
  | { readonly code: 'not-now'; readonly event: string; readonly phase: Phase['is'] }
  | { readonly code: 'expired' }
  | { readonly code: 'closed' }
  | { readonly code: 'another-question'; readonly question: QuestionId }
  | { readonly code: 'unknown-option'; readonly question: QuestionId; readonly option: string }
  | {
      readonly code: 'reading-out-of-range'
      readonly question: QuestionId
      readonly value: number
      readonly least: number
      readonly most: number
      readonly unit: string
    }
  | { readonly code: 'not-a-number'; readonly question: QuestionId }
  | { readonly code: 'nothing-to-go-back-to' }
  | { readonly code: 'another-consent' }
  | { readonly code: 'too-many-cells'; readonly cells: number; readonly most: number }
