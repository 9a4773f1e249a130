// Which of a ceiling's lines a claimed figure is above, and what is left of that once the line is past its date.
import { agesOn, type Lines } from '../../ground/ceilings.ts'
import { sideOf } from '../../ground/guard-band.ts'

export type Crossed = {
  readonly weight: 'impossible' | 'beyond' | 'high' | 'not-comparable'
  readonly value: number
  /** Best known, and the line that was crossed. */
  readonly best: number
  readonly line: number
  /** The last day the line counts; null for one that never ages. */
  readonly validUntil: string | null
  /** The line is past its date, so the claim weighs one step less. */
  readonly outOfDate: boolean
}

/**
 * The heaviest line a value with standard uncertainty `u` (same unit) is above with certainty (guard band of 2 u), null if none;
 * the impossible line counts from itself on. After its date a line weighs one step less, the impossible one never does.
 */
export function against(value: number, u: number, lines: Lines, today: string): Crossed | null {
  const { best } = lines
  const above = (limit: number) => sideOf(value, u, limit) === 'more'
  if (above(lines.impossible) || value - 2 * u >= lines.impossible)
    return { weight: 'impossible', value, best, line: lines.impossible, validUntil: null, outOfDate: false }
  const outOfDate = today > agesOn
  const aged = { value, best, validUntil: agesOn, outOfDate }
  if (above(lines.credible)) return { ...aged, weight: outOfDate ? 'high' : 'beyond', line: lines.credible }
  if (above(lines.high)) return { ...aged, weight: outOfDate ? 'not-comparable' : 'high', line: lines.high }
  return null
}
