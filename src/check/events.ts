// What can happen to a check.
import type { Answer, FamilyId, QuestionId } from '../engine/answers.ts'
import type { CheckId, Consent, Mode, PersonId } from './check.ts'

export type Start = {
  readonly id: CheckId
  readonly holder: PersonId
  readonly server: string | null
  readonly mode: Mode
  readonly cells: number
  readonly family: FamilyId | null
}

export type CheckEvent =
  | { readonly is: 'answer'; readonly question: QuestionId; readonly answer: Answer }
  | { readonly is: 'consent'; readonly to: Consent; readonly given: boolean }
  | { readonly is: 'back' }
  | { readonly is: 'pause' }
  | { readonly is: 'resume' }
  /** Stop asking and say what the answers so far amount to. */
  | { readonly is: 'finish' }
  /** After a quick check: go on with everything that can still change the verdict. */
  | { readonly is: 'go-on' }
  | { readonly is: 'close' }
