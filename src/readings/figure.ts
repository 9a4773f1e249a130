// A computed figure with its expanded uncertainty, and how far it is only a bound.

export type FigureMethod =
  | 'trapezoid-to-cutoff'
  | 'trapezoid-to-end-of-load'
  | 'energy-over-capacity'
  | 'first-to-last-loaded-sample'
  | 'mean-over-load'
  | 'last-sample-before-load'
  | 'last-loaded-sample'
  | 'two-pulse'
  | 'load-step'
  | 'exponential-fit'
  | 'highest-minus-start'
  | 'first-sample'

export type FigureNote =
  /** The discharge went on or began before, or the file counts otherwise: nothing may be held against the cell by it. */
  | {
      readonly code: 'lower-bound'
      readonly because: 'stopped-above-cutoff' | 'not-full-at-start' | 'starts-under-load' | 'counter-disagrees'
    }
  /** Sampling gaps: `interval` holds what the log allows. */
  | { readonly code: 'gaps-as-interval'; readonly gaps: number; readonly seconds: number }
  /** The user declared a constant-current load, so the gap was bridged. */
  | { readonly code: 'gaps-bridged'; readonly gaps: number; readonly seconds: number }
  | { readonly code: 'no-cutoff-given'; readonly endVoltage_V: number }
  | { readonly code: 'fits-badly'; readonly residual_mV: number }
  | { readonly code: 'seconds-after-step'; readonly seconds: number }
  | { readonly code: 'includes-leads' }

/**
 * One figure: the value ± k·u with k = 2 (about 95 %), both in `unit`.
 *
 * `interval` is set when the log only allows a range (gaps, an unfinished discharge): the true figure lies within it,
 * widened by k·u at each end; `to: null` is open upwards. With gaps `value` is null, since no single value is honest.
 */
export type Figure = {
  readonly value: number | null
  readonly unit: 'mAh' | 'Wh' | 'V' | 's' | 'A' | 'mΩ' | 'K' | '°C'
  readonly u: number
  readonly k: 2
  readonly interval: { readonly from: number; readonly to: number | null } | null
  readonly method: FigureMethod
  readonly notes: readonly FigureNote[]
}

/** A figure that is one plain value. */
export function plainFigure(
  value: number,
  unit: Figure['unit'],
  u: number,
  method: FigureMethod,
  notes: readonly FigureNote[] = [],
): Figure {
  return { value, unit, u, k: 2, interval: null, method, notes }
}

/** The least and the most a figure can be, with its expanded uncertainty; `null` where it is open upwards. */
export function reach(figure: Figure): { readonly least: number; readonly most: number | null } {
  const from = figure.interval?.from ?? figure.value ?? Number.NEGATIVE_INFINITY
  const to = figure.interval ? figure.interval.to : figure.value
  return { least: from - figure.k * figure.u, most: to === null ? null : to + figure.k * figure.u }
}
