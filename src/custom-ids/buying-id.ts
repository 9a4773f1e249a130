// Custom ids of everything about buying: which part is shown or posted, and which page, region or half of it.
import { z } from 'zod'
import { type IdOf, idKind, oneOf, silent, type ValueOf } from './id-kind.ts'
import { count, word } from './id-parts.ts'

export const buyingParts = ['buy', 'listing', 'links', 'suspect', 'report'] as const
export const regions = ['us', 'uk', 'eu', 'ca', 'au', 'other'] as const
export type Region = (typeof regions)[number]

const places = oneOf(
  { part: z.enum(['buy', 'listing']) },
  { part: z.literal('suspect'), later: silent(false) },
  /** `later`: once nothing has to be done at once. */
  { part: z.literal('suspect'), later: word('later', true) },
  /** `page` from 1. */
  { part: z.literal('links'), page: count(2) },
  { part: z.literal('report'), region: silent(undefined) },
  { part: z.literal('report'), region: z.enum(regions) },
)

export const buyingIds = idKind(
  'cb1',
  /**
   * A new private message, a private one turned into this, one for everybody. `turn` does what `view` does: no two buttons of a
   * message may have one id, and a page's neighbour can be where the row of parts leads as well.
   */
  { is: z.enum(['open', 'view', 'turn', 'post']), place: places },
  /** The menu of regions. */
  { is: z.literal('region') },
)

export type BuyingAct = IdOf<typeof buyingIds>
/** What of it is seen. */
export type BuyingPlace = ValueOf<(typeof places)['forms'][number]>
export const { write: encodeBuying, read: decodeBuying } = buyingIds

/** A part as it is first seen. */
export function placeOf(part: (typeof buyingParts)[number]): BuyingPlace {
  if (part === 'links') return { part, page: 1 }
  if (part === 'suspect') return { part, later: false }
  return part === 'report' ? { part, region: undefined } : { part }
}

export const isRegion = (text: string | undefined): text is Region =>
  (regions as readonly (string | undefined)[]).includes(text)
