// What can make a discharge say less, or something else, than it seems to: codes with the figures for a sentence.
import type { Drawn } from './charge-drawn.ts'
import type { Cutoff } from './cutoff.ts'
import { longestLoad, type RunLayout } from './lay-out-run.ts'
import type { MeasureOptions } from './measure-options.ts'
import type { RestBefore } from './rests.ts'
import type { TemperatureReading } from './temperature.ts'
import { expectedRise } from './thermal.ts'
import { quantile } from './trace.ts'

export type Trap =
  | { readonly code: 'stopped-above-cutoff'; readonly endVoltage_V: number; readonly cutoff_V: number }
  /** The load ran on below the cut-off: its own display counts more than the claim means. */
  | {
      readonly code: 'wrong-cutoff'
      readonly endVoltage_V: number
      readonly cutoff_V: number
      readonly countedTo_V: number
    }
  | { readonly code: 'not-full-at-start'; readonly startVoltage_V: number; readonly full_V: number }
  /** Nothing shows whether the cell was full, or how long the load had been on. */
  | { readonly code: 'starts-under-load'; readonly firstVoltage_V: number }
  | { readonly code: 'short-rest'; readonly rest_s: number; readonly wanted_s: number }
  | { readonly code: 'over-discharged'; readonly lowest_V: number; readonly line_V: number }
  | { readonly code: 'gaps'; readonly gaps: number; readonly seconds: number; readonly bridged: boolean }
  | { readonly code: 'two-wire-resistance'; readonly leads_mΩ: readonly [number, number] }
  | {
      readonly code: 'cold-room' | 'warm-room'
      readonly room_C: number
      readonly from_C: number
      readonly to_C: number
    }
  | { readonly code: 'temperature-missing' }
  | { readonly code: 'too-hot'; readonly highest_C: number; readonly line_C: number }
  /** The cell should have warmed more: is the sensor on it? Mass, heat and cooling are assumed, so only a hint. */
  | { readonly code: 'temperature-hardly-moved'; readonly rise_K: number; readonly expected_K: number }
  /** A load this light lets almost any cell look good. */
  | { readonly code: 'current-too-low'; readonly current_A: number; readonly wanted_A: number }
  | { readonly code: 'current-not-constant'; readonly from_A: number; readonly to_A: number }
  /** The file's own counter shows `factor` times the charge: the current is not logged in the unit that was taken. */
  | { readonly code: 'counter-disagrees'; readonly factor: number }
  | { readonly code: 'coarse-sampling'; readonly interval_s: number; readonly samples: number }

type Seen = {
  readonly layout: RunLayout
  readonly options: MeasureOptions
  readonly cutoff: Cutoff | null
  readonly drawn: Drawn
  readonly rest: RestBefore | null
  readonly temperature: TemperatureReading | null
  /** From a load step of this log; null if it has none. */
  readonly resistance_mΩ: number | null
  readonly wiring: 'four-wire' | 'two-wire'
}

/** How far below its full voltage a cell that was full may rest: 10 to 40 mV in the hours after charging (common practice, no source). */
const fullWithin_V = 0.06
// Room for judging resistance and capacity: trade facts, from memory; 20 ± 5 °C is IEC 61960's own.
const room = { from: 18, to: 27 }
/** Rest after charging, IEC 61960 (from memory): 1 to 4 h. */
const wantedRest_s = 3600
/** The highest of the usual cut-offs (2.5 to 3.0 V): without one given, a load that ends above it was stopped early. */
const highestCutoff_V = 3
/** The lowest of them: without one given, a load that ended below it counted too much. */
const lowestCutoff_V = 2.5
/** Copper dissolves on deep discharge; below 2.0 V a cell must not be charged again (common practice, no source). */
const overDischarged_V = 2
/** Usual data-sheet limit while discharging, from memory. */
const hot_C = 60
/** IEC 61960's rate for capacity is 0.2 It; at or below it a pass says nothing of the grade. */
const lowRate_It = 0.2
/** An 18650 in still air; heat and loss are assumed figures. */
const usualCell = { mass_g: 46, heat_JpkgK: 950, loss_WpK: 0.045 }
/** One probe or holder contact pair, common practice, no source. */
const leads_mΩ = [20, 60] as const

/** The traps of one run, the ones that change what its capacity may be used for first. */
export function trapsOf(seen: Seen): Trap[] {
  return [...ofStartAndEnd(seen), ...ofGaps(seen), ...ofTemperature(seen), ...ofCurrent(seen)]
}

function ofStartAndEnd({ layout, options, cutoff, rest }: Seen): Trap[] {
  const traps: Trap[] = []
  const { trace, run, end_V } = layout
  const full_V = options.full_V ?? 4.2
  if (cutoff?.state === 'not-reached' || (!cutoff && end_V > highestCutoff_V)) {
    traps.push({ code: 'stopped-above-cutoff', endVoltage_V: end_V, cutoff_V: options.cutoff_V ?? highestCutoff_V })
  }
  const expected_V = options.cutoff_V ?? lowestCutoff_V
  if (end_V < expected_V - 0.1) {
    const countedTo_V = options.cutoff_V ?? end_V
    traps.push({ code: 'wrong-cutoff', endVoltage_V: end_V, cutoff_V: expected_V, countedTo_V })
  }
  if (!rest) {
    const firstVoltage_V = trace.voltage_V[run.loads[0].from]!
    // A loaded voltage this near to full shows that the cell was full, whatever the log left out.
    if (firstVoltage_V < full_V - 0.15) traps.push({ code: 'starts-under-load', firstVoltage_V })
  } else {
    if (rest.voltage_V < full_V - fullWithin_V)
      traps.push({ code: 'not-full-at-start', startVoltage_V: rest.voltage_V, full_V })
    if (rest.seconds > 0 && rest.seconds < wantedRest_s) {
      traps.push({ code: 'short-rest', rest_s: rest.seconds, wanted_s: wantedRest_s })
    }
  }
  let lowest_V = Number.POSITIVE_INFINITY
  for (const { from, to } of run.loads)
    for (let row = from; row <= to; row++) lowest_V = Math.min(lowest_V, trace.voltage_V[row]!)
  if (lowest_V < overDischarged_V) traps.push({ code: 'over-discharged', lowest_V, line_V: overDischarged_V })
  return traps
}

function ofGaps({ drawn, layout }: Seen): Trap[] {
  const traps: Trap[] = []
  const seconds = drawn.gaps.reduce((total, gap) => total + gap.seconds, 0)
  if (drawn.gaps.length > 0) {
    traps.push({ code: 'gaps', gaps: drawn.gaps.length, seconds, bridged: drawn.capacity.value !== null })
  }
  const samples = layout.run.loads.reduce((total, { from, to }) => total + to - from + 1, 0)
  if (samples < 20) traps.push({ code: 'coarse-sampling', interval_s: layout.usual_s, samples })
  return traps
}

function ofTemperature({ temperature, options, resistance_mΩ, wiring, drawn }: Seen): Trap[] {
  const traps: Trap[] = []
  const room_C = options.room_C ?? temperature?.start.value ?? null
  if (room_C === null) traps.push({ code: 'temperature-missing' })
  else if (room_C < room.from) traps.push({ code: 'cold-room', room_C, from_C: room.from, to_C: room.to })
  else if (room_C > room.to) traps.push({ code: 'warm-room', room_C, from_C: room.from, to_C: room.to })
  if (temperature && temperature.highest_C > hot_C) {
    traps.push({ code: 'too-hot', highest_C: temperature.highest_C, line_C: hot_C })
  }
  if (temperature && resistance_mΩ !== null) {
    const expected_K = expectedRise({ ...usualCell, current_A: drawn.meanCurrent_A, resistance_mΩ }, drawn.load_s)
    const rise_K = temperature.rise.value ?? 0
    if (expected_K > 6 && rise_K < expected_K / 4) traps.push({ code: 'temperature-hardly-moved', rise_K, expected_K })
  }
  if (resistance_mΩ !== null && wiring === 'two-wire') traps.push({ code: 'two-wire-resistance', leads_mΩ })
  return traps
}

function ofCurrent({ layout, options, drawn }: Seen): Trap[] {
  const traps: Trap[] = []
  const { counterFactor: factor = 1 } = options
  if (factor !== 1) traps.push({ code: 'counter-disagrees', factor })
  const current_A = drawn.meanCurrent_A
  if (options.claimed_mAh !== undefined) {
    const wanted_A = (options.claimed_mAh / 1000) * lowRate_It
    if (current_A < 0.9 * wanted_A) traps.push({ code: 'current-too-low', current_A, wanted_A })
  }
  const { trace, run } = layout
  const longest = longestLoad(run)
  const at = (index: number) => trace.current_A[longest.from + index]!
  const count = longest.to - longest.from + 1
  const [from_A, to_A] = [quantile(count, at, 0.05), quantile(count, at, 0.95)]
  if (to_A - from_A > 0.05 * to_A) traps.push({ code: 'current-not-constant', from_A, to_A })
  return traps
}
