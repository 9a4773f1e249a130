// The figures of a run, each with its uncertainty, and how far an unfinished discharge makes them bounds.
import { type Figure, type FigureNote, plainFigure } from '../figure.ts'
import type { Drawn } from './charge-drawn.ts'
import type { RunLayout } from './lay-out-run.ts'
import type { Relaxation } from './relaxation.ts'
import { resistanceFigure, type Step, type StepAccuracy, sampleNoise } from './resistance.ts'
import type { RestBefore } from './rests.ts'
import type { TemperatureReading } from './temperature.ts'
import type { Trap } from './traps.ts'

export type RunFigures = {
  readonly capacity: Figure
  readonly energy: Figure
  readonly meanVoltage: Figure
  readonly meanCurrent: Figure
  readonly duration: Figure
  readonly endVoltage: Figure
  readonly startRestVoltage: Figure | null
  readonly resistance: Figure | null
  readonly settledVoltage: Figure | null
  readonly startTemperature: Figure | null
  readonly temperatureRise: Figure | null
}

export type Measured = {
  readonly layout: RunLayout
  readonly drawn: Drawn
  readonly rest: RestBefore | null
  readonly relaxed: Relaxation | null
  readonly temperature: TemperatureReading | null
  readonly steps: readonly Step[]
  readonly wiring: 'four-wire' | 'two-wire'
  readonly hasCutoff: boolean
  readonly traps: readonly Trap[]
}

const root3 = Math.sqrt(3)

export function runFigures(measured: Measured): RunFigures {
  const { layout, drawn, rest, relaxed, temperature, steps, wiring, hasCutoff } = measured
  const { chain, end_V, usual_s, uVoltage } = layout
  const bounds = boundsOf(measured.traps)
  const atEnd: FigureNote[] = hasCutoff ? [] : [{ code: 'no-cutoff-given', endVoltage_V: end_V }]
  const { meanVoltage_V, meanCurrent_A, load_s } = drawn
  const pace = Number.isFinite(usual_s) ? usual_s / 2 : 0
  return {
    capacity: bounded({ ...drawn.capacity, notes: [...drawn.capacity.notes, ...atEnd] }, bounds),
    energy: bounded({ ...drawn.energy, notes: [...drawn.energy.notes, ...atEnd] }, bounds),
    meanVoltage: plainFigure(
      meanVoltage_V,
      'V',
      Math.hypot(uVoltage(meanVoltage_V), drawn.uMeanVoltage_V),
      'energy-over-capacity',
    ),
    meanCurrent: plainFigure(
      meanCurrent_A,
      'A',
      Math.hypot(meanCurrent_A * chain.currentGain, chain.currentOffset_A) / root3,
      'mean-over-load',
    ),
    duration: plainFigure(load_s, 's', Math.hypot(load_s * chain.clock, pace) / root3, 'first-to-last-loaded-sample'),
    endVoltage: plainFigure(end_V, 'V', uVoltage(end_V), 'last-loaded-sample'),
    startRestVoltage: rest && plainFigure(rest.voltage_V, 'V', uVoltage(rest.voltage_V), 'last-sample-before-load'),
    resistance: steps[0] ? resistanceFigure(steps[0], stepAccuracy(layout), wiring) : null,
    settledVoltage: relaxed && settled(relaxed, uVoltage),
    startTemperature: temperature?.start ?? null,
    temperatureRise: temperature?.rise ?? null,
  }
}

function stepAccuracy({ trace, longest, chain }: RunLayout): StepAccuracy {
  return {
    // The offset is common to both readings of a difference; a tenth of it stands for resolution and drift.
    uVoltage_V: Math.max(sampleNoise(trace.voltage_V, longest.from, longest.to), chain.voltageOffset_V / 10),
    uCurrent: Math.hypot(chain.currentGain, chain.voltageGain) / root3,
    currents: 'common-gain',
  }
}

function settled(relaxed: Relaxation, uVoltage: (volts: number) => number): Figure {
  const u = Math.hypot(relaxed.u_V, uVoltage(relaxed.settled_V))
  const notes: FigureNote[] =
    relaxed.residual_V > 0.003 ? [{ code: 'fits-badly', residual_mV: relaxed.residual_V * 1000 }] : []
  return plainFigure(relaxed.settled_V, 'V', u, 'exponential-fit', notes)
}

/** The traps after which the cell may hold more than was drawn. */
function boundsOf(traps: readonly Trap[]): FigureNote[] {
  return traps.flatMap(({ code }): FigureNote[] =>
    code === 'stopped-above-cutoff' ||
    code === 'not-full-at-start' ||
    code === 'starts-under-load' ||
    code === 'counter-disagrees'
      ? [{ code: 'lower-bound', because: code }]
      : [],
  )
}

function bounded(figure: Figure, bounds: readonly FigureNote[]): Figure {
  if (bounds.length === 0) return figure
  const from = figure.interval?.from ?? figure.value ?? 0
  return { ...figure, interval: { from, to: null }, notes: [...figure.notes, ...bounds] }
}
