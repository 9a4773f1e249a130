// How warm a cell got over a discharge, and how warm it was to begin with.
import { type Figure, plainFigure } from '../figure.ts'
import { type Instrument, standardUncertainty } from '../instrument.ts'
import type { Run } from './phases.ts'
import type { Trace } from './trace.ts'

export type TemperatureReading = {
  readonly start: Figure
  readonly rise: Figure
  readonly highest_C: number
}

/** Temperatures of a run; null when the log has none. The rise is a difference of one sensor, so its offset drops out. */
export function temperatureOf({ temperature_C }: Trace, run: Run, instrument: Instrument): TemperatureReading | null {
  if (!temperature_C) return null
  const last = run.loads.at(-1)!.to
  let [start, highest] = [Number.NaN, Number.NaN]
  // The sample nearest the start of the load: what came long before may have been another room.
  for (let row = run.loads[0].from; row >= run.from && Number.isNaN(start); row--) start = temperature_C[row]!
  for (let row = run.loads[0].from; row <= last; row++) {
    const value = temperature_C[row]!
    if (Number.isNaN(start)) start = value
    if (!(value <= highest)) highest = Number.isNaN(value) ? highest : value
  }
  if (Number.isNaN(start) || Number.isNaN(highest)) return null
  const stated = standardUncertainty('temperature', start, instrument)
  const u = Number.isFinite(stated) && instrument.kind !== 'typed-figure' ? stated : 3 / Math.sqrt(3)
  return {
    start: plainFigure(start, '°C', u, 'first-sample'),
    // Two readings of one sensor: common practice, no source, a third of its stated accuracy remains in a difference.
    rise: plainFigure(highest - start, 'K', u / 3, 'highest-minus-start'),
    highest_C: highest,
  }
}
