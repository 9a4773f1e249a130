// Charge and energy of stretches of a trace by the trapezoid rule, with the sums the uncertainty budget needs.
import type { Rows, Trace } from './trace.ts'

export type Integral = {
  /** ∫ I dt in A·s. */
  readonly charge_As: number
  /** ∫ V·I dt in W·s: not charge times mean voltage. */
  readonly energy_Ws: number
  /** ∫ V dt in V·s, which a current offset multiplies into energy. */
  readonly voltage_Vs: number
  readonly duration_s: number
  /** Σ w² of the trapezoid weights, in s²: noise of independent samples averages with it. */
  readonly weightSquares_s2: number
}

export const nothing: Integral = { charge_As: 0, energy_Ws: 0, voltage_Vs: 0, duration_s: 0, weightSquares_s2: 0 }

/** Where a stretch ends between two samples, by linear interpolation. */
export type End = {
  readonly time_s: number
  readonly voltage_V: number
  readonly current_A: number
}

/** The trapezoid integral over rows, and on from the last row to `end` where one is given. */
export function integrate(trace: Trace, { from, to }: Rows, end?: End): Integral {
  const { time_s, voltage_V, current_A } = trace
  let charge = 0
  let energy = 0
  let voltage = 0
  let squares = 0
  let before = 0
  for (let row = from; row < to; row++) {
    const half = (time_s[row + 1]! - time_s[row]!) / 2
    const power = voltage_V[row]! * current_A[row]! + voltage_V[row + 1]! * current_A[row + 1]!
    charge += (current_A[row]! + current_A[row + 1]!) * half
    energy += power * half
    voltage += (voltage_V[row]! + voltage_V[row + 1]!) * half
    squares += (before + half) * (before + half)
    before = half
  }
  if (end) {
    const half = (end.time_s - time_s[to]!) / 2
    charge += (current_A[to]! + end.current_A) * half
    energy += (voltage_V[to]! * current_A[to]! + end.voltage_V * end.current_A) * half
    voltage += (voltage_V[to]! + end.voltage_V) * half
    squares += (before + half) * (before + half)
    before = half
  }
  return {
    charge_As: charge,
    energy_Ws: energy,
    voltage_Vs: voltage,
    duration_s: (end?.time_s ?? time_s[to]!) - time_s[from]!,
    weightSquares_s2: squares + before * before,
  }
}

/** Sum of two integrals over different stretches. */
export function add(a: Integral, b: Integral): Integral {
  return {
    charge_As: a.charge_As + b.charge_As,
    energy_Ws: a.energy_Ws + b.energy_Ws,
    voltage_Vs: a.voltage_Vs + b.voltage_Vs,
    duration_s: a.duration_s + b.duration_s,
    weightSquares_s2: a.weightSquares_s2 + b.weightSquares_s2,
  }
}

/** Charge and energy by another rule than the trapezoid's, to see how far the two lie apart. */
export type Smooth = { readonly charge_As: number; readonly energy_Ws: number }

/**
 * ∫ I dt and ∫ V·I dt over rows by Simpson's rule for uneven steps; with an odd number of intervals the mean of the two ways to
 * leave one to the trapezoid rule. Its distance from the trapezoid integral is the discretisation in the budget.
 */
export function simpson(trace: Trace, { from, to }: Rows): Smooth {
  const intervals = to - from
  if (intervals < 2) return intervals === 1 ? trapezoid(trace, from) : { charge_As: 0, energy_Ws: 0 }
  if (intervals % 2 === 0) return parabolas(trace, from, to)
  const [early, late] = [parabolas(trace, from, to - 1), parabolas(trace, from + 1, to)]
  const [first, last] = [trapezoid(trace, from), trapezoid(trace, to - 1)]
  return {
    charge_As: (early.charge_As + last.charge_As + first.charge_As + late.charge_As) / 2,
    energy_Ws: (early.energy_Ws + last.energy_Ws + first.energy_Ws + late.energy_Ws) / 2,
  }
}

function trapezoid(trace: Trace, row: number): Smooth {
  const { charge_As, energy_Ws } = integrate(trace, { from: row, to: row + 1 })
  return { charge_As, energy_Ws }
}

/** A parabola through every three samples; two samples of one moment leave their intervals to the trapezoid rule. */
function parabolas({ time_s, voltage_V, current_A }: Trace, from: number, to: number): Smooth {
  let charge = 0
  let energy = 0
  for (let row = from; row + 2 <= to; row += 2) {
    const h0 = time_s[row + 1]! - time_s[row]!
    const h1 = time_s[row + 2]! - time_s[row + 1]!
    const i0 = current_A[row]!
    const i1 = current_A[row + 1]!
    const i2 = current_A[row + 2]!
    const p0 = voltage_V[row]! * i0
    const p1 = voltage_V[row + 1]! * i1
    const p2 = voltage_V[row + 2]! * i2
    if (h0 <= 0 || h1 <= 0) {
      charge += (h0 * (i0 + i1) + h1 * (i1 + i2)) / 2
      energy += (h0 * (p0 + p1) + h1 * (p1 + p2)) / 2
      continue
    }
    const h = h0 + h1
    const first = 2 - h1 / h0
    const middle = (h * h) / (h0 * h1)
    const last = 2 - h0 / h1
    charge += (h / 6) * (first * i0 + middle * i1 + last * i2)
    energy += (h / 6) * (first * p0 + middle * p1 + last * p2)
  }
  return { charge_As: charge, energy_Ws: energy }
}
