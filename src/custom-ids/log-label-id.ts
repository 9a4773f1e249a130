// Custom ids of a label that is given to a log afterwards: the button, and the form sent in.
import { z } from 'zod'
import { idKind } from './id-kind.ts'
import { opening, ownId } from './id-parts.ts'

/** `opening` makes each form's id new, since phones keep forms by id. */
export const logLabelIds = idKind(
  'cl2',
  { is: z.literal('label'), draft: ownId },
  { is: z.literal('labelled'), draft: ownId, opening },
)
