// What weighing a claim can find: codes with the figures and lines for a sentence.

import type { FormatName } from '../../ground/formats.ts'
import type { Density } from '../densities.ts'
import type { Crossed } from './against-lines.ts'
import type { FactOf, Span } from './facts.ts'

/**
 * Heaviest first. `impossible`: cannot be. `contradiction`: two claims that exclude each other. `beyond`: more than any believable
 * data sheet shows. `high`: a new class, to be asked about. `low`: lighter than such cells are.
 */
export const claimWeights = ['impossible', 'contradiction', 'beyond', 'high', 'low', 'not-comparable'] as const
export type ClaimWeight = (typeof claimWeights)[number]

/** What of a claim could be held against known figures. */
export type Compared = 'capacity' | 'energy' | 'current' | 'mass' | 'energy-per-volume' | 'energy-per-mass'

type Weighed = {
  readonly weight: ClaimWeight
  /** The stretches of text that carry it. */
  readonly spans: readonly Span[]
}

/** A figure above one of the lines of its ceiling. */
export type AgainstCeiling = Weighed & Crossed

export type ClaimFinding =
  | (AgainstCeiling & {
      readonly code: 'capacity'
      readonly unit: 'mAh'
      readonly atNominalSize: Density | null
      readonly cells: number
      /** The text gives the figure without a unit. */
      readonly assumed: boolean
    })
  | (AgainstCeiling & { readonly code: 'energy'; readonly unit: 'Wh' })
  | (AgainstCeiling & {
      readonly code: 'energy-per-volume' | 'energy-per-mass'
      readonly unit: 'Wh/L' | 'Wh/kg'
      readonly u: number
      readonly size: 'measured' | 'claimed'
    })
  | (AgainstCeiling & {
      readonly code: 'continuous-current'
      readonly unit: 'A'
      /** What it was held against: cells up to a temperature, or without such a limit. */
      readonly upTo: 'temperature' | 'no-limit'
    })
  | (Weighed & {
      readonly code: 'capacity-and-current'
      readonly capacity_mAh: number
      readonly current_A: number
      readonly pair: { readonly capacity_mAh: number; readonly continuous_A: number }
      readonly validUntil: string
      readonly outOfDate: boolean
    })
  | (Weighed & { readonly code: 'mass'; readonly value: number; readonly lightest_g: number })
  | (Weighed & {
      readonly code: 'energy-and-capacity'
      readonly energy_Wh: number
      readonly fromCapacity_Wh: number
      readonly volts: number
    })
  | (Weighed & { readonly code: 'two-formats'; readonly formats: readonly FormatName[] })
  | (Weighed & {
      readonly code: 'current-not-comparable'
      readonly value: number
      readonly because: 'pulse-undefined' | 'max-undefined' | 'sort-unsaid' | 'charge-current' | 'battery-current'
    })
  | (Weighed & {
      readonly code: 'capacity-not-comparable'
      readonly value: number
      /** `converter`: 1.5 V is claimed, so the mAh count at 1.5 V. `connection-unsaid`: of a battery, not of one cell. */
      readonly because: 'no-format' | 'converter' | 'connection-unsaid'
    })
  /** An energy in mWh, which looks like a capacity in mAh and is about `capacity_mAh` of them. */
  | (Weighed & {
      readonly code: 'milliwatt-hours'
      readonly value: number
      readonly capacity_mAh: number
      readonly volts: number
    })
  | (Weighed & {
      readonly code: 'unclear-figure'
      readonly of: FactOf<'unclear'>['of']
      readonly readings: readonly number[]
    })
