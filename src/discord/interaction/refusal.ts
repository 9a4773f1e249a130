// Refusals of the Discord room: the member's doing, as a code with its context, said in one sentence.
import type { CheckRefusal } from '../../check/refusals.ts'
import type { ChangeRefusal } from '../../server/change-links.ts'
import type { TooMuch } from '../../services/fair-use/open-fair-use.ts'
import { plain } from '../../words/plain.ts'
import type { Say, Values } from '../../words/say.ts'

export type Refusal =
  | CheckRefusal
  | ChangeRefusal
  | { readonly code: 'form-forgotten' | 'nothing-to-write' }
  | TooMuch
  | { readonly code: 'not-yours' | 'gone' | 'no-such-check' | 'unknown-click' | 'unknown-command' | 'log-forgotten' }
  | {
      readonly code:
        | 'not-moderator'
        | 'not-manager'
        | 'no-release'
        | 'not-pooling'
        | 'nothing-counted'
        | 'damaged-release'
        | 'no-finding'
        | 'may-not-post'
        | 'may-not-post-here'
        | 'no-entry'
    }
  | {
      readonly code: 'to-a-bot' | 'not-here' | 'to-everyone' | 'two-takers' | 'not-party' | 'changed-meanwhile'
    }
  | { readonly code: 'bot-not-here'; readonly link: string }
  | { readonly code: 'too-many-open'; readonly count: number }
  | { readonly code: 'too-many-today'; readonly most: number }
  | { readonly code: 'small-pool'; readonly least: number }
  | { readonly code: 'long-warning'; readonly length: number; readonly most: number }
  | { readonly code: 'unknown-family'; readonly name: string }

/** Somebody else was faster, whatever it was about: nothing of this person's was done. */
export const changedMeanwhile: Refusal = { code: 'changed-meanwhile' }

export function sayRefusal(say: Say, refusal: Refusal): string {
  const { code, ...context } = refusal
  const values = Object.entries(context).map(([key, value]) => [
    key,
    typeof value === 'string' && key !== 'unit' && key !== 'link' ? plain(value) : value,
  ])
  return say(`refusal.${code}`, Object.fromEntries(values) as Values)
}
