// What a measured discharge says about a claim: how much it weighs, or why it says nothing.

import { zone } from '../ground/guard-band.ts'
import type { DischargeEvidence } from './discharge/evidence.ts'
import { type Figure, reach } from './figure.ts'

export type Minimum = {
  readonly capacity_mAh: number
  readonly current_A: number
  readonly cutoff_V: number
  /** Room temperature of the promise; 20 ± 5 °C if not given (IEC 61960-3). */
  readonly room_C?: number
}

export type DischargeClaim = {
  /** Capacity on the label, mAh. */
  readonly label_mAh?: number
  /** What the maker's data sheet promises at least, and under what conditions. */
  readonly minimum?: Minimum
  /** Current claimed without pause, A. */
  readonly continuous_A?: number
}

/** How a finding bears on the claim. Passing never counts for a cell: it has no bearing. */
export type Bearing = 'must' | 'strong' | 'moderate' | 'none'

export type NotComparable =
  | { readonly code: 'other-current'; readonly measured_A: number; readonly stated_A: number }
  | { readonly code: 'other-cutoff'; readonly measured_V: number | null; readonly stated_V: number }
  | { readonly code: 'other-temperature'; readonly measured_C: number; readonly stated_C: number }
  | { readonly code: 'temperature-unknown' }
  | { readonly code: 'current-not-constant'; readonly from_A: number; readonly to_A: number }

export type LabelObstacle =
  | { readonly code: 'cold-room'; readonly room_C: number; readonly least_C: number }
  | { readonly code: 'rate-too-high'; readonly rate_It: number; readonly most_It: number }

export type DischargeFinding = { readonly bearing: Bearing } & (
  | {
      readonly code: 'far-below-label' | 'below-label' | 'label-undecided' | 'label-reached'
      readonly capacity: Figure
      readonly label_mAh: number
      /** Share of the label that was measured at most; at least, for `label-reached`. Null where it is open. */
      readonly share: number | null
      /** Amperes over ampere-hours of the label: low rates flatter every cell. */
      readonly rate_It: number
    }
  /** Less than the label, under conditions in which an honest cell gives less, too. */
  | {
      readonly code: 'label-not-comparable'
      readonly capacity: Figure
      readonly label_mAh: number
      readonly because: readonly LabelObstacle[]
    }
  /** The discharge was not whole, so it cannot show that a cell holds less. */
  | { readonly code: 'only-a-lower-bound'; readonly capacity: Figure; readonly label_mAh: number }
  | {
      readonly code: 'below-minimum' | 'meets-minimum' | 'minimum-undecided'
      readonly capacity: Figure
      readonly minimum_mAh: number
    }
  | { readonly code: 'minimum-not-comparable'; readonly because: readonly NotComparable[] }
  | {
      readonly code: 'too-hot-at-claimed-current' | 'gives-out-at-claimed-current' | 'holds-claimed-current'
      readonly current_A: number
      readonly claimed_A: number
      readonly rise_K: number | null
      readonly highest_C: number | null
      readonly share: number | null
    }
)

// Trade facts, derived from the published asymmetry at C/10 (good protected cells gave 92.5 % of their label, cheap ones
// 20.6 %, none of eight brands all of it): under half the label is strong, 50 to 80 % misdescribed or worn, more is silent.
const strongShare = 0.5
const moderateShare = 0.8
const hot_C = 60
/** Labels are meant at 20 ± 5 °C and 0.2 It (IEC 61960-3); up to 1 It a sound cell still gives most of it. */
const [coldest_C, fastest_It] = [15, 1] as const

/** Findings of one discharge about one claim. A capacity is never rescaled to another current, cut-off or temperature. */
export function weighDischarge(evidence: DischargeEvidence, claim: DischargeClaim): readonly DischargeFinding[] {
  const findings: DischargeFinding[] = []
  if (claim.label_mAh !== undefined) findings.push(againstLabel(evidence, claim.label_mAh))
  if (claim.minimum) findings.push(againstMinimum(evidence, claim.minimum))
  const held = claim.continuous_A === undefined ? null : atClaimedCurrent(evidence, claim.continuous_A, claim.label_mAh)
  return held ? [...findings, held] : findings
}

/**
 * Whether the capacity is below a limit, meets it, or leaves it open, with the guard band of 2 u.
 *
 * The gain's part of u grows with the capacity; what counts is what a cell just on the limit would show, so u is taken
 * at the limit where that is larger.
 */
function capacityZone(capacity: Figure, limit: number): 'below' | 'meets' | 'undecided' {
  const { least, most } = reach({ ...capacity, u: 0 })
  const at = (value: number) =>
    zone({ value, u: capacity.u * Math.max(1, limit / value), limit, side: 'lower', width: capacity.k })
  if (at(least) === 'meets') return 'meets'
  return most !== null && at(most) === 'below' ? 'below' : 'undecided'
}

function againstLabel({ capacity, current_A, room_C }: DischargeEvidence, label_mAh: number): DischargeFinding {
  const { least, most } = reach(capacity)
  const rate_It = current_A / (label_mAh / 1000)
  const rest = { capacity, label_mAh, rate_It }
  const because: LabelObstacle[] = []
  if (room_C !== null && room_C < coldest_C) because.push({ code: 'cold-room', room_C, least_C: coldest_C })
  if (rate_It > fastest_It) because.push({ code: 'rate-too-high', rate_It, most_It: fastest_It })
  if (because.length > 0 && capacityZone(capacity, moderateShare * label_mAh) !== 'meets') {
    return { code: 'label-not-comparable', bearing: 'none', capacity, label_mAh, because }
  }
  if (capacityZone(capacity, strongShare * label_mAh) === 'below') {
    return { code: 'far-below-label', bearing: 'strong', share: most! / label_mAh, ...rest }
  }
  const usual = capacityZone(capacity, moderateShare * label_mAh)
  if (usual === 'below') return { code: 'below-label', bearing: 'moderate', share: most! / label_mAh, ...rest }
  if (usual === 'meets') return { code: 'label-reached', bearing: 'none', share: least / label_mAh, ...rest }
  if (most === null) return { code: 'only-a-lower-bound', bearing: 'none', capacity, label_mAh }
  return { code: 'label-undecided', bearing: 'none', share: most / label_mAh, ...rest }
}

function againstMinimum(evidence: DischargeEvidence, minimum: Minimum): DischargeFinding {
  const because = differences(evidence, minimum)
  if (because.length > 0) return { code: 'minimum-not-comparable', bearing: 'none', because }
  const { capacity } = evidence
  const minimum_mAh = minimum.capacity_mAh
  const found = capacityZone(capacity, minimum_mAh)
  if (found === 'below') return { code: 'below-minimum', bearing: 'must', capacity, minimum_mAh }
  return { code: found === 'meets' ? 'meets-minimum' : 'minimum-undecided', bearing: 'none', capacity, minimum_mAh }
}

/** How the test differed from the conditions of the promise: 5 % of the current, 20 mV of the cut-off, 5 K. */
function differences({ current_A, unsteady, end_V, room_C }: DischargeEvidence, minimum: Minimum): NotComparable[] {
  const because: NotComparable[] = []
  if (!(Math.abs(current_A / minimum.current_A - 1) <= 0.05)) {
    because.push({ code: 'other-current', measured_A: current_A, stated_A: minimum.current_A })
  }
  if (end_V === null || Math.abs(end_V - minimum.cutoff_V) > 0.02) {
    because.push({ code: 'other-cutoff', measured_V: end_V, stated_V: minimum.cutoff_V })
  }
  const stated_C = minimum.room_C ?? 20
  if (room_C === null) because.push({ code: 'temperature-unknown' })
  else if (Math.abs(room_C - stated_C) > 5) because.push({ code: 'other-temperature', measured_C: room_C, stated_C })
  if (unsteady) because.push({ code: 'current-not-constant', ...unsteady })
  return because
}

/** Too hot, or gives out, at the claimed current or less; only at that current it can hold it. */
function atClaimedCurrent(
  { capacity, current_A, room_C, rise_K, highest }: DischargeEvidence,
  claimed_A: number,
  label_mAh: number | undefined,
): DischargeFinding | null {
  if (current_A <= 0) return null
  const share = label_mAh !== undefined && capacity.value !== null ? capacity.value / label_mAh : null
  const rest = { current_A, claimed_A, rise_K, highest_C: highest?.value_C ?? null, share }
  if (highest && zone({ value: highest.value_C, u: highest.u_K, limit: hot_C, side: 'upper' }) === 'above') {
    return { code: 'too-hot-at-claimed-current', bearing: 'strong', ...rest }
  }
  const cold = room_C !== null && room_C < coldest_C
  if (label_mAh !== undefined && !cold && capacityZone(capacity, strongShare * label_mAh) === 'below') {
    return { code: 'gives-out-at-claimed-current', bearing: 'strong', ...rest }
  }
  return current_A < 0.95 * claimed_A ? null : { code: 'holds-claimed-current', bearing: 'none', ...rest }
}
