// What a chart of a discharge is drawn from.
import type { NumberWords, Range } from './plot.ts'

/** Charge drawn so far in mAh, voltage in V, surface temperature in °C where it was logged. */
export type CurvePoint = { capacity: number; voltage: number; temperature?: number }

export type DischargeCurve = {
  title?: string
  points: readonly CurvePoint[]
  /** stretches without readings, mAh */
  gaps?: readonly Range[]
  /** V at which the discharge ends */
  cutOff: number
  /** capacity in mAh with its expanded uncertainty (k = 2); a lower bound when the log stopped above the cut-off */
  result?: { value: number; u: number; atLeast?: boolean }
  /** what the cell is held against, mAh: its label, or the least its maker promises */
  promised?: number
  /** words in the reader's language; units are part of them */
  words: {
    capacity: string
    voltage: string
    temperature: string
    cutOff: string
    result: string
    promised: string
    gap: string
  }
  number: NumberWords
}
