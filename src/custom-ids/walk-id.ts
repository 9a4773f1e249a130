// Custom ids of a good cell that is looked at: what was seen so far is kept as a draft, and a finished check leads there, too.
import { z } from 'zod'
import { type IdOf, idKind, oneOf } from './id-kind.ts'
import { opening, ownId } from './id-parts.ts'

const option = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)

/** Each step is a draft of its own, so that an old button goes on from what its message shows. */
export const walkIds = idKind('cwr1', {
  draft: ownId,
  act: oneOf({ is: z.literal('say'), option }, { is: z.enum(['choose', 'unsure', 'back', 'lift', 'leave', 'send']) }),
})

/** A finished check that is offered as a good cell: `ask` opens the form, `sent` is the form. */
export const offerIds = idKind(
  'cwo1',
  { is: z.literal('ask'), check: ownId },
  { is: z.literal('sent'), check: ownId, opening },
)

export type WalkAct = IdOf<typeof walkIds>['act']
export type OfferAct = IdOf<typeof offerIds>
export const encodeWalk = walkIds.write
export const encodeOffer = offerIds.write
