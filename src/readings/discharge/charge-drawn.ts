// Capacity and energy of one run: what was drawn up to the cut-off, and what its ends and gaps leave open.
import type { Figure, FigureNote } from '../figure.ts'
import { type Budget, type ChainAccuracy, capacityBudget, energyBudget, type LooseEnd, rootSum } from './budget.ts'
import type { Cutoff } from './cutoff.ts'
import { type Gap, gapAfter } from './gaps.ts'
import { add, type End, type Integral, integrate, nothing, simpson } from './integrate.ts'
import type { Run } from './phases.ts'
import type { Rows, Trace } from './trace.ts'

export type DrawnOptions = {
  readonly cutoff: Cutoff | null
  readonly gapLimit_s: number
  /** What the current can have been inside a gap, A. */
  readonly gapCurrent_A: readonly [number, number]
  /** The user declared a load that holds its current whatever happens. */
  readonly constantCurrent: boolean
  readonly chain: ChainAccuracy
  /** Half-width of the moment at which a log begins or ends under load. */
  readonly openEnd_s: number
}

export type Drawn = {
  readonly capacity: Figure
  readonly energy: Figure
  readonly budget: { readonly capacity: Budget; readonly energy: Budget }
  readonly load_s: number
  readonly meanVoltage_V: number
  /** What the loose ends add to its uncertainty: they lie where the voltage is highest and lowest. */
  readonly uMeanVoltage_V: number
  readonly meanCurrent_A: number
  /** Gaps that matter: together they could hold more than 0.2 % of the charge. */
  readonly gaps: readonly Gap[]
}

/** Sums one run load by load. Units: mAh and Wh; u is standard. */
export function chargeDrawn(trace: Trace, run: Run, options: DrawnOptions): Drawn {
  const { cutoff, chain } = options
  let sum = nothing
  let [off_As, off_Ws] = [0, 0]
  const ends: LooseEnd[] = []
  const gaps: Gap[] = []
  const loose = (row: number, halfWidth_s: number): LooseEnd => ({
    current_A: trace.current_A[row]!,
    voltage_V: trace.voltage_V[row]!,
    halfWidth_s,
  })
  /** Load began or stopped between two samples, so on average half the interval still counts. */
  const edge = (row: number, other: number) => {
    const seconds = Math.abs(trace.time_s[other]! - trace.time_s[row]!)
    if (seconds > options.gapLimit_s) {
      gaps.push(gapAfter(trace, Math.min(row, other), options.gapCurrent_A))
      return
    }
    const charge_As = (trace.current_A[row]! * seconds) / 2
    const energy_Ws = charge_As * trace.voltage_V[row]!
    sum = add(sum, {
      ...nothing,
      charge_As,
      energy_Ws,
      voltage_Vs: (trace.voltage_V[row]! * seconds) / 2,
      duration_s: seconds / 2,
    })
    ends.push(loose(row, seconds / 2))
  }

  const lastLoad = cutoff && 'load' in cutoff ? cutoff.load : run.loads.length - 1
  for (const [index, load] of run.loads.slice(0, lastLoad + 1).entries()) {
    const cut = cutoff && 'load' in cutoff && cutoff.load === index ? cutoff : null
    const to = cut ? Math.max(cut.row, load.from) : load.to
    if (load.from > run.from) edge(load.from, load.from - 1)
    else ends.push(loose(load.from, options.openEnd_s))

    for (const [stretch, gap] of between(trace, { from: load.from, to }, options)) {
      const end: End | undefined = gap === undefined && cut?.state === 'crossed' ? cut.end : undefined
      const part = integrate(trace, stretch, end)
      const rows = end ? integrate(trace, stretch) : part
      sum = add(sum, part)
      const smooth = simpson(trace, stretch)
      off_As += smooth.charge_As - rows.charge_As
      off_Ws += smooth.energy_Ws - rows.energy_Ws
      if (gap) gaps.push(gap)
    }

    if (cut?.state === 'crossed') {
      // The moment of crossing is as uncertain as the voltage reading over the slope there.
      const off_V = cut.end.voltage_V * chain.voltageGain + chain.voltageOffset_V
      ends.push({
        ...cut.end,
        halfWidth_s: cut.slope_Vps > 0 ? Math.min(off_V / cut.slope_Vps, options.gapLimit_s) : 0,
      })
    } else if (cut) gaps.push(gapAfter(trace, cut.row, options.gapCurrent_A))
    else if (load.to < run.to) edge(load.to, load.to + 1)
    else ends.push(loose(load.to, options.openEnd_s))
  }
  const first = { voltage_V: trace.voltage_V[run.loads[0].from]!, current_A: trace.current_A[run.loads[0].from]! }
  return figuresOf({ sum, off_As, off_Ws, ends, gaps, first }, options)
}

/** Less charge than this is none: nothing is divided by it. */
const least_As = 1e-6

type Summed = {
  readonly sum: Integral
  readonly off_As: number
  readonly off_Ws: number
  readonly ends: LooseEnd[]
  readonly gaps: readonly Gap[]
  /** The first sample under load: all there is when the cut-off is reached at once. */
  readonly first: { readonly voltage_V: number; readonly current_A: number }
}

function figuresOf(summed: Summed, options: DrawnOptions): Drawn {
  const { cutoff, chain } = options
  let { sum } = summed
  const open_As = summed.gaps.reduce((most, gap) => most + gap.charge_As[1] - gap.charge_As[0], 0)
  const matter = open_As > 0.002 * (sum.charge_As + open_As)
  // Between the samples around it, a bridged gap is one more interval of the trapezoid rule.
  const bridge = !matter || (options.constantCurrent && cutoff?.state !== 'crossed-in-gap')
  if (bridge) {
    for (const gap of summed.gaps) {
      sum = add(sum, { ...nothing, charge_As: gap.bridged_As, energy_Ws: gap.bridged_Ws, duration_s: gap.seconds })
      if (!matter)
        summed.ends.push({
          current_A: gap.charge_As[1] / gap.seconds,
          voltage_V: gap.energy_Ws[1] / gap.charge_As[1],
          halfWidth_s: gap.seconds / 2,
        })
    }
  }
  const capacity = capacityBudget(sum, chain, summed.ends, summed.off_As)
  const energy = energyBudget(sum, chain, summed.ends, summed.off_Ws)
  const seconds = summed.gaps.reduce((total, gap) => total + gap.seconds, 0)
  const notes: FigureNote[] = []
  if (matter) notes.push({ code: bridge ? 'gaps-bridged' : 'gaps-as-interval', gaps: summed.gaps.length, seconds })
  const figure = (unit: 'mAh' | 'Wh', value: number, u: number, least: number, most: number): Figure => ({
    value: bridge ? value : null,
    unit,
    u,
    k: 2,
    interval: bridge ? null : { from: value + least, to: value + most },
    method: cutoff && cutoff.state !== 'not-reached' ? 'trapezoid-to-cutoff' : 'trapezoid-to-end-of-load',
    notes,
  })
  const span = (of: (gap: Gap) => readonly [number, number], at: 0 | 1) =>
    summed.gaps.reduce((all, gap) => all + of(gap)[at], 0)
  const drew = sum.charge_As > least_As
  const meanVoltage_V = drew ? sum.energy_Ws / sum.charge_As : summed.first.voltage_V
  const pull = (end: LooseEnd) => (end.voltage_V - meanVoltage_V) * end.current_A * end.halfWidth_s
  return {
    capacity: figure(
      'mAh',
      sum.charge_As / 3.6,
      capacity.u,
      span(gap => gap.charge_As, 0) / 3.6,
      span(gap => gap.charge_As, 1) / 3.6,
    ),
    energy: figure(
      'Wh',
      sum.energy_Ws / 3600,
      energy.u,
      span(gap => gap.energy_Ws, 0) / 3600,
      span(gap => gap.energy_Ws, 1) / 3600,
    ),
    budget: { capacity, energy },
    load_s: sum.duration_s,
    meanVoltage_V,
    uMeanVoltage_V: drew ? rootSum(summed.ends, pull) / Math.sqrt(3) / sum.charge_As : 0,
    meanCurrent_A: sum.duration_s > 0 ? sum.charge_As / sum.duration_s : summed.first.current_A,
    gaps: matter ? summed.gaps : [],
  }
}

/** The stretches of rows without a gap inside them, each with the gap that follows it (none after the last). */
function* between(
  trace: Trace,
  { from, to }: Rows,
  options: DrawnOptions,
): Generator<readonly [Rows, Gap | undefined]> {
  let start = from
  for (let row = from; row < to; row++) {
    if (trace.time_s[row + 1]! - trace.time_s[row]! <= options.gapLimit_s) continue
    yield [{ from: start, to: row }, gapAfter(trace, row, options.gapCurrent_A)]
    start = row + 1
  }
  yield [{ from: start, to }, undefined]
}
