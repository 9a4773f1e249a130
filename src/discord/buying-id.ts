// Custom ids of everything about buying: which part is shown or posted; nothing when the id is not one of ours.
//
// An id carries no authority: who may post is asked on every click.
export const buyingParts = ['buy', 'listing', 'links', 'suspect', 'report'] as const
export const regions = ['us', 'uk', 'eu', 'ca', 'au', 'other'] as const
export type Region = (typeof regions)[number]

/** What of it is seen: a part, and of two of them which page or which region. */
export type BuyingPlace =
  | { readonly part: 'buy' | 'listing' | 'suspect' }
  /** `page` from 1. */
  | { readonly part: 'links'; readonly page: number }
  | { readonly part: 'report'; readonly region: Region | undefined }

export type BuyingAct =
  /** A new private message, a private one turned into this, one for everybody. */
  | { readonly is: 'open' | 'view' | 'post'; readonly place: BuyingPlace }
  /** The menu of regions. */
  | { readonly is: 'region' }

/** A part as it is first seen. */
export function placeOf(part: (typeof buyingParts)[number]): BuyingPlace {
  if (part === 'links') return { part, page: 1 }
  return part === 'report' ? { part, region: undefined } : { part }
}

const mark = 'cb1'

export function encodeBuying(act: BuyingAct): string {
  return [mark, act.is, ...(act.is === 'region' ? [] : placeParts(act.place))].join('.')
}

function placeParts(place: BuyingPlace): string[] {
  if (place.part === 'links') return [place.part, String(place.page)]
  return place.part === 'report' && place.region ? [place.part, place.region] : [place.part]
}

/** Decodes a custom id; undefined for anything that `encodeBuying` cannot have written. */
export function decodeBuying(id: string): BuyingAct | undefined {
  const [version, is, ...rest] = id.split('.')
  if (version !== mark) return undefined
  if (is === 'region') return rest.length === 0 ? { is } : undefined
  if (is !== 'open' && is !== 'view' && is !== 'post') return undefined
  const place = decodePlace(rest)
  return place && { is, place }
}

function decodePlace([part, detail, ...more]: readonly string[]): BuyingPlace | undefined {
  if (more.length > 0) return undefined
  if (part === 'buy' || part === 'listing' || part === 'suspect') return detail === undefined ? { part } : undefined
  if (part === 'links') return /^[1-9]\d?$/.test(detail ?? '') ? { part, page: Number(detail) } : undefined
  if (part !== 'report') return undefined
  if (detail === undefined) return { part, region: undefined }
  return isRegion(detail) ? { part, region: detail } : undefined
}

export const isRegion = (text: string | undefined): text is Region =>
  (regions as readonly (string | undefined)[]).includes(text)
