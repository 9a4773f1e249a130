// What stands in the way of a change to the set-up, as a code with its context.

import type { ChangeRefusal } from './change.ts'
import type { PlaceState, Use } from './places.ts'

export type Problem =
  | ChangeRefusal
  | { readonly code: 'place'; readonly use: Use; readonly channel: string; readonly state: PlaceState }
  | { readonly code: 'role-gone' | 'tag-gone' | 'language-gone' }
  | { readonly code: 'role-of-bot'; readonly role: string }
  | { readonly code: 'no-tags'; readonly channel: string }
  | { readonly code: 'weeks-not-a-number'; readonly least: number; readonly most: number }
