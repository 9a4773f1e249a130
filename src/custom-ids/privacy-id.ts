// Custom ids of what a person does about what is kept of them.
import { z } from 'zod'
import { type IdOf, idKind } from './id-kind.ts'

/** `delete` asks once more; `deleted` does it. `helping` is the page for helpers and moderators. `help-in` and `help-out`: whether one's help is counted. Whose data it is about is the person who presses, whatever the id says. */
export const privacyIds = idKind('cp1', {
  is: z.enum(['see', 'show', 'delete', 'deleted', 'helping', 'help-in', 'help-out']),
})

export type PrivacyAct = IdOf<typeof privacyIds>
export const { write: encodePrivacy, read: decodePrivacy } = privacyIds
