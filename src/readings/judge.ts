// Whether a measured value is below, meets or leaves open a limit, with its uncertainty (JCGM 106:2012 guard bands).

export type LowerZone = 'below' | 'meets' | 'undecided'
export type UpperZone = 'above' | 'within' | 'undecided'

export interface Judged {
  readonly value: number
  /** Standard uncertainty of the value, same unit. */
  readonly u: number
  readonly limit: number
  /** Width of the guard band in standard uncertainties: w = guard · u. With 2 a wrong call happens in at most 2.3 %. */
  readonly guard?: number
}

/**
 * The zone of a value against one tolerance limit.
 *
 * Against a lower limit T: `below` only if value ≤ T − w, `meets` only if value ≥ T + w, otherwise `undecided`; mirrored
 * for an upper limit. A value, uncertainty or limit that is no finite number leaves it undecided.
 * Source: JCGM 106:2012 clause 8, guarded acceptance and guarded rejection.
 */
export function zone(judged: Judged & { readonly side: 'lower' }): LowerZone
export function zone(judged: Judged & { readonly side: 'upper' }): UpperZone
export function zone(judged: Judged & { readonly side: 'lower' | 'upper' }): LowerZone | UpperZone
export function zone(judged: Judged & { readonly side: 'lower' | 'upper' }): LowerZone | UpperZone {
  const { value, u, limit, side, guard = 2 } = judged
  const w = guard * u
  if (![value, limit, w].every(Number.isFinite) || w < 0) return 'undecided'
  // A reading without uncertainty that lies exactly on the limit conforms.
  if (side === 'lower') {
    if (value >= limit + w) return 'meets'
    return value <= limit - w ? 'below' : 'undecided'
  }
  if (value <= limit - w) return 'within'
  return value >= limit + w ? 'above' : 'undecided'
}
