// What can happen to a check.
import type { Answer, Answers, FamilyId, QuestionId } from '../engine/answers.ts'
import type { Tool } from '../ground/tools.ts'
import type { Consent, Mode } from './check.ts'
import type { CheckId, PersonId } from './ids.ts'

export type Start = {
  readonly id: CheckId
  readonly holder: PersonId
  readonly server: string | null
  /** How thorough it is to be; where it is left out, the check begins by asking. */
  readonly mode?: Mode
  readonly cells: number
  readonly family: FamilyId | null
  /** The tools its person has said are there. */
  readonly tools?: readonly Tool[]
  /** What is known before the first question, such as a listing's claims. */
  readonly known?: Answers
}

export type CheckEvent =
  /** The first question, please: quick or full. */
  | { readonly is: 'begin'; readonly mode: Mode }
  /** The tools that are there; before the first question. */
  | { readonly is: 'equip'; readonly tools: readonly Tool[] }
  /** Asks an answered question again; the answer stays until another is given. */
  | { readonly is: 'change'; readonly question: QuestionId }
  | {
      readonly is: 'answer'
      readonly question: QuestionId
      readonly answer: Answer
      /** The moderator who answers in the holder's place. */
      readonly by?: PersonId
      /** At a second look: what was chosen that accuses together with it is still so as well. */
      readonly together?: true
    }
  | { readonly is: 'consent'; readonly to: Consent; readonly given: boolean }
  /** Facts from elsewhere, such as a log that was read; what has an answer keeps it. */
  | { readonly is: 'know'; readonly answers: Answers }
  | { readonly is: 'back' }
  | { readonly is: 'pause' }
  | { readonly is: 'resume' }
  /** Stop asking and say what the answers so far amount to. */
  | { readonly is: 'finish' }
  /** After a quick check: go on with everything that can still change the verdict. */
  | { readonly is: 'go-on' }
  /** After a verdict: this check leaves no outcome. */
  | { readonly is: 'leave-nothing' }
  | { readonly is: 'close' }
