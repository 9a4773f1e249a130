// What a person may not do with a check right now, as codes with the context a sentence needs.
import type { QuestionId } from '../engine/answers.ts'
import type { Phase } from './check.ts'

export type CheckRefusal =
  | { readonly code: 'not-now'; readonly event: string; readonly phase: Phase['is'] }
  | { readonly code: 'expired' }
  | { readonly code: 'closed' }
  /** Only its holder can do that. */
  | { readonly code: 'not-yours' }
  | { readonly code: 'not-moderator' }
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
  /** Only what was answered can be changed. */
  | { readonly code: 'nothing-to-change'; readonly question: QuestionId }
  | { readonly code: 'too-many-cells'; readonly cells: number; readonly most: number }
  /** A check outside a server cannot be handed over. */
  | { readonly code: 'outside-server' }
  /** It waits for somebody to take it: its holder takes it back first. */
  | { readonly code: 'offered' }
  | { readonly code: 'to-oneself' }
  /** It is not offered, or somebody was faster. */
  | { readonly code: 'nothing-to-take' }
  | { readonly code: 'offer-lapsed' }
  | { readonly code: 'not-for-you' }
  | { readonly code: 'nothing-to-give-back' }
  | { readonly code: 'nothing-to-ask' }
  | { readonly code: 'asked-already' }
  | { readonly code: 'not-asked' }
  /** Somebody else looks at the question already; or whoever lets it go does not. */
  | { readonly code: 'claimed-already' }
  | { readonly code: 'not-claimed' }
  /** Only whoever is beside the cell can say that it shows no danger of this kind. */
  | { readonly code: 'only-beside-it' }
  | { readonly code: 'handed-too-often'; readonly most: number }
  /** Whether it can be closed was asked already; or was not. */
  | { readonly code: 'closing-asked' }
  | { readonly code: 'closing-not-asked' }
  /** Somebody has touched it within so many hours. */
  | { readonly code: 'moves-still'; readonly hours: number }
  /** Nothing is looked at again that is not finished, and nothing that nobody answered for its holder. */
  | { readonly code: 'not-finished' }
  | { readonly code: 'not-helped' }
  /** Nobody takes danger back from afar. */
  | { readonly code: 'danger-stands' }
  /** The holder wants a second helper, and this one has answered. */
  | { readonly code: 'second-helper' }
