// Everything one discharge of a log says: figures with uncertainty, steps, gaps, traps and the curve.
import { type Figure, plainFigure } from '../figure.ts'
import type { Instrument } from '../instrument.ts'
import { type Budget, type ChainAccuracy, chainOf } from './budget.ts'
import { chargeDrawn } from './charge-drawn.ts'
import { type CurvePoint, curveOf } from './curve.ts'
import { type Cutoff, findCutoff } from './cutoff.ts'
import { type Gap, gapLimit } from './gaps.ts'
import type { Run } from './phases.ts'
import { resistanceFigure, type Step, sampleNoise, stepsOf } from './resistance.ts'
import { relaxationAfter, restBefore } from './rests.ts'
import { temperatureOf } from './temperature.ts'
import { quantile, type Rows, type Trace } from './trace.ts'
import { type Trap, trapsOf } from './traps.ts'

export interface MeasureOptions {
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
}

export interface RunReading {
  readonly rows: Rows
  readonly starts_s: number
  readonly figures: {
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
  readonly budget: { readonly capacity: Budget; readonly energy: Budget }
  readonly cutoff: { readonly state: Cutoff['state'] | 'none-given'; readonly cutoff_V: number | null }
  readonly rest: { readonly before_s: number | null; readonly tau_s: number | null }
  readonly steps: readonly Step[]
  readonly gaps: readonly Gap[]
  readonly traps: readonly Trap[]
  readonly curve: readonly CurvePoint[]
}

/** Reads one run of a trace. Never throws; what the log does not hold is null. */
export function measureRun(trace: Trace, run: Run, options: MeasureOptions): RunReading {
  const longest = run.loads.reduce((best, each) => (each.to - each.from > best.to - best.from ? each : best))
  const chain: ChainAccuracy = {
    ...chainOf(options.instrument, sampleNoise(trace.current_A, longest.from, longest.to)),
    ...options.chain,
  }
  const { time_s, voltage_V, current_A } = trace
  const gapLimit_s = gapLimit(trace, run)
  const lastLoad = run.loads.at(-1)!
  const end_V = voltage_V[lastLoad.to]!
  const uVoltage = (volts: number) => (volts * chain.voltageGain + chain.voltageOffset_V) / Math.sqrt(3)
  const cutoff =
    options.cutoff_V === undefined ? null : findCutoff(trace, run, options.cutoff_V, gapLimit_s, chain.voltageOffset_V)
  const highest = run.loads.reduce((most, load) => Math.max(most, highestIn(current_A, load)), 0)
  const usual_s = quantile(
    longest.to - longest.from,
    at => time_s[longest.from + at + 1]! - time_s[longest.from + at]!,
    0.5,
  )
  const drawn = chargeDrawn(trace, run, {
    cutoff,
    gapLimit_s,
    gapCurrent_A: options.gapCurrent_A ?? [0, 1.05 * highest],
    constantCurrent: options.constantCurrent ?? false,
    chain,
    openEnd_s: Number.isFinite(usual_s) ? usual_s / 2 : 0,
  })

  const rest = restBefore(trace, run)
  const relaxed = relaxationAfter(trace, run)
  const temperature = temperatureOf(trace, run, options.instrument)
  const steps = stepsOf(trace, run)
  const stepAccuracy = {
    uVoltage_V: Math.max(sampleNoise(voltage_V, longest.from, longest.to), chain.voltageOffset_V / 10),
    uCurrent: Math.hypot(chain.currentGain, chain.voltageGain) / Math.sqrt(3),
    currents: 'common-gain',
  } as const
  const wiring = options.wiring ?? 'two-wire'
  const traps = trapsOf({
    trace,
    run,
    options,
    cutoff,
    drawn,
    rest,
    temperature,
    end_V,
    usual_s,
    hasStep: steps.length > 0,
    wiring,
  })
  const bounds = traps.flatMap(trap =>
    trap.code === 'stopped-above-cutoff' || trap.code === 'not-full-at-start' || trap.code === 'starts-under-load'
      ? [{ code: 'lower-bound', because: trap.code } as const]
      : [],
  )
  const bounded = (figure: Figure): Figure =>
    bounds.length === 0
      ? figure
      : {
          ...figure,
          interval: { from: figure.interval?.from ?? figure.value ?? 0, to: null },
          notes: [...figure.notes, ...bounds],
        }
  const noCutoff = cutoff ? [] : [{ code: 'no-cutoff-given', endVoltage_V: end_V } as const]
  const capacity = { ...drawn.capacity, notes: [...drawn.capacity.notes, ...noCutoff] }

  return {
    rows: { from: run.from, to: run.to },
    starts_s: time_s[run.from]!,
    figures: {
      capacity: bounded(capacity),
      energy: bounded(drawn.energy),
      meanVoltage: plainFigure(drawn.meanVoltage_V, 'V', uVoltage(drawn.meanVoltage_V), 'energy-over-capacity'),
      meanCurrent: plainFigure(
        drawn.meanCurrent_A,
        'A',
        (drawn.meanCurrent_A * chain.currentGain + chain.currentOffset_A) / Math.sqrt(3),
        'mean-over-load',
      ),
      duration: plainFigure(
        drawn.load_s,
        's',
        Math.hypot(drawn.load_s * chain.clock, Number.isFinite(usual_s) ? usual_s / 2 : 0) / Math.sqrt(3),
        'first-to-last-loaded-sample',
      ),
      endVoltage: plainFigure(end_V, 'V', uVoltage(end_V), 'last-loaded-sample'),
      startRestVoltage: rest && plainFigure(rest.voltage_V, 'V', uVoltage(rest.voltage_V), 'last-sample-before-load'),
      resistance: steps[0] ? resistanceFigure(steps[0], stepAccuracy, wiring) : null,
      settledVoltage: relaxed && {
        ...plainFigure(relaxed.settled_V, 'V', Math.hypot(relaxed.u_V, uVoltage(relaxed.settled_V)), 'exponential-fit'),
        notes: relaxed.residual_V > 0.003 ? [{ code: 'fits-badly', residual_mV: relaxed.residual_V * 1000 }] : [],
      },
      startTemperature: temperature?.start ?? null,
      temperatureRise: temperature?.rise ?? null,
    },
    budget: drawn.budget,
    cutoff: { state: cutoff?.state ?? 'none-given', cutoff_V: options.cutoff_V ?? null },
    rest: { before_s: rest?.seconds ?? null, tau_s: relaxed?.tau_s ?? null },
    steps,
    gaps: drawn.gaps,
    traps,
    curve: curveOf(trace, run, drawn.gaps),
  }
}

function highestIn(values: Float64Array, { from, to }: Rows): number {
  let most = 0
  for (let row = from; row <= to; row++) if (values[row]! > most) most = values[row]!
  return most
}
