// What weighing a claim can find: codes with the figures and lines for a sentence.

import type { FormatName } from '../../ground/formats.ts'
import type { Density } from '../densities.ts'
import type { FactOf, Span } from './facts.ts'

export type ClaimWeight = 'impossible' | 'high' | 'low' | 'contradiction' | 'not-comparable'

type Weighed = {
  readonly weight: ClaimWeight
  /** The stretches of text that carry it. */
  readonly spans: readonly Span[]
}

/** A figure above a line of `ceilings.ts`. */
export type AgainstCeiling = Weighed & {
  readonly value: number
  /** Best known, and the line that was crossed. */
  readonly best: number
  readonly line: number
  readonly validUntil: string
  /** The line is past its date, so the claim weighs one step less. */
  readonly outOfDate: boolean
}

export type ClaimFinding =
  | (AgainstCeiling & {
      readonly code: 'capacity'
      readonly unit: 'mAh'
      readonly atNominalSize: Density | null
      readonly cells: number
    })
  | (AgainstCeiling & {
      readonly code: 'energy-per-volume' | 'energy-per-mass'
      readonly unit: 'Wh/L' | 'Wh/kg'
      readonly u: number
      readonly size: 'measured' | 'claimed'
    })
  | (AgainstCeiling & { readonly code: 'continuous-current'; readonly unit: 'A' })
  | (Weighed & {
      readonly code: 'capacity-and-current'
      readonly capacity_mAh: number
      readonly current_A: number
      readonly pair: { readonly capacity_mAh: number; readonly continuous_A: number }
      readonly validUntil: string
    })
  | (Weighed & { readonly code: 'mass'; readonly value: number; readonly lightest_g: number })
  | (Weighed & { readonly code: 'energy-and-capacity'; readonly energy_Wh: number; readonly fromCapacity_Wh: number })
  | (Weighed & { readonly code: 'two-formats'; readonly formats: readonly FormatName[] })
  | (Weighed & {
      readonly code: 'current-not-comparable'
      readonly value: number
      readonly because: 'pulse-undefined' | 'max-undefined' | 'sort-unsaid' | 'charge-current'
    })
  | (Weighed & {
      readonly code: 'capacity-not-comparable'
      readonly value: number
      readonly because: 'no-format' | 'format-unknown'
    })
  | (Weighed & {
      readonly code: 'unclear-figure'
      readonly of: FactOf<'unclear'>['of']
      readonly readings: readonly number[]
    })
