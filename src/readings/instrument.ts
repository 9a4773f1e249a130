// How far each of the usual instruments can be off, as a standard uncertainty of the value it showed.
import type { MeasuredQuantity } from '../ground/quantities.ts'

export type MenuInstrument =
  | 'kitchen-scale'
  | 'tenth-gram-scale'
  | 'calliper'
  | 'ruler'
  | 'thermometer'
  | 'basic-multimeter'
  | 'four-wire-meter'
  | 'hobby-load'
  | 'lab-load'

/** One of the menu, or the figure of the instrument's own data sheet. */
export type Instrument =
  | { readonly kind: MenuInstrument }
  /** "± (percent of reading + fixed)": half-widths; `fixed` in the canonical unit of the quantity. */
  | { readonly kind: 'typed-figure'; readonly percent: number; readonly fixed: number }

type Accuracy = {
  /** Half-width as a percentage of the reading. */
  readonly percent: number
  /** Half-width in the canonical unit of the quantity. */
  readonly fixed: number
}

/**
 * What each instrument of the menu measures and how well: half-widths of what its makers usually state plus the
 * handling. Common practice, no source, except the lab load's current, voltage and temperature, which are the
 * tolerances of IEC 62660-2 clause 4.3 (V ± 0.1 %, I ± 1 %, T ± 2 °C).
 */
export const menu: Record<MenuInstrument, Partial<Record<MeasuredQuantity, Accuracy>>> = {
  'kitchen-scale': { mass: { percent: 1, fixed: 1.5 } },
  'tenth-gram-scale': { mass: { percent: 0.2, fixed: 0.2 } },
  calliper: { diameter: { percent: 0, fixed: 0.1 }, length: { percent: 0, fixed: 0.2 } },
  ruler: { diameter: { percent: 0, fixed: 1 }, length: { percent: 0, fixed: 1 } },
  thermometer: { temperature: { percent: 0, fixed: 2 } },
  'basic-multimeter': {
    voltage: { percent: 0.5, fixed: 0.02 },
    current: { percent: 2, fixed: 0.03 },
    temperature: { percent: 1, fixed: 3 },
    // Its leads alone are 20 to 30 mΩ and change with every touch: it can say nothing about a cell.
    'ac-resistance': { percent: 2, fixed: 300 },
    'dc-resistance': { percent: 2, fixed: 300 },
  },
  'four-wire-meter': {
    voltage: { percent: 0.1, fixed: 0.002 },
    'ac-resistance': { percent: 1, fixed: 0.3 },
    'dc-resistance': { percent: 2, fixed: 0.5 },
  },
  'hobby-load': {
    voltage: { percent: 0.5, fixed: 0.01 },
    current: { percent: 1, fixed: 0.01 },
    capacity: { percent: 2, fixed: 5 },
    'dc-resistance': { percent: 5, fixed: 5 },
    temperature: { percent: 0, fixed: 3 },
  },
  'lab-load': {
    voltage: { percent: 0.1, fixed: 0.001 },
    current: { percent: 1, fixed: 0.001 },
    capacity: { percent: 1, fixed: 2 },
    'dc-resistance': { percent: 1, fixed: 0.7 },
    temperature: { percent: 0, fixed: 2 },
  },
}

/** The instruments of the menu that measure a quantity, in the order of the menu. */
export function instrumentsFor(quantity: MeasuredQuantity): readonly MenuInstrument[] {
  return (Object.keys(menu) as MenuInstrument[]).filter(kind => menu[kind][quantity] !== undefined)
}

/** The half-width a of a reading: the true value is taken to lie evenly within value ± a. Canonical unit. */
function halfWidth(quantity: MeasuredQuantity, value: number, instrument: Instrument): number {
  const accuracy = instrument.kind === 'typed-figure' ? instrument : menu[instrument.kind][quantity]
  if (!accuracy) return Number.POSITIVE_INFINITY
  return (Math.abs(value) * accuracy.percent) / 100 + accuracy.fixed
}

/**
 * Standard uncertainty of a reading in the quantity's canonical unit: u = a / √3 for a half-width a (JCGM 100:2008,
 * 4.3.7). An instrument that does not measure the quantity knows nothing: `Infinity`, which `zone` calls undecided.
 */
export function standardUncertainty(quantity: MeasuredQuantity, value: number, instrument: Instrument): number {
  return halfWidth(quantity, value, instrument) / Math.sqrt(3)
}
