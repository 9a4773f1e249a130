// Everything one discharge of a log says: figures with uncertainty, steps, gaps, traps and the curve.
import type { Budget } from './budget.ts'
import { chargeDrawn } from './charge-drawn.ts'
import { type CurvePoint, curveOf } from './curve.ts'
import { type Cutoff, findCutoff } from './cutoff.ts'
import type { Gap } from './gaps.ts'
import { layOut } from './lay-out-run.ts'
import type { MeasureOptions } from './measure-options.ts'
import type { Run } from './phases.ts'
import { type Step, stepResistance, stepsOf } from './resistance.ts'
import { relaxationAfter, restBefore } from './rests.ts'
import { type RunFigures, runFigures } from './run-figures.ts'
import { temperatureOf } from './temperature.ts'
import type { Rows, Trace } from './trace.ts'
import { type Trap, trapsOf } from './traps.ts'

export type RunReading = {
  readonly rows: Rows
  readonly starts_s: number
  readonly figures: RunFigures
  readonly budget: { readonly capacity: Budget; readonly energy: Budget }
  readonly cutoff: { readonly state: Cutoff['state'] | 'none-given'; readonly cutoff_V: number | null }
  /** Room temperature: typed, or the log's own at the start; null if neither. */
  readonly room_C: number | null
  readonly rest: { readonly before_s: number | null; readonly tau_s: number | null }
  readonly steps: readonly Step[]
  readonly gaps: readonly Gap[]
  readonly traps: readonly Trap[]
  readonly curve: readonly CurvePoint[]
}

const exact = { uVoltage_V: 0, uCurrent: 0, currents: 'common-gain' } as const

/** Reads one run of a trace. Never throws; what the log does not hold is null. */
export function measureRun(trace: Trace, run: Run, options: MeasureOptions): RunReading {
  const layout = layOut(trace, run, options)
  const { chain, gapLimit_s, usual_s } = layout
  const cutoff =
    options.cutoff_V === undefined ? null : findCutoff(trace, run, options.cutoff_V, gapLimit_s, chain.voltageOffset_V)
  const drawn = chargeDrawn(trace, run, {
    cutoff,
    gapLimit_s,
    gapCurrent_A: options.gapCurrent_A ?? [0, 1.05 * layout.highest_A],
    constantCurrent: options.constantCurrent ?? false,
    chain,
    openEnd_s: Number.isFinite(usual_s) ? usual_s / 2 : 0,
  })
  const rest = restBefore(trace, run)
  const relaxed = relaxationAfter(trace, run)
  const temperature = temperatureOf(trace, run, options.instrument)
  const steps = stepsOf(trace, run)
  const wiring = options.wiring ?? 'two-wire'
  const resistance_mΩ = steps[0] ? stepResistance(steps[0], exact).value : null
  const traps = trapsOf({ layout, options, cutoff, drawn, rest, temperature, resistance_mΩ, wiring })
  return {
    rows: { from: run.from, to: run.to },
    starts_s: trace.time_s[run.from]!,
    figures: runFigures({
      layout,
      drawn,
      rest,
      relaxed,
      temperature,
      steps,
      wiring,
      hasCutoff: cutoff !== null,
      traps,
    }),
    budget: drawn.budget,
    cutoff: { state: cutoff?.state ?? 'none-given', cutoff_V: options.cutoff_V ?? null },
    room_C: options.room_C ?? temperature?.start.value ?? null,
    rest: { before_s: rest?.seconds ?? null, tau_s: relaxed?.tau_s ?? null },
    steps,
    gaps: drawn.gaps,
    traps,
    curve: curveOf(trace, run, drawn.gaps),
  }
}
