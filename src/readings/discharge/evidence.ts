// What a discharge has to show for itself when it is weighed: read from a log, or typed after a test.
import { type Figure, type FigureNote, plainFigure } from '../figure.ts'
import { type Instrument, standardUncertainty } from '../instrument.ts'
import { fullWithin_V } from './full-cell.ts'
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

/** A capacity read off a load's display after a test, with what was noted about the test. Canonical units. */
export type TypedDischarge = {
  readonly capacity_mAh: number
  readonly instrument: Instrument
  readonly current_A: number
  /** The voltage at which the load stopped. */
  readonly end_V: number | null
  /** The cut-off the claim is meant to. */
  readonly cutoff_V: number | null
  /** Rested voltage before the test, and what a full cell of this chemistry shows. */
  readonly start_V: number | null
  readonly full_V: number
  readonly room_C: number | null
  readonly surface_C: number | null
}

/** The evidence of a typed capacity; a test that began or stopped early makes it a lower bound, as with a log. */
export function typedEvidence(typed: TypedDischarge): DischargeEvidence {
  const { capacity_mAh, end_V, cutoff_V, start_V, room_C, surface_C } = typed
  const notes: FigureNote[] = []
  if (end_V !== null && cutoff_V !== null && end_V > cutoff_V + 0.02) {
    notes.push({ code: 'lower-bound', because: 'stopped-above-cutoff' })
  }
  if (start_V !== null && start_V < typed.full_V - fullWithin_V) {
    notes.push({ code: 'lower-bound', because: 'not-full-at-start' })
  }
  const u = standardUncertainty('capacity', capacity_mAh, typed.instrument)
  const figure = plainFigure(capacity_mAh, 'mAh', u, 'as-displayed', notes)
  return {
    capacity: notes.length === 0 ? figure : { ...figure, interval: { from: capacity_mAh, to: null } },
    current_A: typed.current_A,
    unsteady: null,
    end_V,
    room_C,
    rise_K: room_C === null || surface_C === null ? null : surface_C - room_C,
    highest:
      surface_C === null
        ? null
        : { value_C: surface_C, u_K: standardUncertainty('temperature', surface_C, { kind: 'basic-multimeter' }) },
  }
}
