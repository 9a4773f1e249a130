// Whether a measured resistance may be held against a stated one, and what comes of it.
import { zone } from '../ground/guard-band.ts'

/** How a resistance was taken: methods differ, so only like is compared with like. */
export type ResistanceMethod =
  | { readonly kind: 'ac-1khz' }
  /** IEC 61960: 0.2 It for 10 s, then 1 It for 1 s. */
  | { readonly kind: 'two-pulse' }
  | { readonly kind: 'load-step'; readonly seconds: number }

export type MeasuredResistance = {
  readonly value_mΩ: number
  readonly u_mΩ: number
  readonly method: ResistanceMethod
  readonly wiring: 'four-wire' | 'two-wire' | 'unknown'
  readonly room_C: number | null
}

export type ResistanceObstacle =
  /** Leads, probes and holders add 20 to 60 mΩ: as much as the cell. */
  | { readonly code: 'not-four-wire' }
  | {
      readonly code: 'other-method'
      readonly measured: ResistanceMethod['kind']
      readonly stated: ResistanceMethod['kind']
    }
  | { readonly code: 'other-step-length'; readonly measured_s: number; readonly stated_s: number }
  | { readonly code: 'temperature-unknown' }
  | { readonly code: 'cold-room' | 'warm-room'; readonly room_C: number }

export type ResistanceFinding =
  | { readonly code: 'not-comparable'; readonly because: readonly ResistanceObstacle[] }
  | { readonly code: 'above' | 'within' | 'undecided'; readonly most_mΩ: number }

// A cell's resistance changes by 1 to 2 % a kelvin near 20 °C (trade facts, from memory).
const [coldest_C, warmest_C] = [18, 27]

/** Compares with the most a data sheet allows; never across methods or step lengths, nor outside 18 to 27 °C. */
export function compareResistance(
  measured: MeasuredResistance,
  stated: { readonly most_mΩ: number; readonly method: ResistanceMethod },
): ResistanceFinding {
  const because: ResistanceObstacle[] = []
  if (measured.wiring !== 'four-wire') because.push({ code: 'not-four-wire' })
  const [own, theirs] = [measured.method, stated.method]
  if (own.kind !== theirs.kind) because.push({ code: 'other-method', measured: own.kind, stated: theirs.kind })
  else if (
    own.kind === 'load-step' &&
    theirs.kind === 'load-step' &&
    Math.abs(own.seconds / theirs.seconds - 1) > 0.2
  ) {
    because.push({ code: 'other-step-length', measured_s: own.seconds, stated_s: theirs.seconds })
  }
  const { room_C } = measured
  if (room_C === null) because.push({ code: 'temperature-unknown' })
  else if (room_C < coldest_C) because.push({ code: 'cold-room', room_C })
  else if (room_C > warmest_C) because.push({ code: 'warm-room', room_C })
  if (because.length > 0) return { code: 'not-comparable', because }
  const { value_mΩ: value, u_mΩ: u } = measured
  return { code: zone({ value, u, limit: stated.most_mΩ, side: 'upper' }), most_mΩ: stated.most_mΩ }
}
