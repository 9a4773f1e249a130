// What a discharge of a log has to show for itself when it is weighed.
import type { Figure } from '../figure.ts'
import type { RunReading } from './measure-run.ts'

export type DischargeEvidence = {
  /** mAh; a bound or an interval where the discharge was not whole. */
  readonly capacity: Figure
  readonly current_A: number
  /** Range of a current that was not held constant. */
  readonly unsteady: { readonly from_A: number; readonly to_A: number } | null
  /** The voltage down to which the charge was counted. */
  readonly end_V: number | null
  readonly room_C: number | null
  readonly rise_K: number | null
  readonly highest: { readonly value_C: number; readonly u_K: number } | null
}

/** The evidence of one run of a log. */
export function evidenceOf(run: RunReading): DischargeEvidence {
  const { capacity, meanCurrent, endVoltage, startTemperature, temperatureRise } = run.figures
  const unsteady = run.traps.find(trap => trap.code === 'current-not-constant')
  const rise_K = temperatureRise?.value ?? null
  const start = startTemperature?.value ?? null
  const counted = run.cutoff.state !== 'not-reached' ? run.cutoff.cutoff_V : null
  return {
    capacity,
    current_A: meanCurrent.value ?? 0,
    unsteady: unsteady ? { from_A: unsteady.from_A, to_A: unsteady.to_A } : null,
    end_V: counted ?? endVoltage.value,
    room_C: run.room_C,
    rise_K,
    highest: start === null || rise_K === null ? null : { value_C: start + rise_K, u_K: startTemperature?.u ?? 0 },
  }
}
