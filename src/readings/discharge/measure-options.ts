// What is known about a test besides its log: instrument, conditions, and what the cell is claimed to be.
import type { Instrument } from '../instrument.ts'
import type { ChainAccuracy } from './budget.ts'

export type MeasureOptions = {
  /** What took the log; its current and voltage accuracy are used. */
  readonly instrument: Instrument
  /** Parts of the accuracy known better than the instrument's menu entry. */
  readonly chain?: Partial<ChainAccuracy>
  /** The cut-off of the claim; without one, everything up to the end of the load is counted. */
  readonly cutoff_V?: number
  /** The open-circuit voltage of this chemistry fully charged, 4.20 V if not given. */
  readonly full_V?: number
  /** Room temperature, when the log has no temperature of its own. */
  readonly room_C?: number
  readonly wiring?: 'four-wire' | 'two-wire'
  /** The load held its current by itself, so that sampling gaps may be bridged. */
  readonly constantCurrent?: boolean
  /** What the current can have been inside a gap; 0 to 1.05 times the highest seen, if not given. */
  readonly gapCurrent_A?: readonly [number, number]
  /** Capacity on the label, mAh, to say how low the rate was. */
  readonly claimed_mAh?: number
  /** How many times as much charge the file's own counter shows; 1 or nothing where it agrees or there is none. */
  readonly counterFactor?: number
}
