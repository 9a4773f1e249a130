// What can be measured on a cell, and the one unit each of these is kept in.

export type Quantity =
  | 'mass'
  | 'diameter'
  | 'length'
  | 'voltage'
  | 'ac-resistance'
  | 'dc-resistance'
  | 'capacity'
  | 'current'
  | 'temperature'
  | 'rest-time'
  | 'energy-per-volume'
  | 'energy-per-mass'

/** The unit a value of each quantity is kept in, everywhere past `readTyped`. */
export const canonicalUnit = {
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
} as const satisfies Record<Quantity, string>

export type CanonicalUnit = (typeof canonicalUnit)[Quantity]

export const quantities = Object.keys(canonicalUnit) as readonly Quantity[]
