// The guard band of a measured value around a limit: how far it must be clear of it to be called above or below.

/**
 * How many standard uncertainties a reading must be clear of a limit (JCGM 106:2012, guard band w = 2u; from memory): a wrong
 * call happens in at most 2.3 %.
 */
export const guard = 2

/** How a value stands to a limit, its uncertainty counted: on one side for sure, exactly on it, or undecided. */
export type Side = 'less' | 'equal' | 'more' | 'undecided'

/**
 * Which side of `limit` a value with standard uncertainty `u` (same unit) lies on; `undecided` within the guard band of 2u around
 * the limit, `equal` only for a value without uncertainty.
 */
export function sideOf(value: number, u: number, limit: number): Side {
  const distance = value - limit
  if (u === 0) return distance < 0 ? 'less' : distance > 0 ? 'more' : 'equal'
  if (distance <= -guard * u) return 'less'
  return distance >= guard * u ? 'more' : 'undecided'
}

export type LowerZone = 'below' | 'meets' | 'undecided'
export type UpperZone = 'above' | 'within' | 'undecided'

export type Judged = {
  readonly value: number
  /** Standard uncertainty of the value, same unit. */
  readonly u: number
  readonly limit: number
  /** Width of the guard band in standard uncertainties; `guard` where it is not given. */
  readonly width?: number
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
  const { value, u, limit, side, width = guard } = judged
  const w = width * u
  if (![value, limit, w].every(Number.isFinite) || w < 0) return 'undecided'
  // A reading without uncertainty that lies exactly on the limit conforms.
  if (side === 'lower') {
    if (value >= limit + w) return 'meets'
    return value <= limit - w ? 'below' : 'undecided'
  }
  if (value <= limit - w) return 'within'
  return value >= limit + w ? 'above' : 'undecided'
}
