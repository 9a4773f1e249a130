// What can be measured on a cell or read off its label, and the one unit each of these is kept in.

/** The unit a measured value is kept in, everywhere past the reading of what was typed; limits in packs are written in it. */
export const measuredUnit = {
  mass: 'g',
  diameter: 'mm',
  length: 'mm',
  voltage: 'V',
  'ac-resistance': 'mΩ',
  'dc-resistance': 'mΩ',
  capacity: 'mAh',
  current: 'A',
  temperature: '°C',
  'rest-time': 'h',
  'energy-per-volume': 'Wh/L',
  'energy-per-mass': 'Wh/kg',
  /** At the claimed current, by a cell's AC resistance: the least that a cell with it can lose. */
  'voltage-lost': 'V',
  /** At the claimed current, by what it lost at another one. */
  'voltage-lost-under-load': 'V',
} as const

/** The unit of what a label or a listing claims. */
export const claimedUnit = { 'claimed-capacity': 'mAh', 'claimed-current': 'A' } as const

export const unitOf = { ...measuredUnit, ...claimedUnit } as const

export type MeasuredQuantity = keyof typeof measuredUnit
export type ClaimedQuantity = keyof typeof claimedUnit
export type Quantity = keyof typeof unitOf
export type MeasuredUnit = (typeof measuredUnit)[MeasuredQuantity]

export const measuredQuantities = Object.keys(measuredUnit) as readonly MeasuredQuantity[]
export const quantities = Object.keys(unitOf) as [Quantity, ...Quantity[]]

export const isMeasured = (quantity: Quantity): quantity is MeasuredQuantity => quantity in measuredUnit

/** What a measurement of a claimed quantity would be a measurement of: a claimed capacity is typed as a capacity. */
export const measuredAs = (quantity: Quantity): MeasuredQuantity =>
  quantity === 'claimed-capacity' ? 'capacity' : quantity === 'claimed-current' ? 'current' : quantity
