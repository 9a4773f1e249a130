// Custom ids of everything about buying: which part is shown or posted; nothing when the id is not one of ours.
//
// An id carries no authority: who may post is asked on every click.
export const buyingParts = ['buy', 'listing', 'links', 'suspect', 'report'] as const
export const regions = ['us', 'uk', 'eu', 'ca', 'au', 'other'] as const
export type Region = (typeof regions)[number]

/** What of it is seen: a part, and of some of them which page, which region, or what comes later. */
export type BuyingPlace =
  | { readonly part: 'buy' | 'listing' }
  /** `later`: once nothing has to be done at once. */
  | { readonly part: 'suspect'; readonly later: boolean }
  /** `page` from 1. */
  | { readonly part: 'links'; readonly page: number }
  | { readonly part: 'report'; readonly region: Region | undefined }

export type BuyingAct =
  /**
   * A new private message, a private one turned into this, one for everybody. `turn` does what `view` does: no two buttons of a
   * message may have one id, and a page's neighbour can be where the row of parts leads as well.
   */
  | { readonly is: 'open' | 'view' | 'turn' | 'post'; readonly place: BuyingPlace }
  /** The menu of regions. */
  | { readonly is: 'region' }

/** A part as it is first seen. */
export function placeOf(part: (typeof buyingParts)[number]): BuyingPlace {
  if (part === 'links') return { part, page: 1 }
  if (part === 'suspect') return { part, later: false }
  return part === 'report' ? { part, region: undefined } : { part }
}

const mark = 'cb1'

export function encodeBuying(act: BuyingAct): string {
  return [mark, act.is, ...(act.is === 'region' ? [] : placeParts(act.place))].join('.')
}

function placeParts(place: BuyingPlace): string[] {
  if (place.part === 'links') return [place.part, String(place.page)]
  if (place.part === 'suspect' && place.later) return [place.part, 'later']
  return place.part === 'report' && place.region ? [place.part, place.region] : [place.part]
}

/** Decodes a custom id; undefined for anything that `encodeBuying` cannot have written. */
export function decodeBuying(id: string): BuyingAct | undefined {
  const [version, is, ...rest] = id.split('.')
  if (version !== mark) return undefined
  if (is === 'region') return rest.length === 0 ? { is } : undefined
  if (is !== 'open' && is !== 'view' && is !== 'turn' && is !== 'post') return undefined
  const place = decodePlace(rest)
  return place && { is, place }
}

function decodePlace([part, detail, ...more]: readonly string[]): BuyingPlace | undefined {
  if (more.length > 0) return undefined
  if (part === 'buy' || part === 'listing') return detail === undefined ? { part } : undefined
  if (part === 'suspect')
    return detail === undefined || detail === 'later' ? { part, later: detail === 'later' } : undefined
  if (part === 'links') return /^[1-9]\d?$/.test(detail ?? '') ? { part, page: Number(detail) } : undefined
  if (part !== 'report') return undefined
  if (detail === undefined) return { part, region: undefined }
  return isRegion(detail) ? { part, region: detail } : undefined
}

export const isRegion = (text: string | undefined): text is Region =>
  (regions as readonly (string | undefined)[]).includes(text)
